import { loadBundledEnclosure, planOf } from '@shoreglass/contract';
import {
  type ActiveTime,
  expectedRun,
  FOOD_SPECS,
  foodFlows,
  type Plan,
  type Population,
  prepareOutlook,
} from '@shoreglass/engine';
import { library } from '@shoreglass/library';
import { describe, expect, it } from 'vitest';
import { bookReader } from '../packages/engine/src/outlook/book-reader.ts';

const plan: Plan = planOf(loadBundledEnclosure('beck-bank').document, library);
const SLOW = 120_000;
const named = (id: string): Population => plan.populations.find((each) => each.id === id)!;
const nothing = { kind: 'fixed', median: 0, spread: 0, min: 0, max: 0 } as const;

/** The same animals under another name, awake at another time, that eat one food alone. */
function awake(population: Population, active: ActiveTime, food: string): Population {
  const priors = { ...population.traits.priors };
  for (const spec of FOOD_SPECS) if (spec.food !== food) priors[spec.preference] = nothing;
  return {
    ...population,
    id: active,
    founders: [{ stage: 'adult', count: 300 }],
    traits: { ...population.traits, priors, active },
  };
}

/** Carbon of the food that each eats a week, when it is given at an hour every day. */
function eatenAt(
  hour: number | undefined,
  of: string,
  food: string,
  onLand: boolean,
): Record<string, number> {
  const feed = plan.routines.find(({ kind }) => kind === 'feed')!;
  if (feed.kind !== 'feed') throw new Error('the demo feeds');
  const given = { ...feed, everyDays: 1, firstDay: 0, mass: 0.01e-3, onLand };
  const timed: Plan = {
    ...plan,
    populations: [awake(named(of), 'day', food), awake(named(of), 'night', food)],
    actions: [],
    routines: [
      ...plan.routines.filter(({ kind }) => kind !== 'feed'),
      hour === undefined ? given : { ...given, hour },
    ],
  };
  const days = 10;
  const prepared = prepareOutlook(timed, { days, members: 2, seed: 1 });
  const record = expectedRun(prepared);
  for (const [element, error] of Object.entries(record.closure))
    expect(Math.abs(error), element).toBeLessThan(1e-9);
  const { shape } = bookReader(prepared);
  const flows = foodFlows({ plan: timed, shape, rows: record.bookRows, days });
  return Object.fromEntries(flows.map(({ eater, mean }) => [eater, mean]));
}

// The demo's lamps are lit from 9 to 20 h (its file). Three hundred of each eat a hundredth of a gram within hours.
describe('feed given at an hour', () => {
  it(
    'goes to those who are awake then, and is shared alike when no hour is given',
    () => {
      const untimed = eatenAt(undefined, 'hyalella-azteca', 'feed', false);
      const morning = eatenAt(10, 'hyalella-azteca', 'feed', false);
      const evening = eatenAt(21, 'hyalella-azteca', 'feed', false);
      expect(untimed.day! / untimed.night!).toBeCloseTo(1, 6);
      expect(morning.day! / morning.night!).toBeGreaterThan(1.5);
      expect(evening.night! / evening.day!).toBeGreaterThan(1.5);
      for (const fed of [morning, evening])
        expect((fed.day! + fed.night!) / (untimed.day! + untimed.night!)).toBeGreaterThan(0.8);
    },
    SLOW,
  );

  it(
    'does so on the land as well',
    () => {
      const noon = eatenAt(12, 'porcellio-scaber', 'remains', true);
      const night = eatenAt(22, 'porcellio-scaber', 'remains', true);
      expect(noon.day! / noon.night!).toBeGreaterThan(1.5);
      expect(night.night! / night.day!).toBeGreaterThan(1.5);
    },
    SLOW,
  );

  it('is refused outside the day', () => {
    expect(() => eatenAt(24, 'hyalella-azteca', 'feed', false)).toThrow(/0 to below 24/);
  });
});
