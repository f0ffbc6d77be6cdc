import { describe, expect, it } from 'vitest';
import { KINDS, LAND_CRAB, WOODLOUSE } from '../life/land-test-kit.ts';
import { traitsOfLifeHistory } from '../life/life-history.ts';
import { conflictsOf } from './conflicts.ts';
import type { Conflict, Inhabitant, PlaceFacts } from './inhabitant.ts';

const CRAB: Inhabitant = {
  id: 'crab',
  name: 'land crabs',
  scientificName: 'Inventa terrestris',
  traits: { priors: traitsOfLifeHistory('crab', LAND_CRAB).priors, ...KINDS.crab },
  ranges: [{ series: 'waterTemperature', low: { value: 24, source: 'a' }, high: { value: 28, source: 'a' } }],
  count: 6,
  leastFounders: { value: 5, source: 'trade' },
  ways: { climbsGlass: true, needsWayOut: true },
  space: { floor: { value: 1800, source: 'trade' }, groundPerAdult: { value: 150, source: 'trade' } },
  risks: [{ kind: 'law', text: 'Collected in the wild in numbers; ask for captive-bred ones.', source: 'b' }],
};
const LOUSE: Inhabitant = {
  ...CRAB,
  id: 'woodlouse',
  name: 'woodlice',
  traits: { priors: traitsOfLifeHistory('woodlouse', WOODLOUSE).priors, ...KINDS.woodlouse },
  ranges: [{ series: 'waterTemperature', low: { value: 2, source: 'c' }, high: { value: 20, source: 'c' } }],
  count: 3,
  leastFounders: { value: 10, source: 'trade' },
  ways: {},
  space: {},
  risks: [],
};
const PLACE: PlaceFacts = {
  floor: 4000,
  landFloor: 1900,
  water: 20,
  height: 50,
  openCover: 0.03,
  gaps: [],
  feedsWater: true,
  feedsLand: false,
};
const kinds = (conflicts: readonly Conflict[]): string[] =>
  conflicts.map(({ kind, who }) => `${kind} ${who.join('+')}`);

