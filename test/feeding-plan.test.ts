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
import { planOfFile, shrimpPool } from './kept-files.ts';

const SLOW = 240_000;
const DAYS = 400;
const LATE = 240;

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

/** The plan with the proposal in its file: the feed that repeats takes the new mass and interval. */
function withProposal(plan: Plan, { mass, everyDays }: FeedingPlan): Plan {
  return {
    ...plan,
    routines: plan.routines.flatMap((each): Routine[] =>
      each.kind !== 'feed' ? [each] : mass > 0 ? [{ ...each, mass, everyDays }] : [],
    ),
  };
}

function meanLate(values: Float64Array): number {
  const late = values.subarray(LATE);
  return late.reduce((sum, value) => sum + value, 0) / late.length;
}

const CASES = [
  [
    'the demo, scuds',
    () => planOf(loadBundledEnclosure('beck-bank').document, library),
    'hyalella-azteca',
    60,
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
      const prepared = prepareOutlook(fed, { days: DAYS, members: 10, seed: 1 });
      const record = expectedRun(prepared);
      const at = (name: string): number => (prepared.setting.seriesIds as readonly string[]).indexOf(name);
      const adults = at(`population:${id}:adult`);
      expect(meanLate(record.series[adults]!)).toBeGreaterThan(0.8 * target);
      const bands = fed.bands.filter(({ series }) => series === 'unionisedAmmonia' || series === 'nitrite');
      for (const band of bands)
        if (band.high !== undefined)
          expect(Math.max(...record.series[at(band.series)]!.subarray(60)), band.series).toBeLessThanOrEqual(
            band.high,
          );
      // Half of the runs hold it too: what a median run is fed for is no exception.
      const { series } = runMembers(prepared, 0, 10);
      const length = prepared.setting.seriesIds.length * DAYS;
      const late = Array.from({ length: 10 }, (_each, member) => {
        const from = member * length + adults * DAYS;
        return meanLate(series.subarray(from, from + DAYS));
      }).sort((a, b) => a - b);
      expect(late[5]!).toBeGreaterThan(0.8 * target);
    },
    SLOW,
  );
});
