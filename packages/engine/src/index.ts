export * from './climate/climate.ts';
export * from './climate/climate-parameters.ts';
export { dayOfYear } from './climate/day-of-year.ts';
export * from './climate/evaporation.ts';
export * from './climate/heat-and-mist.ts';
export * from './climate/liquid-water.ts';
export * from './climate/moist-air.ts';
export * from './climate/openings.ts';
export * from './climate/panes.ts';
export * from './climate/reference-evapotranspiration.ts';
export * from './climate/room-drivers.ts';
export * from './climate/saturation.ts';
export * from './community/answers-to-pest.ts';
export { carryingCapacity, type FedAdults, type FoodCapacity } from './community/carrying-capacity.ts';
export * from './community/conflicts.ts';
export * from './community/dying-out.ts';
export * from './community/euler-lotka.ts';
export * from './community/feeding-plan.ts';
export * from './community/food-flows.ts';
export * from './community/food-rivals.ts';
export { RUN_IN } from './community/harm-conflicts.ts';
export {
  CONFLICT_KINDS,
  type Conflict,
  type ConflictKind,
  type Expected,
  type Inhabitant,
  type PlaceFacts,
  type RiskKind,
  type Sourced,
} from './community/inhabitant.ts';
export * from './community/life-document.ts';
export * from './community/life-table.ts';
export * from './community/life-table-spread.ts';
export type { PlantOutlook } from './community/plant-outlook.ts';
export * from './community/projection-matrix.ts';
export type { RearedSpecies } from './community/rearing-alone.ts';
export * from './community/what-if-added.ts';
export * from './counting/beside-computed.ts';
export * from './counting/beside-species.ts';
export type { Count, Estimate } from './counting/count.ts';
export type {
  CountFindings,
  CountQuestion,
  CountSentence,
  CountSeries,
  CountsReport,
  CountTopic,
} from './counting/count-findings.ts';
export { countsReport } from './counting/counts-report.ts';
export * from './cycle/carbonate-surface.ts';
export * from './cycle/edible-part.ts';
export * from './cycle/fall-aeration.ts';
export { molarYield } from './cycle/film-oxidation.ts';
export * from './cycle/grazing.ts';
export { LAND_PLANT_CAUSES, type LandStand } from './cycle/land-stand.ts';
export * from './cycle/processes.ts';
export * from './cycle/schmidt-number.ts';
export * from './geometry/check-geometry.ts';
export * from './geometry/cut-at.ts';
export * from './geometry/field-grid.ts';
export * from './geometry/geometry.ts';
export type { GeometryProblem } from './geometry/geometry-problem.ts';
export * from './geometry/ground-surface.ts';
export * from './geometry/lowest-opening.ts';
export { wetLayers } from './geometry/wet-layers.ts';
export * from './hydraulics/pipe-friction.ts';
export * from './hydraulics/pipe-loss.ts';
export * from './hydraulics/porous-flow.ts';
export * from './hydraulics/pump.ts';
export * from './hydraulics/pump-circuit.ts';
export * from './hydraulics/reaeration.ts';
export * from './hydraulics/weirs.ts';
export { ACTIVE_TIMES, type ActiveTime } from './life/awake.ts';
export { foodsBeside } from './life/diet-rules.ts';
export * from './life/foods.ts';
export * from './life/harm-rules.ts';
export * from './life/life.ts';
export * from './life/life-history.ts';
export { DEATH_CAUSES, type DeathCause, type PopulationDay } from './life/living-population.ts';
export { SLOWING_CAUSES, type SlowingCause } from './life/sublethal.ts';
export * from './life/traits.ts';
export type { WaterConditions } from './life/water-stress.ts';
export * from './light/photometry.ts';
export * from './light/surface-light.ts';
export * from './outlook/ahead.ts';
export * from './outlook/animal-change-limits.ts';
export * from './outlook/budget.ts';
export * from './outlook/buffer-piece.ts';
export * from './outlook/buffer-question.ts';
export { massText } from './outlook/buffer-sentences.ts';
export * from './outlook/change-limits.ts';
export * from './outlook/document.ts';
export * from './outlook/piece-effects.ts';
export { shareOfRuns } from './outlook/share-of-runs.ts';
export * from './outlook/size-buffer.ts';
export * from './outlook/split-change.ts';
export * from './outlook/trial.ts';
export * from './outlook/with-and-without.ts';
export * from './plan/care.ts';
export * from './plan/change-limit.ts';
export * from './plan/devices.ts';
export * from './plan/plan.ts';
export * from './plan/prior.ts';
export * from './plan/water-composition.ts';
export * from './precautions/current.ts';
export * from './precautions/fumes.ts';
export * from './precautions/lifting.ts';
export * from './process/compose.ts';
export * from './process/contract.ts';
export * from './process/stoichiometry.ts';
export { dayLightAt } from './run/feeding-times.ts';
export * from './run/integrator.ts';
export { feedsFromWater, growsOnLand } from './run/plant-cover.ts';
export * from './run/series.ts';
export { shoreOf } from './run/shore-of.ts';
export { climateYear } from './shape/climate-year.ts';
export * from './shape/climate-year-result.ts';
export { coverFor } from './shape/cover-for.ts';
export { escapeFigures } from './shape/escapes.ts';
export { gapFigures } from './shape/gaps.ts';
export * from './shape/shape-remarks.ts';
export * from './shape/shape-sheet.ts';
export * from './shape/shape-sheet-of.ts';
export * from './structure/evenly-loaded-plate.ts';
export * from './structure/expanding-foam.ts';
export * from './structure/glass-strength.ts';
export * from './structure/loads.ts';
export * from './structure/pane-under-water.ts';
export * from './structure/sealant.ts';
export * from './structure/wet-media.ts';
export * from './units/clock-time.ts';
export * from './units/convert.ts';
export * from './units/quantity.ts';
export * from './units/read-unit.ts';
export * from './units/units.ts';
export * from './variables/compositions.ts';
export * from './variables/elements.ts';
export * from './variables/variables.ts';
export { ENGINE_VERSION } from './version.ts';
export * from './water/colour.ts';
export * from './water/conductivity.ts';
export * from './water/constants/ammonia.ts';
export * from './water/dissolved-solids.ts';
export * from './water/dosing.ts';
export * from './water/equilibrate-with-air.ts';
export * from './water/gases.ts';
export * from './water/hardness.ts';
export * from './water/mineral-equilibrium.ts';
export * from './water/mixing.ts';
export * from './water/molar-masses.ts';
export * from './water/organic-acids.ts';
export * from './water/recipe/check-request.ts';
export * from './water/recipe/compare-recipes.ts';
export * from './water/recipe/name-list.ts';
export * from './water/recipe/recipe.ts';
export { recipeWater, type Surroundings } from './water/recipe/recipe-water.ts';
export * from './water/recipe/request.ts';
export { shortName } from './water/recipe/short-name.ts';
export { solveRecipe } from './water/recipe/solve-recipe.ts';
export * from './water/salts.ts';
export * from './water/speciate.ts';
export * from './water/water-chemistry.ts';
export * from './water/water-report.ts';
