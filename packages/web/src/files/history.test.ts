import fc from 'fast-check';
import { expect, test } from 'vitest';
import { changed, historyOf, redone, settled, standingAt, undone } from './history.ts';

test('whatever was done, undoing all of it gives back the first text to the letter, and redoing the last', () => {
  const change = fc.record({
    text: fc.string(),
    words: fc.constant('anything'),
    merge: fc.option(fc.constantFrom('a', 'b'), { nil: undefined }),
  });
  fc.assert(
    fc.property(fc.string(), fc.array(change, { maxLength: 20 }), (first, changes) => {
      const done = changes.reduce(changed, historyOf(first));
      let back = done;
      while (back.past.length > 0) back = undone(back);
      expect(back.text).toBe(first);
      let again = back;
      while (again.future.length > 0) again = redone(again);
      expect(again.text).toBe(done.text);
    }),
  );
});

test('steps of one drag are one step to undo, until something else happens or one rests', () => {
  const press = (text: string) => ({ text, words: 'Water level', merge: 'water' });
  const two = changed(changed(historyOf('16'), press('17')), press('18'));
  expect(undone(two).text).toBe('16');
  const rested = changed(settled(two), press('19'));
  expect(undone(rested).text).toBe('18');
});

test('a change after undoing takes away what could be done again', () => {
  const one = changed(historyOf('a'), { text: 'b', words: 'x' });
  const other = changed(undone(one), { text: 'c', words: 'y' });
  expect(other.future).toEqual([]);
  expect(redone(other)).toBe(other);
});

test('standing at a text goes back or on to its step, and takes a foreign text as one change more', () => {
  const made = ['b', 'c'].reduce((so, text) => changed(so, { text, words: text }), historyOf('a'));
  const back = standingAt(made, 'a');
  expect([back.text, back.past.length, back.future.map(({ words }) => words)]).toEqual(['a', 0, ['b', 'c']]);
  expect(standingAt(back, 'c')).toEqual(made);
  expect(standingAt(made, 'c')).toBe(made);
  const foreign = standingAt(made, 'x');
  expect([foreign.text, foreign.past.at(-1)?.words]).toEqual(['x', 'What was changed elsewhere']);
  expect(undone(foreign).text).toBe('c');
});
