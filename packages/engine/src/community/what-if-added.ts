import { STAGES } from '../life/traits.ts';
import { quantiles } from '../numerics/quantiles.ts';
import { memberDraw } from '../outlook/prepare.ts';
import type { Plan, Population } from '../plan/plan.ts';
import { run } from '../run/run.ts';
import { settingOf } from '../run/setting.ts';

/** What is put in: more of a population the plan has, or a species it has not. */
export interface Addition {
  readonly population: Population;
  readonly adults: number;
  /** Day of the run on which they come; 0 when left out. */
  readonly day?: number;
}

export interface AdditionOptions {
  readonly days: number;
  /** Runs with and without, 2 to 500. */
  readonly members: number;
  readonly seed: number;
}

/** One quantity with and without the addition, at the end of the run. */
export interface AdditionEffect {
  readonly series: string;
  readonly without: EffectSpread;
  readonly with: EffectSpread;
  /** Difference member by member, with less without. */
  readonly difference: EffectSpread;
  /** Day by day median difference. */
  readonly course: readonly number[];
}
export interface EffectSpread {
  readonly q10: number;
  readonly q50: number;
  readonly q90: number;
}

const LOOKED_AT = ['unionisedAmmonia', 'nitrate', 'oxygenLow', 'attachedAlgae', 'detritus', 'litter', 'KH'];

function spreadOf(values: Float64Array): EffectSpread {
  const [q10 = 0, q50 = 0, q90 = 0] = quantiles(values, [0.1, 0.5, 0.9]);
  return { q10, q50, q90 };
}

function withAddition(plan: Plan, { population, adults, day = 0 }: Addition): Plan {
  const has = plan.populations.some(({ id }) => id === population.id);
  return {
    ...plan,
    populations: has ? plan.populations : [...plan.populations, { ...population, founders: [] }],
    actions: [
      ...plan.actions,
      {
        kind: 'add animals' as const,
        population: population.id,
        stage: 'adult' as const,
        count: adults,
        day,
      },
    ].sort((a, b) => a.day - b.day),
  };
}

/** The plan with an empty population of the species, so that both sides draw the same random numbers. */
function withRoom(plan: Plan, { population }: Addition): Plan {
  const has = plan.populations.some(({ id }) => id === population.id);
  return has ? plan : { ...plan, populations: [...plan.populations, { ...population, founders: [] }] };
}

/**
 * What an addition does to every population and to the water: the same members with and without it, all random
 * numbers shared.
 * @throws RangeError for an addition of none, or options out of range
 * @source derived: paired differences over common random numbers
 */
export function whatIfAdded(plan: Plan, addition: Addition, options: AdditionOptions): AdditionEffect[] {
  const { days, members, seed } = options;
  if (!(addition.adults >= 1)) throw new RangeError(`add at least 1 animal, not ${addition.adults}`);
  if (!(Number.isInteger(members) && members >= 2 && members <= 500))
    throw new RangeError(`members must be a whole number from 2 to 500, not ${members}`);
  const sides = [withRoom(plan, addition), withAddition(plan, addition)] as const;
  const settings = sides.map((side) => settingOf(side, days, STAGES));
  const ids = settings[0]!.seriesIds.filter(
    (id) => LOOKED_AT.includes(id) || /^population:[^:]+(?::adult)?$/.test(id),
  );
  const records = sides.map((side, s) =>
    Array.from({ length: members }, (_, member) => {
      const record = run(settings[s]!, memberDraw(side, seed, member));
      return ids.map((id) => record.series[settings[s]!.seriesIds.indexOf(id)]!);
    }),
  );
  return ids.map((id, i) => {
    const [without, included] = records.map((runs) =>
      Float64Array.from(runs, (series) => series[i]![days - 1]!),
    ) as [Float64Array, Float64Array];
    const course = Array.from(
      { length: days },
      (_, day) =>
        spreadOf(Float64Array.from(records[1]!, (series, m) => series[i]![day]! - records[0]![m]![i]![day]!))
          .q50,
    );
    return {
      series: id,
      without: spreadOf(without),
      with: spreadOf(included),
      difference: spreadOf(included.map((value, m) => value - without[m]!)),
      course,
    };
  });
}
