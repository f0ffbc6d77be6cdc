import { library } from '@shoreglass/library';
import {
  type Entries,
  fillTank,
  passDay,
  type Tank,
  type TankSetup,
} from '../../packages/engine/src/cycle/tank-test-kit.ts';
import type { ParameterTable } from '../../packages/engine/src/process/compose.ts';
import { VARIABLE_INDEX, type VariableId } from '../../packages/engine/src/variables/variables.ts';

export const GRAMS_PER_MOL = {
  carbon: 12.011,
  nitrogen: 14.007,
  phosphorus: 30.974,
  oxygen: 31.998,
} as const;

/** The library's medians of every process. */
export const MEDIANS: ParameterTable = Object.fromEntries(
  Object.entries(library.parameterPriors()).map(([process, priors]) => [
    process,
    Object.fromEntries(Object.entries(priors).map(([key, { median }]) => [key, median])),
  ]),
);

export type Culture = Tank & {
  /** Sets concentrations back to these [mol/m3], as a medium renewed or a fed tank does. */
  hold(concentrations: Entries): void;
  /** Amount of a pool [mol]. */
  amount(id: VariableId): number;
};

/** A vessel of a published set-up with the library's medians in it. */
export function culture(setup: Omit<TankSetup, 'parameters'>): Culture {
  const tank = fillTank({ parameters: MEDIANS, ...setup });
  const amount = (id: VariableId): number => tank.values[VARIABLE_INDEX[id]]!;
  return {
    ...tank,
    amount,
    hold(concentrations) {
      const volume = amount('waterVolume');
      const missing = Object.entries(concentrations).map(([id, wanted]) => [
        id,
        wanted * volume - amount(id as VariableId),
      ]);
      tank.add(Object.fromEntries(missing));
    },
  };
}

export interface Regime {
  /** [umol/m2/s] and hours a day */
  readonly light: number;
  readonly lit: number;
  readonly medium?: Entries;
}

/** Lets a day pass, the medium renewed after every hour. */
export function day(vessel: Culture, { light, lit, medium }: Regime): void {
  passDay(vessel, light, lit, () => {
    if (medium) vessel.hold(medium);
  });
}

/** Salts of a growth medium in which nothing is scarce [mol/m3]: 14 mg N/L, three quarters nitrate, and 3 mg P/L. */
export const RICH_MEDIUM: Entries = {
  nitrate: 0.75,
  ammonium: 0.25,
  phosphate: 0.1,
  potassium: 1,
  calcium: 1,
};

/** Carbon in dry matter [g/g], by what it is in. @source memory: general compositions */
export const CARBON_SHARE = {
  duckweed: 0.4,
  periphyton: 0.3,
  feed: 0.45,
  faeces: 0.4,
  leaves: 0.47,
} as const;

/** Dry mass [g] of carbon [mol]. */
export function dryMass(carbon: number, share: number): number {
  return (carbon * GRAMS_PER_MOL.carbon) / share;
}
