import { library } from '@shoreglass/library';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { editEnclosure, editEnclosureAll } from './edit-enclosure.ts';
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
  it('changes several values in one go and touches no other line', () => {
    const edited = editEnclosureAll(text, [
      { path: ['zones', 0, 'to'], value: '46 cm' },
      { path: ['zones', 1, 'from'], value: '46 cm' },
      { path: ['zones', 1, 'ground', 'left'], value: '6.5 cm' },
    ]);
    const zones = readEnclosure(edited, 'a.yaml').document?.content.zones;
    expect(zones?.[0]?.to).toBeCloseTo(0.46, 12);
    expect(zones?.[1]?.ground?.left).toBeCloseTo(0.065, 12);
    const lines = edited.split('\n');
    expect(text.split('\n').filter((line, index) => line !== lines[index])).toHaveLength(3);
  });
  it('adds keys and list items on lines of their own, and cuts them out again to the same text', () => {
    const cases = [
      { path: ['cover', 'note'], value: 'mesh' },
      { path: ['zones', 0, 'ground', 'middle'], value: '4 cm' },
      { path: ['hardscape', 0, 'course', 4], value: { x: '80 cm', z: '40 cm', thick: '1 cm' } },
      { path: ['zones', 2, 'layers', 3, 'thickness'], value: '3 cm' },
      { path: ['zones', 3], value: { id: 'wall', kind: 'wall', from: '0 cm', to: '9 cm' } },
    ] as const;
    for (const { path, value } of cases) {
      const added = editEnclosure(text, path, value);
      expect(commentsOf(added)).toEqual(commentsOf(text));
      const kept = text.split('\n').filter((line) => added.includes(line));
      expect(text.split('\n').length - kept.length).toBeLessThanOrEqual(1);
      const cutAgain = editEnclosure(added, path, undefined);
      const inFlow = path[2] === 'ground' || path[2] === 'layers';
      if (!inFlow) expect(cutAgain).toBe(text);
    }
  });
  it('writes a list of lines anew in its place', () => {
    const course = [
      { x: '10 cm', z: '5 cm', thick: '3 cm' },
      { x: '40 cm', z: '15 cm', thick: '2 cm' },
    ];
    const edited = editEnclosure(text, ['hardscape', 0, 'course'], course);
    expect(readEnclosure(edited, 'a.yaml').document?.content.hardscape?.[0]?.course).toHaveLength(2);
    expect(commentsOf(edited)).toEqual(commentsOf(text));
    expect(edited.split('\n').filter((line) => !text.includes(line))).toHaveLength(2);
  });
  it('keeps the comments of what stays when parts are taken away', () => {
    const edited = editEnclosureAll(text, [
      { path: ['hardscape', 0, 'course'], value: undefined },
      { path: ['devices', 'pump', 'films'], value: undefined },
    ]);
    const content = readEnclosure(edited, 'a.yaml').document?.content;
    expect(content?.hardscape?.[0]?.course).toBeUndefined();
    expect(content?.devices?.pump?.films).toBeUndefined();
    expect(commentsOf(edited)).toContain('# just below the mesh, so that the soil drains');
  });
  it('refuses a broken file and a path through a value', () => {
    expect(() => editEnclosure('a: [', ['a'], '1')).toThrow('not sound YAML');
    expect(() => editEnclosure(text, ['name', 'first'], '1')).toThrow();
  });
});
