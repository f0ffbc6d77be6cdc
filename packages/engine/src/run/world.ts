import { type Climate, createClimate } from '../climate/climate.ts';
import { fallAeration } from '../cycle/fall-aeration.ts';
import { LAND_PLANTS, MOSS } from '../cycle/land-plant-parameters.ts';
import { createLandPlants, type LandPlants } from '../cycle/land-plants.ts';
import { CYCLE_DERIVATIONS } from '../cycle/processes.ts';
import { createLandBreakdown, LAND_BREAKDOWN, type LandBreakdown } from '../life/land-breakdown.ts';
import { createLife, type Life } from '../life/life.ts';
import type { TraitValues } from '../life/traits.ts';
import type { WoodMould } from '../life/wood-mould.ts';
import type { Random } from '../numerics/random.ts';
import { checkedParameters, compose, type ParameterTable, type ReactionSystem } from '../process/compose.ts';
import { listedDerivation } from '../process/contract.ts';
import { STATE_IDS, VARIABLE_INDEX as V, VARIABLE_IDS } from '../variables/variables.ts';
import { waterChemistry } from '../water/water-chemistry.ts';
import { comesAlong } from './arrivals.ts';
import { createIntegrator, type Integrator } from './integrator.ts';
import { createKindMix, type KindMix } from './kind-mix.ts';
import { processesOf } from './plan-processes.ts';
import { bicarbonateUsers, plantedBiomass, poolArea, toughPart, wetPlantGround } from './plant-cover.ts';
import { createRemainsMix, meanBreakdown, type RemainsMix } from './remains-mix.ts';
import type { RunSetting } from './setting.ts';
import { wetSubstrate } from './wet-substrate.ts';

/**
 * Accuracy of the cycle. Against small steps of third order the daily series of the demo's water and plants differ by 1 %
 * in the mean and 2 % at most, algae by 3 and 7 %, the swing of pH by 13 and 22 %, less than what the parameters leave
 * open; other boxes may differ more. What the tolerance compares is of first order, so 0.3 there is about 0.03 in the result.
 * @source derived: docs/decisions/0002-integrator.md
 */
const ACCURACY = { order: 2, relativeTolerance: 0.3 } as const;

/** What may be wrong of any pool in a step beside that [mol per m3 of water]: 0.003 mg N/L. @source derived: as above */
const NEGLIGIBLE = 2e-4;

/**
 * Part of the water planned below which all of it has dried up [1]: what is left is a film of which nothing is computed.
 * @source assumed
 */
const DRIED_UP = 1e-3;

export const STATE_COUNT = STATE_IDS.length;

/** What tells one run from another: parameter values, and chance in births and deaths ('expected': means). */
export interface Draw {
  readonly parameters: ParameterTable;
  /** Traits by population id. */
  readonly traits: Readonly<Record<string, TraitValues>>;
  readonly demography: 'expected' | Random;
}

/** One enclosure in motion. */
export interface World {
  readonly setting: RunSetting;
  readonly draw: Draw;
  /** States, derived variables and drivers by VARIABLE_INDEX. */
  readonly values: Float64Array;
  readonly system: ReactionSystem;
  readonly integrator: Integrator;
  readonly climate: Climate;
  readonly life: Life;
  readonly land: LandBreakdown;
  /** Mould on wood that stands out of the water; none without such wood. */
  woodMould: WoodMould | undefined;
  /** Moss and plants on land; none where none were planted. */
  readonly landPlants: LandPlants | undefined;
  /** Kinds of litter, of feed and of dead animals that share a pool. */
  readonly kinds: { readonly litter: KindMix; readonly feed: KindMix; readonly dead: KindMix };
  /** Leaves of plants rooted in wet ground per carbon of them, area over resistance [m3/s per mol]; 0 without any. */
  readonly wetLeaves: number;
  /** Which plants the dead water plants came from; none where all that were planted fall apart alike. */
  readonly remains: RemainsMix | undefined;
  /** Liquid water, pores included [m3]. */
  volume: number;
  /** Volume below which it has dried up [m3]. */
  readonly dryBelow: number;
}

/** Whether the water has dried up, in the pores as well: its pools rest until there is water again. `derived`. */
export function isDriedUp({ volume, dryBelow }: World): boolean {
  return volume < dryBelow;
}

function landPlantsOf(
  { plan, stands }: RunSetting,
  { parameters, demography }: Draw,
): LandPlants | undefined {
  if (stands.length === 0) return undefined;
  const chances = new Map(plan.plants.map(({ id, chance }) => [id, chance]));
  return createLandPlants({
    stands: stands.map((stand) =>
      comesAlong(demography, stand.id, chances.get(stand.id)) ? stand : { ...stand, cover: 0 },
    ),
    moss: () => checkedParameters(MOSS, parameters),
    tall: () => checkedParameters(LAND_PLANTS, parameters),
    poolArea: poolArea(plan),
  });
}

