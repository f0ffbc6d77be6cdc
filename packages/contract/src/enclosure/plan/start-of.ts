import {
  geometryOf,
  type LivingStart,
  MOLAR_MASS,
  molarYield,
  type Plan,
  type PriorTable,
} from '@shoreglass/engine';
import type { EnclosureContent } from '../schema/enclosure.ts';

/**
 * What lives in a box filled yesterday [mol C; kg/m2; kg]. @source assumed: a trace on sand, wood and plants; that of
 * the oxidisers is the one from which they take the four to six weeks known from practice
 */
const TRACE = {
  'ammonia-oxidation': 1e-7,
  'nitrite-oxidation': 2.5e-8,
  algae: 0.02e-3,
  detritus: 0.2e-3,
} as const;
/** Oxidisers above which a filter counts as run in: ten times the trace of a new one [mol C]. @source assumed */
const RUN_IN = 10 * TRACE['nitrite-oxidation'];

/** Whether the filter of a plan is run in on the first day. */
export function isRunIn({ nitriteOxidisers }: LivingStart): boolean {
  return nitriteOxidisers > RUN_IN;
}

/** Carbon in dry algae and detritus [g/g]. @source Westlake 1963 for algae; detritus memory */
const CARBON_SHARE = { algae: 0.46, detritus: 0.45 } as const;
/** Nitrogen a matured filter handles where the file says nothing [kg/d]. @source assumed: 0.3 g of dry feed a day */
const USUAL_FILTER = 15e-6;

/** Biomass that oxidises an amount of nitrogen a day [mol C]: rate x yield / highest growth at 20 degC. */
function oxidisersFor(nitrogenPerDay: number, process: string, priors: PriorTable): number {
  const growth = priors[process]?.maximumGrowth?.median;
  const demand = priors[process]?.yield?.median;
  if (growth === undefined || demand === undefined)
    throw new Error(`the library holds no growth and yield of ${process}`);
  return (((nitrogenPerDay * 1000) / MOLAR_MASS.nitrogen) * molarYield(demand)) / growth;
}

/** Living and dead pools in the water on the first day [mol C]. */
export function startOf(
  { settled }: EnclosureContent,
  plan: Pick<Plan, 'box' | 'zones' | 'hardscape' | 'water'>,
  priors: PriorTable,
): LivingStart {
  const area = geometryOf(plan).submergedAreaAt(plan.water.level);
  const toMoles = (mass: number, share: number) => (mass * 1000 * share) / MOLAR_MASS.carbon;
  const handles = settled?.handles ?? USUAL_FILTER;
  const oxidisers = (process: 'ammonia-oxidation' | 'nitrite-oxidation') =>
    settled?.filter === 'matured' ? oxidisersFor(handles, process, priors) : TRACE[process];
  return {
    ammoniaOxidisers: oxidisers('ammonia-oxidation'),
    nitriteOxidisers: oxidisers('nitrite-oxidation'),
    attachedAlgae: toMoles((settled?.algae ?? TRACE.algae) * area, CARBON_SHARE.algae),
    detritusCarbon: toMoles(settled?.detritus ?? TRACE.detritus, CARBON_SHARE.detritus),
  };
}
