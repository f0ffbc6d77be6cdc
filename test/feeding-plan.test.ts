import { loadBundledEnclosure, planOf } from '@shoreglass/contract';
import {
  expectedRun,
  type FeedingPlan,
  feedingPlan,
  type Plan,
  prepareOutlook,
  type Routine,
  runMembers,
} from '@shoreglass/engine';
import { library } from '@shoreglass/library';
import { describe, expect, it } from 'vitest';
import { FIRST_TO_JUDGE } from '../packages/engine/src/outlook/fresh-members.ts';
import { planOfFile, shrimpPool } from './kept-files.ts';

const SLOW = 600_000;
const DAYS = 400;
const LATE = 240;
const MEMBERS = 24;

/** A pool of shrimps of our own, with moss. */
const ownPlan = (): Plan =>
  planOfFile(
    shrimpPool({
      adults: 15,
      after: 14,
      handles: 10,
      algae: 0.5,
      warmth: 22,
      lamp: '{ name: Lamp, power: 10 W, lumens: 900 lm, on: 10:00, lit: 9 h }',
      plants: 'plants:\n  - { plant: taxiphyllum-barbieri, zone: pool, cover: 30 % }',
      routines: '  - { do: feed, feed: shrimp-pellet, amount: 0.02 g, every: 3 d, after: 15 d }\n',
    }),
  );

/** The plan with the proposal in its file: the feed that repeats in its place takes the new mass and interval. */
function withProposal(plan: Plan, { mass, everyDays, onLand: place }: FeedingPlan): Plan {
  return {
    ...plan,
    routines: plan.routines.flatMap((each): Routine[] =>
      each.kind !== 'feed' || (each.onLand ?? false) !== place
        ? [each]
        : mass > 0
          ? [{ ...each, mass, everyDays }]
          : [],
    ),
  };
}

function meanLate(values: Float64Array): number {
  const late = values.subarray(LATE);
  return late.reduce((sum, value) => sum + value, 0) / late.length;
}

// Thirty scuds: not much above fifty is reached, and with feed that eats the hardness the ramshorns need.
const CASES = [
  [
    'the demo, scuds',
    () => planOf(loadBundledEnclosure('beck-bank').document, library),
    'hyalella-azteca',
    30,
  ],
  [
    'the demo, woodlice',
    () => planOf(loadBundledEnclosure('beck-bank').document, library),
    'porcellio-scaber',
    30,
  ],
  ['a pool of our own, shrimps', ownPlan, 'neocaridina-davidi', 40],
] as const;

describe('a feeding that is proposed', () => {
  it.each(CASES)(
    'holds the number and keeps the water in its band when the file is run with it: %s',
    (_, planned, id, target) => {
      const plan = planned();
      const found = feedingPlan(plan, { [id]: target });
      expect(found.holds, found.sentences.join(' ')).toBe(true);
      expect(found.clean, found.sentences.join(' ')).toBe(true);
      const fed = withProposal(plan, found);
      const prepared = prepareOutlook(fed, { days: DAYS, members: MEMBERS, seed: 1 });
      const record = expectedRun(prepared);
      const at = (name: string): number => (prepared.setting.seriesIds as readonly string[]).indexOf(name);
      const adults = at(`population:${id}:adult`);
      expect(meanLate(record.series[adults]!)).toBeGreaterThan(0.8 * target);
      // The run of the file is the very trial by which the feeding was found.
      const { fromPlan } = found.populations.find((each) => each.id === id)!;
      expect(meanLate(record.series[adults]!) / fromPlan).toBeCloseTo(1, 6);
      const bands = fed.bands.filter(({ series }) => series === 'unionisedAmmonia' || series === 'nitrite');
      for (const band of bands)
        if (band.high !== undefined)
          expect(Math.max(...record.series[at(band.series)]!.subarray(60)), band.series).toBeLessThanOrEqual(
            band.high,
          );
      // The share told is that of runs which had no part in the choice: members of the file's outlook far beyond those that chose.
      const { series } = runMembers(prepared, FIRST_TO_JUDGE, FIRST_TO_JUDGE + MEMBERS);
      const length = prepared.setting.seriesIds.length * DAYS;
      const held = Array.from({ length: MEMBERS }, (_each, member) => {
        const from = member * length + adults * DAYS;
        return meanLate(series.subarray(from, from + DAYS));
      }).filter((late) => late > 0.8 * target);
      expect(found.heldIn).toMatchObject({ held: held.length, runs: MEMBERS, share: held.length / MEMBERS });
      expect(found.sentences.join(' ')).toContain(
        `In ${held.length} of ${MEMBERS} fresh runs, drawn from what is not known of species and room and without part in the choice`,
      );
      // It is no exception among what may be; that fewer hold than the half aimed at is said where it is sure.
      expect(found.heldIn.high).toBeGreaterThan(1 / 4);
      expect(found.chosenBy).toBe('half of the runs drawn');
      expect(/Do not count on the number/.test(found.sentences.join(' '))).toBe(found.heldIn.high < 1 / 2);
    },
    SLOW,
  );
});