/** Leaves of plants rooted in wet ground are taken to be as those of plants on land. @source assumed */
function wetLeavesOf(plan: RunSetting['plan'], { parameters }: Draw): number {
  if (plantedBiomass(plan, 'emersed') === 0) return 0;
  const { leafArea, leafResistance } = checkedParameters(LAND_PLANTS, parameters);
  return leafArea / leafResistance;
}

/** Returns a world with empty pools, ready to be filled. @throws Error or RangeError as `compose` does. `derived`. */
export function createWorld(setting: RunSetting, draw: Draw): World {
  const { plan, geometry, room } = setting;
  const system = compose(
    processesOf(plan),
    [listedDerivation(waterChemistry), ...CYCLE_DERIVATIONS],
    draw.parameters,
  );
  const volume = geometry.volumeAt(plan.water.level);
  return {
    setting,
    draw,
    values: new Float64Array(VARIABLE_IDS.length),
    system,
    integrator: createIntegrator(system, STATE_COUNT, {
      ...ACCURACY,
      absoluteTolerance: NEGLIGIBLE * volume,
    }),
    climate: createClimate(plan, geometry, draw.parameters.climate ?? {}, room),
    life: createLife(
      plan.populations.map((population) =>
        comesAlong(draw.demography, population.id, population.chance)
          ? population
          : { ...population, founders: [] },
      ),
      draw.traits,
      draw.demography,
    ),
    land: createLandBreakdown(checkedParameters(LAND_BREAKDOWN, draw.parameters)),
    woodMould: undefined,
    landPlants: landPlantsOf(setting, draw),
    kinds: { litter: createKindMix(), feed: createKindMix(), dead: createKindMix() },
    wetLeaves: wetLeavesOf(plan, draw),
    remains: createRemainsMix(plan, system.reactions),
    volume,
    dryBelow: DRIED_UP * volume,
  };
}

/** Share of the water surface stirred when a pump's return breaks it, and when it enters below. @source assumed */
const STIRRED_BY_FALL = 0.5;
const STIRRED_BELOW = 0.2;

/** Sets the drivers that follow from the water's volume and temperature [degC]. `derived`. */
export function setWaterDrivers(world: World, waterTemperature: number): void {
  const { values, setting, volume } = world;
  const pump = setting.plan.devices.pump;
  values[V.waterTemperature] = waterTemperature;
  values[V.fallAeration] = pump
    ? fallAeration({ flow: pump.flow, height: pump.fallHeight, temperature: waterTemperature })
    : 0;
  if (!(volume > 0 && values[V.waterVolume] === volume)) setLevelDrivers(world);
}

/** Sets the drivers that follow from the water's volume alone. */
function setLevelDrivers({ values, setting, volume }: World): void {
  const { geometry, plan } = setting;
  const level = geometry.levelAt(volume);
  const submerged = geometry.submergedAreaAt(level);
  values[V.waterVolume] = volume;
  values[V.waterArea] = geometry.openAreaAt(level);
  values[V.waterDepth] = geometry.meanDepthAt(level);
  values[V.submergedArea] = submerged;
  values[V.landArea] = geometry.landAreaAt(level);
  values[V.darkFilmSurface] =
    geometry.filmSurfaceAt(level) - submerged + (plan.devices.pump?.filmSurface ?? 0);
}

/** Sets the drivers that stay as they are all run. `derived`. */
export function setConstantDrivers({ values, setting }: World): void {
  const { room, devices } = setting.plan;
  values[V.wetPlantGround] = wetPlantGround(setting.plan);
  values[V.bicarbonateUsers] = bicarbonateUsers(setting.plan);
  values[V.wetSubstrate] = wetSubstrate(setting.plan);
  values[V.remainsPace] = meanBreakdown(setting.plan);
  values[V.toughSubmerged] = toughPart(setting.plan, 'submerged');
  values[V.toughFloating] = toughPart(setting.plan, 'floating');
  values[V.toughEmersed] = toughPart(setting.plan, 'emersed');
  values[V.roomCarbonDioxide] = room.carbonDioxide;
  values[V.airPressure] = room.pressure;
  const stirred = devices.pump && devices.pump.fallHeight > 0 ? STIRRED_BY_FALL : STIRRED_BELOW;
  values[V.surfaceRenewal] = devices.pump ? stirred : 0;
}
