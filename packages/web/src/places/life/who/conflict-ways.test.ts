import type { Conflict } from '@shoreglass/engine';
import { describe, expect, it } from 'vitest';
import { commonWays, conflictWays, type Way } from './conflict-ways.ts';
import type { Draft } from './draft.ts';

const row = (species: string, adults: string, juveniles = '', after = '') => ({
  species,
  name: species,
  zone: 'pool',
  adults,
  juveniles,
  after,
  chance: '',
});
const draft: Draft = { animals: [row('scuds', '2', '1'), row('scuds', '1'), row('newts', '3')], plants: [] };
const known = { file: 'beck', leastFounders: { scuds: 10 }, nameOf: (id: string) => id };
const ways = (kind: Conflict['kind'], ...who: string[]) =>
  conflictWays({ kind, who, severity: 'warning', sentence: '', source: '', mend: '' }, known);
const done = (way: Way | undefined): Draft => (way && 'change' in way ? way.change(draft) : draft);

describe('ways out of a conflict', () => {
  it('either of two who do not fit together can be taken out, with all its entries', () => {
    const both = ways('eaten', 'scuds', 'newts');
    expect(both.map(({ words }) => words)).toEqual(['Take out scuds', 'Take out newts']);
    expect(done(both[0]).animals.map(({ species }) => species)).toEqual(['newts']);
  });

  it('too few become as many as make a start, all entries and their young counted', () => {
    const [way] = ways('few', 'scuds');
    expect(way?.words).toBe('Start with 10 scuds');
    expect(done(way).animals.map(({ adults }) => adults)).toEqual(['8', '1', '3']);
    expect(ways('few', 'newts')).toEqual([]);
  });

  it('who comes too soon comes later', () => {
    const [way] = ways('too soon', 'newts');
    expect(done(way).animals.at(-1)?.after).toBe('28');
  });

  it('what is mended elsewhere is a way there, and what must be weighed has none', () => {
    expect(ways('way out', 'newts')).toEqual([{ words: 'Change the shape', href: '/shape/beck' }]);
    expect(ways('copper', 'newts')).toEqual([{ words: 'Change the water', href: '/water/beck' }]);
    expect(ways('law', 'newts')).toEqual([]);
    expect(ways('toxin', 'newts')).toEqual([]);
  });

  it('what settles most of several remarks comes first, and too few of several become enough in one step', () => {
    const of = (kind: Conflict['kind'], ...who: string[]): Conflict => ({
      kind,
      who,
      severity: 'warning',
      sentence: '',
      source: '',
      mend: '',
    });
    const eaten = [of('eaten', 'scuds', 'newts'), of('eaten', 'snails', 'newts')];
    expect(
      commonWays(eaten, (each) => conflictWays(each, known)).map(({ way, settles }) => [way.words, settles]),
    ).toEqual([
      ['Take out newts', 2],
      ['Take out scuds', 1],
      ['Take out snails', 1],
    ]);
    const least = { ...known, leastFounders: { scuds: 10, newts: 5 } };
    const few = commonWays([of('few', 'scuds'), of('few', 'newts')], (each) => conflictWays(each, least));
    expect(few.map(({ settles }) => settles)).toEqual([2]);
    expect(done(few[0]?.way).animals.map(({ adults }) => adults)).toEqual(['8', '1', '5']);
  });
});