/** Adults of a population and carbonate hardness in the expected run of a file with the proposal in it. */
function keptWith(plan: Plan, found: FeedingPlan, id: string) {
  const prepared = prepareOutlook(withProposal(plan, found), { days: DAYS, members: 2, seed: 1 });
  const { series } = expectedRun(prepared);
  const course = (name: string): Float64Array =>
    series[(prepared.setting.seriesIds as readonly string[]).indexOf(name)]!;
  return { adults: course(`population:${id}:adult`), KH: course('KH'), pH: course('pH') };
}

describe('a number no feeding holds', () => {
  const window = (): Plan => loadBundledEnclosure('espoo-window').plan!;

  it.each([
    ['cherry shrimps beside snails', 'neocaridina-davidi', 60],
    ['two hundred snails', 'planorbella-duryi', 200],
  ] as const)(
    'is not answered with feed that turns the water sour and kills them: %s',
    (_, id, target) => {
      const plan = window();
      const found = feedingPlan(plan, { [id]: target });
      const told = found.sentences.join(' ');
      expect(found.holds, told).toBe(false);
      expect(found.advised, told).toBe(true);
      expect(found.chosenBy).toBe('expected run');
      expect(told).toMatch(/the dose follows the expected run alone/);
      expect(found.leaves, told).toMatchObject({ series: 'KH', side: 'low', limit: 3 });
      expect(found.leaves!.mass).toBeGreaterThan(found.mass);
      expect(told).toMatch(
        /^No dose of algae wafer every 3 days holds that: with .* carbonate hardness falls below 3/,
      );
      expect(told).toMatch(/ramshorn snails/);
      const carried = found.populations.find((each) => each.id === id)!.adults;
      expect(told).toContain(`only about ${carried.toFixed(0)} adults`);
      // The file with the proposal in it stays above the hardness snails need, and those of the file live in it.
      const { adults, KH } = keptWith(plan, found, id);
      expect(adults.at(-1)!, told).toBeGreaterThan(1);
      expect(Math.min(...KH), told).toBeGreaterThan(3);
      // What was left first is left indeed with the dose that is named.
      const sour = keptWith(plan, { ...found, mass: 2 * found.leaves!.mass }, id);
      expect(Math.min(...sour.KH)).toBeLessThan(3);
    },
    SLOW,
  );

  it(
    'a water that is out of band without feed too is not held against the feed',
    () => {
      const plan = ownPlan();
      const asked = {
        series: 'KH',
        low: 40,
        owner: 'keeper',
        basis: 'invented',
        source: 'invented',
      } as const;
      const found = feedingPlan({ ...plan, bands: [...plan.bands, asked] }, { 'neocaridina-davidi': 40 });
      const told = found.sentences.join(' ');
      expect(found.holds, told).toBe(true);
      expect(found.leaves).toBeUndefined();
      expect(found.leftUnfed).toMatchObject({ series: 'KH', side: 'low', limit: 40, owner: 'keeper' });
      expect(told).toMatch(
        /Without this feed too carbonate hardness falls below 40 .*not held against the feed/,
      );
    },
    SLOW,
  );
});
