import type { Conflict } from '@shoreglass/engine';
import { describe, expect, it } from 'vitest';
import { concerned, topicsOf } from './conflict-topics.ts';

const conflict = (kind: Conflict['kind'], who: string[], rest: Partial<Conflict> = {}): Conflict => ({
  kind,
  who,
  severity: 'warning',
  sentence: who.join(' '),
  source: 'somewhere',
  mend: 'Mend it.',
  ...rest,
});
const nameOf = (id: string) => `${id} of the brook`;
const told = (...conflicts: Conflict[]) =>
  topicsOf(conflicts, nameOf).flatMap((topic) => topic.told.map(({ sentence }) => sentence));

describe('topics of conflicts', () => {
  it('what kills comes before what is worth knowing, and every remark is in one topic', () => {
    const all = [
      conflict('few', ['newts']),
      conflict('law', ['crabs'], { severity: 'note' }),
      conflict('copper', ['shrimps']),
      conflict('few', ['crabs'], { severity: 'note' }),
    ];
    const topics = topicsOf(all, nameOf);
    expect(topics.map(({ heading }) => heading)).toEqual([
      'Poisonous water',
      'Too few to begin with',
      'Too few to begin with',
      'Law and release',
    ]);
    expect(topics.flatMap(({ conflicts }) => conflicts)).toHaveLength(all.length);
    expect(
      topics.flatMap((topic) => topic.told.flatMap(({ conflicts }) => conflicts)).map(({ kind }) => kind),
    ).toEqual(topics.flatMap(({ conflicts }) => conflicts).map(({ kind }) => kind));
  });

  it('a reason that differs in the name alone is told once, with all names', () => {
    const out = (id: string, how: string) =>
      conflict('way out', [id], { sentence: `${nameOf(id)} ${how} through the vent` });
    expect(out('newts', 'climb').sentence).toBe('newts of the brook climb through the vent');
    const sentences = told(out('newts', 'climb'), out('crabs', 'climb'), out('frogs', 'jump'));
    expect(sentences).toEqual([
      'Newts of the brook and crabs of the brook climb through the vent',
      'frogs of the brook jump through the vent',
    ]);
  });

  it('a name in the middle of the sentence, and one that stands twice, are dealt with', () => {
    const few = (id: string) => conflict('few', [id], { sentence: `4 is small for ${nameOf(id)}.` });
    expect(told(few('newts'), few('crabs'))).toEqual([
      '4 is small for newts of the brook and crabs of the brook.',
    ]);
    const twice = (id: string) =>
      conflict('few', [id], { sentence: `4 ${nameOf(id)} are few, as ${nameOf(id)} die.` });
    expect(told(twice('newts'), twice('crabs'))).toHaveLength(2);
  });

  it('a hunter is told once with all it eats, and a pair by who stands in most pairs', () => {
    const eaten = ['scuds', 'snails'].map((prey) => conflict('eaten', [prey, 'newts']));
    expect(told(...eaten)).toEqual([
      'Newts of the brook eat scuds of the brook and snails of the brook, of any size.',
    ]);
    const pairs = [
      conflict('range', ['guppies', 'newts']),
      conflict('range', ['newts', 'crabs']),
      conflict('range', ['guppies', 'toads']),
      conflict('range', ['newts', 'fish']),
    ];
    expect(told(...pairs)).toEqual([
      'Newts of the brook fit together with none of these: guppies of the brook, crabs of the brook and fish of the brook. No water or air suits both.',
      'guppies toads',
    ]);
  });

  it('counts the remarks that would be gone without someone', () => {
    const all = [
      conflict('toxin', ['toads', 'newts', 'fish']),
      conflict('eaten', ['fish', 'newts']),
      conflict('range', ['newts', 'toads']),
    ];
    expect(concerned(all)).toEqual([
      { id: 'toads', count: 2 },
      { id: 'newts', count: 2 },
      { id: 'fish', count: 1 },
    ]);
  });
});
