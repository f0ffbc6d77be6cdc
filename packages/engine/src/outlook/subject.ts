import type { FixedSeriesId, SeriesId } from '../run/series.ts';
import { STATE_IDS, type VariableId, variableSpec } from '../variables/variables.ts';

/**
 * What a series is driven by: a linear measure of the states (weights), so that every reaction and every kind of
 * care has a definite contribution to it. `concentrated`: the series is that measure per volume of water, so
 * evaporation raises it and poured water dilutes it.
 */
export interface Subject {
  readonly weights: Float64Array;
  readonly concentrated: boolean;
}

const DRIVEN_BY: Readonly<Partial<Record<FixedSeriesId, readonly VariableId[] | 'alkalinity'>>> = {
  pH: 'alkalinity',
  KH: 'alkalinity',
  GH: ['calcium', 'magnesium'],
  conductivity: ['calcium', 'magnesium', 'sodium', 'potassium', 'chloride', 'sulfate', 'nitrate'],
  totalAmmonia: ['ammonium'],
  unionisedAmmonia: ['ammonium'],
  nitrite: ['nitrite'],
  nitrate: ['nitrate'],
  phosphate: ['phosphate'],
  copper: ['copper'],
  oxygen: ['oxygen'],
  oxygenLow: ['oxygen'],
  dissolvedOrganicCarbon: ['dissolvedOrganicCarbon'],
  colour: ['dissolvedOrganicCarbon'],
  attachedAlgae: ['attachedAlgae'],
  plantCover: ['submergedPlants'],
  floatingCover: ['floatingPlants'],
  emersedCover: ['emersedPlants'],
  suspendedAlgae: ['suspendedAlgae'],
  detritus: ['detritusCarbon'],
  litter: ['litterCarbon'],
  carbonateSolid: ['carbonateSolid', 'aragoniteSolid'],
};

const SOLID_OR_LIVING: ReadonlySet<FixedSeriesId> = new Set([
  'attachedAlgae',
  'plantCover',
  'floatingCover',
  'emersedCover',
  'detritus',
  'litter',
  'carbonateSolid',
]);

/**
 * Returns the measure behind a series, or undefined where it is not one of the pools (climate, animals).
 * For pH it is alkalinity: over weeks the air fixes the carbon dioxide, and alkalinity is what moves pH.
 * @source derived
 */
export function subjectOf(id: SeriesId): Subject | undefined {
  const drivenBy = DRIVEN_BY[id as FixedSeriesId];
  if (drivenBy === undefined) return undefined;
  const weights = Float64Array.from(STATE_IDS, (state) => {
    const { compartment, content } = variableSpec(state);
    if (drivenBy === 'alkalinity') return compartment === 'water' ? (content?.charge ?? 0) : 0;
    return drivenBy.includes(state) ? 1 : 0;
  });
  return { weights, concentrated: !SOLID_OR_LIVING.has(id as FixedSeriesId) };
}
