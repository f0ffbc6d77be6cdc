import fc from 'fast-check';
import { expect, test } from 'vitest';
import { changed, historyOf, settled, undone } from './history.ts';
import { historyOfText, holds, textOfHistory } from './history-text.ts';

test('whatever was done and taken back comes back to the letter', () => {
  const change = fc.record({ text: fc.string({ unit: 'grapheme' }), words: fc.string() });
  fc.assert(
    fc.property(fc.string(), fc.array(change, { maxLength: 20 }), fc.nat(20), (first, changes, back) => {
      let history = changes.reduce(changed, historyOf(first));
      for (let at = 0; at < back; at++) history = undone(history);
      expect(historyOfText(textOfHistory(history) ?? '')).toEqual(settled(history));
    }),
  );
});

test('a long history takes little, and loses its oldest steps first when there is no more room', () => {
  const line = (level: number) => `${'# a comment of the keeper\n'.repeat(200)}level: ${level} cm\n`;
  const levels = Array.from({ length: 300 }, (_, at) => at + 1);
  const long = levels.reduce(
    (so, level) => changed(so, { text: line(level), words: 'Water level' }),
    historyOf(line(0)),
  );
  expect(textOfHistory(long)?.length).toBeLessThan(30_000);
  const most = 10_000;
  const short = textOfHistory(long, most) ?? '';
  expect(short.length).toBeLessThanOrEqual(most);
  const back = historyOfText(short);
  expect(back?.text).toBe(line(300));
  expect(back?.past.at(-1)?.text).toBe(line(299));
  expect(back?.past.length).toBeGreaterThan(20);
  expect(textOfHistory(historyOf('x'.repeat(most + 1)), most)).toBeUndefined();
});

test('what cannot be read, or tells of characters that are not there, is no history', () => {
  for (const text of [
    '',
    'no JSON',
    '{}',
    'null',
    '{"text":"a","past":{},"future":[]}',
    '{"text":"a","past":["b"],"future":[]}',
    '{"text":"a","past":[["w",2,0,"b"]],"future":[]}',
    '{"text":"a","past":[["w",0,-1,"b"]],"future":[]}',
    '{"text":"a","past":[],"future":[["w",0.5,0,"b"]]}',
  ])
    expect(historyOfText(text)).toBeUndefined();
});

test('knows whether a text was ever on the desk', () => {
  const made = changed(changed(historyOf('a'), { text: 'b', words: '1' }), { text: 'c', words: '2' });
  expect(['a', 'b', 'c', 'd'].map((text) => holds(undone(made), text))).toEqual([true, true, true, false]);
});
