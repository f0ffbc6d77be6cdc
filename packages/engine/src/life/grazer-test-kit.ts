import type { Random } from '../numerics/random.ts';
import { createTank, GOOD_WATER, GRAZER, populationOf, type Tank } from './life-test-kit.ts';
import { STAGES, type Stage, type TraitValues } from './traits.ts';

export const CARRIED = { mating: 'two sexes', brood: 'carried' } as const;
export const LAID = { mating: 'self-fertile', brood: 'laid' } as const;
export const BROODED = STAGES.indexOf('brooded');
export const JUVENILE = STAGES.indexOf('juvenile');
export const ADULT = STAGES.indexOf('adult');
export const AMPLE = 1e4;
export const BOUNDLESS = 1e12;

interface Given {
  readonly traits?: Partial<TraitValues>;
  readonly kind?: typeof CARRIED | typeof LAID;
  readonly founders?: number;
  /** Of the founders; adults when left out. */
  readonly stage?: Exclude<Stage, 'brooded'>;
  readonly demography?: 'expected' | Random;
  /** Area and volume in units of 0.5 m2 and 30 L. */
  readonly size?: number;
}

/** A tank of invented grazers, changed as given. */
export function tankOf({
  traits = {},
  kind = CARRIED,
  founders = 20,
  stage = 'adult',
  demography = 'expected',
  size = 1,
}: Given): Tank {
  const values = { ...GRAZER, ...traits };
  const population = populationOf('grazer', [{ stage, count: founders }], values, kind);
  return createTank({ populations: [population], demography, area: 0.5 * size, volume: 0.03 * size });
}

/** Days in good water with as many algae served each morning [mol C]. */
export function passDays(tank: Tank, days: number, algae: number): void {
  for (let day = 0; day < days; day += 1) {
    tank.serve('attachedAlgae', algae);
    tank.pass(GOOD_WATER);
  }
}

/** Young and adults, without eggs [1]. `derived`. */
export function freeLiving({ life }: Tank): number {
  return life.count(0, JUVENILE) + life.count(0, ADULT);
}
