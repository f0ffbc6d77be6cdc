import { loadBundledEnclosure, planOf } from '@shoreglass/contract';
import {
  answersToPest,
  expectedRun,
  FOOD_SPECS,
  type Plan,
  type Population,
  prepareOutlook,
  runTrial,
} from '@shoreglass/engine';
import { library } from '@shoreglass/library';
import { describe, expect, it } from 'vitest';

const plan: Plan = planOf(loadBundledEnclosure('beck-bank').document, library);
const SLOW = 120_000;
const unfed: Plan = { ...plan, routines: plan.routines.filter(({ kind }) => kind !== 'feed') };

/** A population that eats nothing but feed. */
function onlyFeed(population: Population): Population {
  const nothing = { kind: 'fixed', median: 0, spread: 0, min: 0, max: 0 } as const;
  const priors = { ...population.traits.priors };
  for (const { food, preference } of FOOD_SPECS) if (food !== 'feed') priors[preference] = nothing;
  return { ...population, traits: { ...population.traits, priors } };
}

describe('when food runs short', () => {
  it(
    'with no food every animal dies out, and plants, algae, films and moulds go on',
    () => {
      const starved: Plan = { ...unfed, populations: plan.populations.map(onlyFeed) };
      const prepared = prepareOutlook(starved, { days: 250, members: 2, seed: 1 });
      const { seriesIds } = prepared.setting;
      const record = expectedRun(prepared);
      const last = (id: string): number => {
        const at = (seriesIds as readonly string[]).indexOf(id);
        if (at < 0) throw new Error(`no series ${id}`);
        return record.series[at]![249]!;
      };
      for (const { id } of plan.populations) expect(last(`population:${id}`), id).toBeLessThan(0.01);
      for (const id of ['attachedAlgae', 'plantCover', 'detritus', 'nitrate'])
        expect(last(id), id).toBeGreaterThan(0);
      for (const [element, error] of Object.entries(record.closure))
        expect(Math.abs(error), element).toBeLessThan(1e-9);
    },
    SLOW,
  );

  it(
    'answers to a pest share their random numbers: half the feed and a bait leave fewer snails than nothing',
    () => {
      const few = { days: 200, members: 4, seed: 1 };
      const answers = answersToPest(plan, 'planorbella-duryi', few);
      const left = (kind: string): number => answers.find((each) => each.kind === kind)!.pest.q50;
      expect(answers.map(({ kind }) => kind)).toEqual(['nothing', 'less feed', 'bait']);
      expect(left('less feed')).toBeLessThan(left('nothing'));
      expect(left('bait')).toBeLessThan(left('nothing'));
      expect(answers[0]!.others.map(({ id }) => id)).toContain('porcellio-scaber');
      for (const { pest, course } of answers) {
        expect(course).toHaveLength(few.days);
        expect(course[few.days - 1]).toBe(pest.q50);
      }
      expect(() => answersToPest(plan, 'unicorn', few)).toThrow(/no population 'unicorn'/);
      expect(() => answersToPest(plan, 'planorbella-duryi', { ...few, baitTakes: 0 })).toThrow(/bait/);
    },
    SLOW,
  );

  it(
    'taking out by a routine leaves the same as taking out by as many actions',
    () => {
      const taking = {
        kind: 'remove animals',
        population: 'planorbella-duryi',
        stage: 'adult',
        count: 2,
      } as const;
      const order = {
        change: {},
        days: 70,
        seed: 1,
        members: ['expected', 0] as const,
        series: ['population:planorbella-duryi', 'population:porcellio-scaber'] as const,
      };
      const counts = (changed: Plan) =>
        runTrial(changed, order).map(({ series }) => series.map((each) => [...each]));
      const routine = counts({
        ...plan,
        routines: [...plan.routines, { ...taking, everyDays: 7, firstDay: 50 }],
      });
      const actions = counts({
        ...plan,
        actions: [...plan.actions, ...[50, 57, 64].map((day) => ({ ...taking, day }))],
      });
      expect(routine).toEqual(actions);
      expect(routine).not.toEqual(counts(plan));
    },
    SLOW,
  );
});