describe('conflicts', () => {
  const found = conflictsOf([CRAB, LOUSE], PLACE);

  it('name ranges that are apart, and by how much', () => {
    const range = found.find(({ kind }) => kind === 'range')!;
    expect(range.who).toEqual(['crab', 'woodlouse']);
    expect(range.sentence).toContain(
      'at least 24 °C for the first, at most 20 °C for the second, 4 °C apart',
    );
    expect(range.source).toBe('a; c');
  });

  it('tell of air that is too cold where only the water is heated, and not twice where neither is', () => {
    const limits = { low: { value: 24, source: 'a' } };
    const both: Inhabitant = {
      ...CRAB,
      ranges: [
        { series: 'waterTemperature', ...limits },
        { series: 'airTemperature', ...limits },
      ],
    };
    const told = (water: number, air: number): string[] =>
      conflictsOf([both], {
        ...PLACE,
        expected: [
          { series: 'waterTemperature', low: water, high: water, from: 'the room' },
          { series: 'airTemperature', low: air, high: air, from: 'the room' },
        ],
      }).flatMap(({ kind, sentence }) => (kind === 'range' ? [sentence] : []));
    expect(told(26, 20)).toEqual([
      'Land crabs need air temperature of at least 24 °C; the room gives 20 °C, 4 °C too little.',
    ]);
    expect(told(20, 20)).toEqual([
      'Land crabs need water temperature of at least 24 °C; the room gives 20 °C, 4 °C too little.',
    ]);
    expect(told(26, 25)).toEqual([]);
  });

  it('name what room and fill give and a species does not bear, and by how much; guests are not asked', () => {
    const cold: PlaceFacts = {
      ...PLACE,
      expected: [{ series: 'waterTemperature', low: 19, high: 21, from: 'the room' }],
    };
    const alone = conflictsOf([CRAB, LOUSE], cold).filter(
      ({ kind, who }) => kind === 'range' && who.length === 1,
    );
    expect(alone.map(({ sentence }) => sentence)).toEqual([
      'Land crabs need water temperature of at least 24 °C; the room gives 19 °C, 5 °C too little.',
    ]);
    expect(alone[0]).toMatchObject({ severity: 'warning', source: 'a', who: ['crab'] });
    const guest = conflictsOf([{ ...CRAB, isGuest: true }, LOUSE], cold);
    expect(guest.some(({ kind, who }) => kind === 'range' && who.length === 1)).toBe(false);
  });

  it('tell who eats whom at which size', () => {
    const eaten = found.find(({ kind, who }) => kind === 'eaten' && who[0] === 'woodlouse')!;
    expect(eaten.sentence).toMatch(/Land crabs eat woodlice up to 8 mm, the young above all/);
    expect(kinds(found)).not.toContain('eaten crab+woodlouse');
  });

  it('tell of worms by what they count as in a mouth, and up to which of their own lengths they are eaten', () => {
    const fixed = (median: number) => ({
      kind: 'fixed' as const,
      median,
      spread: 0,
      min: median,
      max: median,
    });
    const thin = (preyKind: 'worms' | 'small arthropods', end: number): Inhabitant => ({
      ...LOUSE,
      traits: {
        ...LOUSE.traits,
        preyKind,
        priors: {
          ...LOUSE.traits.priors,
          dryMassPerCube: fixed(0.006 / 64),
          lengthAtBirth: fixed(20),
          lengthAtEnd: fixed(end),
        },
      },
    });
    const hunter: Inhabitant = {
      ...CRAB,
      traits: { ...CRAB.traits, hunts: { worms: 1, 'small arthropods': 1 } },
    };
    const told = (prey: Inhabitant): string | undefined =>
      conflictsOf([hunter, prey], PLACE).find(({ kind }) => kind === 'eaten')?.sentence;
    // The crab takes up to 8 mm; a 64th of the compact mass is a quarter of the length.
    expect(told(thin('worms', 24))).toMatch(
      /of any size: .* 20 mm long at birth and 24 mm full grown; thin as they are, they count as 5 to 6 mm in a mouth/,
    );
    const parting: Inhabitant = { ...thin('worms', 24), id: 'parting' };
    expect(told({ ...parting, traits: { ...parting.traits, mating: 'division' } })).toMatch(
      /20 mm long when they part and 24 mm full grown/,
    );
    expect(told(thin('worms', 40))).toMatch(/up to 32 mm, the young above all/);
    expect(told(thin('small arthropods', 24))).toBeUndefined();
  });

  it('name each opening through which a grown animal passes, and none that is finer', () => {
    const long = CRAB.traits.priors.lengthAtEnd?.median ?? 0;
    const gaps = [
      { name: 'Front slot', width: long / 2 },
      { name: 'the mesh of the cover', width: long / 20 },
    ];
    const out = conflictsOf([CRAB], { ...PLACE, openCover: 0, gaps }).find(({ kind }) => kind === 'way out');
    expect(out?.sentence).toContain('Front slot');
    expect(out?.sentence).not.toContain('mesh of the cover');
    expect(out?.sentence).not.toContain('%');
  });

  it('tell of too few, of ways out, of too small a place, of leftovers and of law', () => {
    expect(kinds(found)).toEqual(
      expect.arrayContaining(['few woodlouse', 'way out crab', 'leftovers ', 'law crab']),
    );
    expect(kinds(conflictsOf([{ ...CRAB, count: 30 }], PLACE))).toContain('space crab');
    expect(kinds(conflictsOf([CRAB], { ...PLACE, openCover: 0, feedsWater: false }))).toEqual(['law crab']);
  });

  it('tell of mouths that no prey here fits', () => {
    const traits = { ...CRAB.traits, priors: { ...CRAB.traits.priors } };
    const fixed = (median: number) => ({
      kind: 'fixed' as const,
      median,
      spread: 0,
      min: median,
      max: median,
    });
    traits.priors = { ...traits.priors, preferenceForPrey: fixed(8), preyLargest: fixed(0.1) };
    const small = { ...CRAB, traits };
    expect(kinds(conflictsOf([small, LOUSE], PLACE))).toContain('mouth crab+woodlouse');
    expect(kinds(conflictsOf([small], PLACE))).toContain('mouth crab');
  });

  it('put warnings first, each a sentence with source and mend', () => {
    const firstNote = found.findIndex(({ severity }) => severity === 'note');
    expect(found.slice(firstNote).every(({ severity }) => severity === 'note')).toBe(true);
    for (const { sentence, source, mend } of found) {
      expect(sentence).toMatch(/^[A-Z].*\.$/);
      expect(mend).toMatch(/^[A-Z].*\.$/);
      expect(source.length).toBeGreaterThan(0);
    }
  });

  it('tell when feed comes while those who eat it rest, and who has the first of it', () => {
    const night: Inhabitant = { ...LOUSE, traits: { ...LOUSE.traits, active: 'night' } };
    const day: Inhabitant = {
      ...LOUSE,
      id: 'day',
      name: 'lizards',
      traits: { ...LOUSE.traits, active: 'day' },
    };
    const at = (light: 'light' | 'dark') => ({
      ...PLACE,
      feedings: [{ onLand: true, time: light === 'light' ? '12:00' : '22:00', light }],
    });
    const told = (all: readonly Inhabitant[], light: 'light' | 'dark') =>
      conflictsOf(all, at(light)).filter(({ kind, who }) => kind === 'leftovers' && who.length > 0);
    expect(told([night], 'dark')).toEqual([]);
    expect(told([night], 'light')[0]).toMatchObject({ severity: 'warning', who: ['woodlouse'] });
    expect(told([night], 'light')[0]!.sentence).toContain('The feed of 12:00 on the land comes while all');
    expect(told([night, day], 'light')[0]!.sentence).toContain('lizards have the first of it');
    expect(told([night, day], 'dark')[0]).toMatchObject({ severity: 'note', who: ['day'] });
  });

  it('tell that bought water plants bring guests until some are listed', () => {
    const told = (waterPlants: boolean, areListed: boolean): number =>
      conflictsOf([], { ...PLACE, feedsWater: false, guests: { waterPlants, areListed } }).length;
    expect([told(true, false), told(true, true), told(false, false)]).toEqual([1, 0, 0]);
  });

  it('tell of vegetables that only hunters are there for', () => {
    const priors = { ...CRAB.traits.priors };
    const fixed = (median: number) =>
      ({ kind: 'fixed', median, spread: 0, min: median, max: median }) as const;
    const hunter: Inhabitant = {
      ...CRAB,
      traits: {
        ...CRAB.traits,
        priors: {
          ...priors,
          shareInWater: fixed(1),
          preferenceForFeed: fixed(25),
          preferenceForPrey: fixed(5),
          preferenceForCarrion: fixed(0),
        },
      },
    };
    const grazer: Inhabitant = {
      ...hunter,
      id: 'snail',
      traits: { ...hunter.traits, priors: { ...hunter.traits.priors, preferenceForPrey: fixed(0) } },
    };
    const place = { ...PLACE, vegetables: ['cucumber slice'] };
    const told = (all: readonly Inhabitant[]) =>
      conflictsOf(all, place).filter(({ sentence }) => sentence.includes('cucumber slice'));
    expect(told([hunter])[0]!.sentence).toContain('hardly touch cucumber slice');
    expect(told([hunter, grazer])).toEqual([]);
  });

  it('find none without animals, and poison only beside others', () => {
    expect(conflictsOf([], { ...PLACE, feedsWater: false })).toEqual([]);
    const poisonous: Inhabitant = {
      ...CRAB,
      risks: [{ kind: 'toxin', text: 'Its skin gives off poison when it is handled.', source: 'd' }],
    };
    const alone = conflictsOf([poisonous], { ...PLACE, openCover: 0, feedsWater: false });
    expect(alone.filter(({ severity }) => severity === 'warning')).toEqual([]);
    expect(kinds(conflictsOf([poisonous, LOUSE], PLACE))).toContain('toxin crab+woodlouse');
  });

  it('of a risk, what helps says nothing that the risk says already', () => {
    const mendOf = (kind: Inhabitant['risks'][number]['kind'], text: string): string | undefined =>
      conflictsOf([{ ...CRAB, risks: [{ kind, text, source: 's' }] }], undefined).find(
        ({ sentence }) => sentence === `Land crabs: ${text}`,
      )?.mend;
    expect(mendOf('disease', 'Take tested stock and keep newcomers apart for some weeks.')).toBe(
      'Use own tools, wash hands before and after.',
    );
    expect(mendOf('zoonosis', 'Wash hands after work in the water.')).toBe(
      'Keep newcomers apart for some weeks, use own tools.',
    );
    expect(mendOf('law', 'At large in warm waters. Never release it.')).toBe(
      'Ask your authority before you buy.',
    );
    expect(mendOf('law', 'Collected in numbers.')).toMatch(/^Ask your authority .*; never release/);
    expect(mendOf('welfare', 'A sick animal belongs to a vet; find one before you buy.')).toBe(
      'Do as it says.',
    );
  });
});
