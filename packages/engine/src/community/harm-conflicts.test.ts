import { describe, expect, it } from 'vitest';
import { type HarmedKind, harmTraits } from '../life/harm-rules.ts';
import { TRAIT_DEFAULTS } from '../life/traits.ts';
import { harmConflicts } from './harm-conflicts.ts';
import type { Inhabitant, PlaceFacts } from './inhabitant.ts';

const fixed = (median: number) => ({ kind: 'fixed' as const, median, spread: 0, min: median, max: median });

/** Somebody of a kind, by the rules for it; `inWater` is the part of its life there. */
function somebody(id: string, kind: HarmedKind, inWater: number, firstDay = 0): Inhabitant {
  const spared = Object.entries(TRAIT_DEFAULTS).map(([trait, value]) => [trait, fixed(value)]);
  return {
    id,
    name: id,
    scientificName: id,
    traits: {
      mating: 'two sexes',
      brood: 'laid',
      priors: {
        ...Object.fromEntries(spared),
        shareInWater: fixed(inWater),
        lengthAtChange: fixed(0),
        ...harmTraits(kind),
      } as Inhabitant['traits']['priors'],
    },
    ranges: [],
    count: 10,
    firstDay,
    leastFounders: { value: 1, source: 'trade' },
    ways: {},
    space: {},
    risks: [],
  };
}

const PLACE: PlaceFacts = {
  floor: 4000,
  landFloor: 2000,
  water: 20,
  height: 50,
  openCover: 0,
  gaps: [],
  shore: { length: 0.4, wayOut: 1, hasPerch: false },
  fill: { conductivity: 0.4, hardness: 8, copper: 0 },
  isRunIn: true,
  feedsWater: true,
  feedsLand: false,
};
const WOODLICE = somebody(
  'woodlice',
  { habitat: 'land', preyKind: 'small arthropods', needsWayOut: true },
  0,
);
const CRABS = somebody(
  'mangrove crabs',
  {
    habitat: 'amphibious',
    preyKind: 'crustaceans',
    conductivity: { low: 5500, high: 46_000 },
    needsWayOut: true,
    climbsGlass: true,
  },
  0.3,
);
const SHRIMPS = somebody('shrimps', { habitat: 'water', preyKind: 'crustaceans' }, 1);
const kinds = (one: Inhabitant, place: PlaceFacts): string[] =>
  harmConflicts([one], place).map(({ kind, severity }) => `${kind} ${severity}`);

describe('drowning', () => {
  it('is told of nobody where the bank slopes gently all round, nor of those of the water', () => {
    expect(kinds(WOODLICE, PLACE)).toEqual([]);
    expect(kinds(SHRIMPS, { ...PLACE, shore: { length: 0.4, wayOut: 0, hasPerch: false } })).toEqual([]);
  });
  it('is told with how many are lost a month where nothing leads out, and is worse without land', () => {
    const steep = { ...PLACE, shore: { length: 0.4, wayOut: 0, hasPerch: false } };
    const [told] = harmConflicts([WOODLICE], steep);
    // 2 mm a day along 0.4 m of shore on 0.2 m2 of land: 0.4 % a day.
    expect(told?.sentence).toContain('none of the shore does, and about 11 % of them are lost a month');
    expect(harmConflicts([WOODLICE], { ...steep, landFloor: 0 })[0]?.sentence).toContain(
      'drown within a day',
    );
  });
  it('is a note where a seventh of the shore leads out, and spares climbers of glass', () => {
    const seventh = { ...PLACE, shore: { length: 0.4, wayOut: 0.15, hasPerch: false } };
    expect(kinds(WOODLICE, seventh)).toEqual(['drowning note']);
    const geckos = somebody(
      'geckos',
      { habitat: 'land', preyKind: 'reptiles', needsWayOut: true, climbsGlass: true },
      0,
    );
    expect(kinds(geckos, seventh)).toEqual([]);
  });
});

describe('salt', () => {
  it('warns of fresh water for animals of brackish water, and of brine for those of fresh water', () => {
    const crabs = harmConflicts([CRABS], PLACE).find(({ kind }) => kind === 'salt');
    expect(crabs?.sentence).toMatch(/need brackish water of at least 5\.5 mS\/cm/);
    const brine = { ...PLACE, fill: { conductivity: 40, hardness: 200, copper: 0 } };
    expect(kinds(SHRIMPS, brine)).toEqual(['salt warning']);
    expect(kinds(CRABS, brine)).toEqual([]);
  });
});

describe('copper', () => {
  const of = (copper: number, hardness: number): string[] =>
    kinds(SHRIMPS, { ...PLACE, fill: { conductivity: 0.4, hardness, copper } });
  it('is told in soft water where it is none in hard', () => {
    expect(of(15, 3)).toEqual(['copper warning']);
    expect(of(15, 20)).toEqual([]);
  });
  it('is no matter to animals of the land', () => {
    expect(kinds(WOODLICE, { ...PLACE, fill: { conductivity: 0.4, hardness: 3, copper: 100 } })).toEqual([]);
  });
});

describe('a filter that is not run in', () => {
  const fresh = { ...PLACE, isRunIn: false };
  it('is told to those who breathe water and move in early, with the day', () => {
    expect(harmConflicts([{ ...SHRIMPS, firstDay: 6 }], fresh)[0]?.sentence).toContain(
      '6 days after filling',
    );
    expect(kinds(SHRIMPS, fresh)).toEqual(['too soon warning']);
  });
  it('weighs less once the worst is over, and is not asked of guests', () => {
    expect(kinds({ ...SHRIMPS, firstDay: 24 }, fresh)).toEqual(['too soon note']);
    expect(kinds({ ...SHRIMPS, isGuest: true }, fresh)).toEqual([]);
  });
  it('is no matter to those who come after four weeks, to snails, and once it is run in', () => {
    expect(kinds({ ...SHRIMPS, firstDay: 28 }, fresh)).toEqual([]);
    expect(kinds(somebody('snails', { habitat: 'water', preyKind: 'snails' }, 1), fresh)).toEqual([]);
    expect(kinds(SHRIMPS, PLACE)).toEqual([]);
  });
});
