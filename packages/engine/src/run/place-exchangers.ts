import { wetLayers } from '../geometry/wet-layers.ts';
import { exp, log } from '../numerics/elementary.ts';
import type { Exchanger, Plan } from '../plan/plan.ts';
import { VARIABLE_INDEX as V } from '../variables/variables.ts';

/** Ground, peat and moss under water that exchange cations, with their sites [eq]. */
interface PlacedExchanger {
  readonly exchanger: Exchanger;
  readonly sites: number;
  /** Plan area of a bed [m2]; 0 for what lies loose. */
  readonly area: number;
}

/** All exchangers of a plan that lie in the water. `derived`. */
export function exchangersOf(plan: Pick<Plan, 'box' | 'zones' | 'water' | 'hardscape'>): PlacedExchanger[] {
  const beds = wetLayers(plan, plan.water.level).flatMap(({ layer: { exchanger }, volume, area }) =>
    exchanger ? [{ exchanger, sites: exchanger.sites * volume, area }] : [],
  );
  const loose = plan.hardscape.flatMap(({ exchanger }) =>
    exchanger ? [{ exchanger, sites: exchanger.sites, area: 0 }] : [],
  );
  return [...beds, ...loose].filter(({ sites }) => sites > 0);
}

/** Factors by which a member's exchangers differ from what the plan states [1]. */
export interface ExchangerFactors {
  readonly sites: number;
  readonly acidStrength: number;
}

/**
 * Puts the exchangers of a plan and what they hold into the values. Their hold on hydrogen ions is the mean of all,
 * in logarithms, by sites.
 * @source derived
 */
export function placeExchangers(
  values: Float64Array,
  placed: readonly PlacedExchanger[],
  factors: ExchangerFactors,
): void {
  let all = 0;
  let strength = 0;
  const add = (id: keyof typeof V, amount: number): void => {
    values[V[id]] = values[V[id]]! + amount;
  };
  for (const { exchanger, sites: stated, area } of placed) {
    const sites = stated * factors.sites;
    const { calcium, magnesium, sodium, potassium, ammonium } = exchanger;
    add('exchangeableCalcium', (sites * calcium) / 2);
    add('exchangeableMagnesium', (sites * magnesium) / 2);
    add('exchangeableSodium', sites * sodium);
    add('exchangeablePotassium', sites * potassium);
    add('exchangeableAmmonium', sites * ammonium);
    add('exchangeableAcid', sites * Math.max(0, 1 - calcium - magnesium - sodium - potassium - ammonium));
    if (area > 0) add('exchangeArea', area);
    else add('looseExchanger', sites);
    all += sites;
    strength += sites * log(exchanger.acidStrength);
  }
  values[V.exchangeAcidStrength] = all > 0 ? factors.acidStrength * exp(strength / all) : 0;
}
