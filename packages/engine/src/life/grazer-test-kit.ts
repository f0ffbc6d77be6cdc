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

/** Most of an element that a day makes or loses, over days with feed every third day, over what there is of it [1]. `derived`. */
export function closureOver(tank: Tank, days: number): number {
  const elements = ['carbon', 'nitrogen', 'phosphorus'] as const;
  let worst = 0;
  for (let day = 0; day < days; day += 1) {
    if (day % 3 === 0) tank.serve('feedCarbon', 0.002);
    const before = elements.map(tank.total);
    tank.pass(GOOD_WATER);
    for (const [e, held] of before.entries())
      worst = Math.max(worst, Math.abs(tank.total(elements[e]!) - held) / held);
  }
  return worst;
}

/** Animals after 200 days with area, water, food and founders doubled, over those without [1]. `derived`. */
export function timesTwice(traits: Partial<TraitValues>): number {
  const run = (size: number): number => {
    const tank = tankOf({ size, kind: LAID, founders: 30 * size, traits });
    passDays(tank, 200, 0.1 * size);
    return freeLiving(tank);
  };
  return run(2) / run(1);
}
