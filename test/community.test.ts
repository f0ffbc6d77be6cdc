import { loadBundledEnclosure, planOf } from '@shoreglass/contract';
import {
  additionInquiry,
  answerWith,
  carryingCapacity,
  expectedRun,
  FOOD_SPECS,
  feedingPlan,
  foodFlows,
  type Plan,
  prepareOutlook,
  runTrial,
  whatIfAdded,
} from '@shoreglass/engine';
import { library } from '@shoreglass/library';
import { describe, expect, it } from 'vitest';
import { bookReader } from '../packages/engine/src/outlook/book-reader.ts';

const plan: Plan = planOf(loadBundledEnclosure('beck-bank').document, library);
const SLOW = 120_000;

describe('the community of the demo', () => {
  it(
    'eats what its book says, more feed carries more adults, and nobody eats what it does not like',
    () => {
      const capacity = carryingCapacity(plan, 60);
      const feed = capacity.find(({ food }) => food === 'feed')!;
      expect(feed.eaters.map(({ population }) => population)).toContain('hyalella-azteca');
      expect(feed.eaters.map(({ population }) => population)).not.toContain('porcellio-scaber');
      const doubled: Plan = {
        ...plan,
        routines: plan.routines.map((each) =>
          each.kind === 'feed' ? { ...each, mass: 2 * each.mass } : each,
        ),
      };
      const more = carryingCapacity(doubled, 60).find(({ food }) => food === 'feed')!;
      expect(more.eaters[0]!.adults / feed.eaters[0]!.adults).toBeCloseTo(2, 6);
    },
    SLOW,
  );

  it(
    'has as many snails on feed alone as the feed is told to carry, and they eat nearly all of it',
    () => {
      const snail = plan.populations.find(({ id }) => id === 'planorbella-duryi')!;
      const fixed = (value: number) =>
        ({ kind: 'fixed', median: value, spread: 0, min: value, max: value }) as const;
      const priors = { ...snail.traits.priors };
      for (const { food, preference } of FOOD_SPECS) if (food !== 'feed') priors[preference] = fixed(0);
      // Food alone is asked about, so the water does no harm and nobody is crowded.
      const harmless = { pHLow: 2, pHHigh: 12, hardnessLow: 0, hardnessHigh: 200, oxygenNeeded: 0 } as const;
      for (const [id, value] of Object.entries(harmless)) priors[id as keyof typeof harmless] = fixed(value);
      priors.ammoniaNoEffect = fixed(9);
      priors.ammoniaMedianLethal = fixed(50);
      priors.crowdingHazard = fixed(0);
      priors.crowdedEggs = fixed(0);
      const alone: Plan = {
        ...plan,
        populations: [
          { ...snail, founders: [{ stage: 'adult', count: 6 }], traits: { ...snail.traits, priors } },
        ],
        actions: plan.actions.filter(({ kind }) => kind !== 'add animals'),
      };
      const days = 900;
      const feed = carryingCapacity(alone, 300).find(({ food }) => food === 'feed')!;
      const [carried] = feed.eaters;
      expect(carried!.breeds).toBe(true);
      const prepared = prepareOutlook(alone, { days, members: 2, seed: 1 });
      const { series, bookRows } = expectedRun(prepared);
      const late = (id: string): number => {
        const values = series[(prepared.setting.seriesIds as readonly string[]).indexOf(id)]!.subarray(300);
        return values.reduce((sum, value) => sum + value, 0) / values.length;
      };
      const all = late('population:planorbella-duryi');
      expect(all / (carried!.withYoung + carried!.young)).toBeGreaterThan(0.7);
      expect(all / (carried!.withYoung + carried!.young)).toBeLessThan(1.5);
      // Many small adults, not few full-grown ones.
      expect(late('population:planorbella-duryi:adult')).toBeGreaterThan(2 * carried!.adults);
      const { shape } = bookReader(prepared);
      const [flow] = foodFlows({ plan: alone, shape, rows: bookRows, days });
      const weeks = flow!.weekly.slice(-52);
      const eaten = weeks.reduce((sum, week) => sum + week, 0) / weeks.length / 7;
      expect(eaten / feed.production).toBeGreaterThan(0.85);
      expect(eaten / feed.production).toBeLessThan(1.1);
    },
    SLOW,
  );

  it(
    'has weekly flows that add up to what was eaten',
    () => {
      const prepared = prepareOutlook(plan, { days: 90, members: 2, seed: 1 });
      const record = expectedRun(prepared);
      const { shape } = bookReader(prepared);
      const flows = foodFlows({ plan, shape, rows: record.bookRows, days: 90 });
      const scuds = flows.filter(({ eater }) => eater === 'hyalella-azteca');
      expect(scuds.length).toBeGreaterThan(1);
      for (const { weekly, mean } of scuds) {
        // 12 full weeks and six days, which the last entry brings to seven.
        const days = weekly.map((_, week) => (week < 12 ? 7 : 6));
        const sum = weekly.reduce((total, amount, week) => total + (amount * days[week]!) / 7, 0);
        expect(sum / (mean * (90 / 7))).toBeCloseTo(1, 9);
      }
      expect(flows.some(({ eater, food }) => eater === 'porcellio-scaber' && food === 'land litter')).toBe(
        true,
      );
    },
    SLOW,
  );

  it(
    'without animals has nothing eaten, and an addition changes its own numbers first',
    () => {
      const { founders: _, ...scud } = plan.populations[0]!;
      const effects = whatIfAdded(
        plan,
        { population: { ...scud, founders: [] }, adults: 40 },
        { days: 40, members: 2, seed: 1 },
      );
      const own = effects.find(({ series }) => series === 'population:hyalella-azteca:adult')!;
      expect(own.difference.q50).toBeGreaterThan(15);
      expect(own.course).toHaveLength(40);
      for (const { course, courseLow, courseHigh } of effects)
        for (const [day, middle] of course.entries()) {
          expect(courseLow[day]!).toBeLessThanOrEqual(middle);
          expect(courseHigh[day]!).toBeGreaterThanOrEqual(middle);
        }
      expect(() =>
        whatIfAdded(
          plan,
          { population: { ...scud, founders: [] }, adults: 0 },
          { days: 5, members: 2, seed: 1 },
        ),
      ).toThrow(/at least 1/);
    },
    SLOW,
  );

  it(
    'is asked the same in portions elsewhere as at once here, with how far it is',
    async () => {
      const { founders: _, ...snail } = plan.populations[1]!;
      const addition = { population: { ...snail, founders: [] }, adults: 5, day: 3 };
      const options = { days: 12, members: 6, seed: 7 };
      const told: number[] = [];
      const elsewhere = await answerWith(
        additionInquiry(plan, addition, options),
        async (order) => runTrial(plan, order),
        ({ done, expected }) => {
          expect(expected).toBe(12);
          told.push(done);
        },
      );
      expect(elsewhere).toEqual(whatIfAdded(plan, addition, options));
      expect(told[told.length - 1]).toBe(12);
    },
    SLOW,
  );

  it(
    'is fed more for more animals, and refuses what it cannot know',
    () => {
      const few = feedingPlan(plan, { 'hyalella-azteca': 20 }, { days: 150 });
      const many = feedingPlan(plan, { 'hyalella-azteca': 150 }, { days: 150 });
      expect(many.mass).toBeGreaterThan(few.mass);
      expect(few.everyDays).toBe(3);
      expect(few.sentences[0]).toMatch(/^Give .* m?g of .* every 3 days into the water\.$/);
      // Who judges does not choose: with other runs to judge by the dose is the same.
      const judgedByThree = feedingPlan(plan, { 'hyalella-azteca': 20 }, { days: 150, members: 3 });
      expect(judgedByThree.mass).toBe(few.mass);
      expect([few.heldIn.runs, judgedByThree.heldIn.runs]).toEqual([24, 3]);
      expect(judgedByThree.trials).toBe(few.trials);
      expect(() => feedingPlan(plan, { 'hyalella-azteca': 20 }, { members: 1 })).toThrow(/2 to 2000, not 1/);
      expect(() => feedingPlan(plan, { unicorn: 3 })).toThrow(/no population 'unicorn'/);
      expect(() => feedingPlan(plan, {})).toThrow(/how many adults/);
    },
    SLOW,
  );
});
