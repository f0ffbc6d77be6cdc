import { library } from '@shoreglass/library';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { editEnclosure } from './edit-enclosure.ts';
import { readEnclosure } from './read/read-enclosure.ts';

const text = library.enclosure('beck-bank');
const commentsOf = (yaml: string) => yaml.match(/#.*$/gm)?.map((comment) => comment.trim()) ?? [];

describe('editEnclosure', () => {
  it('changes one value and keeps every comment', () => {
    const edited = editEnclosure(text, ['water', 'level'], '15 cm');
    expect(readEnclosure(edited, 'a.yaml').document?.content.water.level).toBeCloseTo(0.15, 12);
    expect(commentsOf(edited)).toEqual(commentsOf(text));
    const lines = edited.split('\n');
    expect(text.split('\n').filter((line, index) => line !== lines[index])).toHaveLength(1);
  });
  it('adds, replaces and removes parts', () => {
    const added = editEnclosure(text, ['actions', 1], {
      do: 'feed',
      feed: 'flake',
      amount: '1 g',
      after: '9 d',
    });
    expect(readEnclosure(added, 'a.yaml').document?.content.actions).toHaveLength(2);
    const removed = editEnclosure(added, ['actions'], undefined);
    expect(readEnclosure(removed, 'a.yaml').document?.content.actions).toBeUndefined();
    const topOff = editEnclosure(text, ['water', 'top-off'], [{ water: 'rain', share: '100 %' }]);
    expect(readEnclosure(topOff, 'a.yaml').document?.content.water['top-off']).toHaveLength(1);
  });
  it('gives back what was put in, whatever the text', () => {
    fc.assert(
      fc.property(fc.string({ minLength: 1, maxLength: 80 }), (name) => {
        fc.pre(name.trim() !== '' && !/[\p{C}\u2028\u2029\ufffd]/u.test(name));
        const edited = editEnclosure(text, ['name'], name);
        expect(readEnclosure(edited, 'a.yaml').document?.content.name).toBe(name.trim());
      }),
      { numRuns: 60 },
    );
  });
  it('refuses a broken file and a path through a value', () => {
    expect(() => editEnclosure('a: [', ['a'], '1')).toThrow('not sound YAML');
    expect(() => editEnclosure(text, ['name', 'first'], '1')).toThrow();
  });
});
