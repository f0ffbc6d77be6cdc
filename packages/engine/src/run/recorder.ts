import type { DayConditions } from '../life/day-conditions.ts';
import type { Life } from '../life/life.ts';
import type { AirConditions } from '../life/surroundings.ts';
import { conversion } from '../units/convert.ts';
import { VARIABLE_INDEX as V } from '../variables/variables.ts';
import { waterColour } from '../water/colour.ts';
import { RUN_TOLERANCE, Workspace } from '../water/equilibrium/workspace.ts';
import { MOLAR_MASS } from '../water/molar-masses.ts';
import { waterReport } from '../water/water-report.ts';
import { fullCover, PLANT_POOLS, type RootedInWater } from './plant-cover.ts';
import { type FixedSeriesId, SERIES } from './series.ts';
import type { RunSetting } from './setting.ts';
import { groundWetness, openCoverOf } from './way-out.ts';
import { isDriedUp, type World } from './world.ts';

/** Carbon in dry matter [g/g]. @source Westlake 1963 for algae and plants, 0.45 for litter (memory) */
const CARBON_SHARE = { algae: 0.46, detritus: 0.45, litter: 0.47 } as const;

const generalHardness = conversion('mmol/L', '°dGH');

/** Sums over the samples of a day. */
interface DaySums {
  weight: number;
  pH: number;
  pHLow: number;
  pHHigh: number;
  oxygen: number;
  oxygenLow: number;
  oxygenHigh: number;
  unionisedAmmonia: number;
  waterTemperature: number;
  airTemperature: number;
  relativeHumidity: number;
  fogHours: number;
  topOff: number;
}

const emptySums = (): DaySums => ({
  weight: 0,
  pH: 0,
  pHLow: Number.POSITIVE_INFINITY,
  pHHigh: Number.NEGATIVE_INFINITY,
  oxygen: 0,
  oxygenLow: Number.POSITIVE_INFINITY,
  oxygenHigh: 0,
  unionisedAmmonia: 0,
  waterTemperature: 0,
  airTemperature: 0,
  relativeHumidity: 0,
  fogHours: 0,
  topOff: 0,
});

export interface Recorder {
  /** Series by position in `setting.seriesIds`, one value a day. */
  readonly series: readonly Float64Array[];
  /** Samples climate after an hour. */
  hour(world: World): void;
  /** Samples the water, its derived values being fresh; the sample stands for `hours` of the day. */
  sample(world: World, hours: number): void;
  toppedOff(volume: number): void;
  /** Means of the day that the animals live by. */
  conditions(world: World): DayConditions & { readonly air: AirConditions };
  endDay(world: World, day: number): void;
}

const MICRO_PER_MILLI = 1000;

/** Series that tell what is in a litre of water. */
const OF_WATER = [
  'pH',
  'pHSwing',
  'KH',
  'GH',
  'conductivity',
  'totalAmmonia',
  'unionisedAmmonia',
  'nitrite',
  'nitrate',
  'phosphate',
  'copper',
  'oxygen',
  'oxygenLow',
  'oxygenHigh',
  'dissolvedOrganicCarbon',
  'colour',
  'suspendedAlgae',
] as const satisfies readonly FixedSeriesId[];

/** Dissolved copper [µg/L]. */
function copperOf(values: Float64Array): number {
  return (values[V.copper]! * MOLAR_MASS.copper * MICRO_PER_MILLI) / values[V.waterVolume]!;
}

/** Series of one population: of all its animals, and by stage. */
interface PopulationSeries {
  readonly all: Float64Array | undefined;
  readonly byStage: readonly (Float64Array | undefined)[];
}

/** Looks the series of the populations up when they are first asked for. */
function populationSeries(
  byId: ReadonlyMap<string, Float64Array>,
): (life: Life) => readonly PopulationSeries[] {
  let found: readonly PopulationSeries[] | undefined;
  return ({ populations }) => {
    found ??= populations.map(({ id, stages }) => ({
      all: byId.get(`population:${id}`),
      byStage: stages.map((stage) => byId.get(`population:${id}:${stage}`)),
    }));
    return found;
  };
}

/** Returns a recorder of the daily series in the keeper's units. `derived`: unit conversions and daily means. */
export function createRecorder({ seriesIds, days, plan, geometry, shore }: RunSetting): Recorder {
  const full = { submerged: 0, floating: 0, emersed: 0 };
  for (const group of Object.keys(full) as RootedInWater[]) full[group] = fullCover(plan, group);
  const cover = (group: RootedInWater, values: Float64Array): number =>
    full[group] > 0 ? Math.min(1, values[V[PLANT_POOLS[group]]]! / full[group]) * 100 : 0;
  const series = seriesIds.map(() => new Float64Array(days));
  const byId = new Map<string, Float64Array>(seriesIds.map((id, at) => [id, series[at]!]));
  const fixed = Object.fromEntries(Object.keys(SERIES).map((id) => [id, byId.get(id)])) as Partial<
    Record<FixedSeriesId, Float64Array>
  >;
  const ofPopulations = populationSeries(byId);
  let stands: readonly (Float64Array | undefined)[] | undefined;
  const water = new Workspace();
  water.tolerance = RUN_TOLERANCE;
  let sums = emptySums();
  /** Of the evening before [µS/cm]. */
  let conductivity: number | undefined;
  const writeFixed = (id: FixedSeriesId, day: number, value: number): void => {
    const written = fixed[id];
    if (written) written[day] = value;
  };

  /** Of what is told of a litre of water; where it has dried up, as on the last day there was some. */
  const writeWater = (values: Float64Array, day: number): void => {
    const report = waterReport(values, water);
    writeFixed('pH', day, sums.pH / sums.weight);
    writeFixed('pHSwing', day, sums.pHHigh - sums.pHLow);
    writeFixed('KH', day, report.KH);
    writeFixed('GH', day, report.GH);
    conductivity = report.conductivity;
    writeFixed('conductivity', day, report.conductivity);
    writeFixed('totalAmmonia', day, report.totalAmmonia);
    writeFixed('unionisedAmmonia', day, sums.unionisedAmmonia / sums.weight);
    writeFixed('nitrite', day, report.nitrite);
    writeFixed('nitrate', day, report.nitrate);
    writeFixed('phosphate', day, report.phosphate);
    writeFixed('copper', day, copperOf(values));
    writeFixed('oxygen', day, sums.oxygen / sums.weight);
    writeFixed('oxygenLow', day, sums.oxygenLow);
    writeFixed('oxygenHigh', day, sums.oxygenHigh);
    writeFixed('dissolvedOrganicCarbon', day, report.dissolvedOrganicCarbon);
    writeFixed('colour', day, waterColour(report.dissolvedOrganicCarbon));
    const afloat = (values[V.suspendedAlgae]! * MOLAR_MASS.carbon) / CARBON_SHARE.algae;
    writeFixed('suspendedAlgae', day, afloat / values[V.waterVolume]!);
  };
  const holdWater = (day: number): void => {
    for (const id of OF_WATER) writeFixed(id, day, fixed[id]?.[day - 1] ?? 0);
  };

  return {
    series,
    hour({ climate }) {
      sums.waterTemperature += climate.state.waterTemperature / 24;
      sums.airTemperature += climate.state.airTemperature / 24;
      sums.relativeHumidity += climate.relativeHumidity / 24;
      sums.fogHours += climate.fogged;
    },
    sample(world, hours) {
      sums.weight += hours;
      if (isDriedUp(world)) return;
      const { values } = world;
      const oxygen = (values[V.oxygen]! / values[V.waterVolume]!) * MOLAR_MASS.oxygen;
      const pH = values[V.pH]!;
      sums.pH += pH * hours;
      sums.pHLow = Math.min(sums.pHLow, pH);
      sums.pHHigh = Math.max(sums.pHHigh, pH);
      sums.oxygen += oxygen * hours;
      sums.oxygenLow = Math.min(sums.oxygenLow, oxygen);
      sums.oxygenHigh = Math.max(sums.oxygenHigh, oxygen);
      sums.unionisedAmmonia += values[V.unionisedAmmonia]! * MOLAR_MASS.nitrogen * hours;
    },
    toppedOff(volume) {
      sums.topOff += volume;
    },
    conditions(world) {
      const { values } = world;
      const volume = values[V.waterVolume]!;
      const hardness = (values[V.calcium]! + values[V.magnesium]!) / volume;
      conductivity ??= waterReport(values, water).conductivity;
      return {
        temperature: sums.waterTemperature,
        oxygen: sums.oxygenLow,
        oxygenMean: sums.oxygen / sums.weight,
        unionisedAmmonia: sums.unionisedAmmonia / sums.weight,
        totalAmmonia: (values[V.ammonium]! * MOLAR_MASS.nitrogen) / volume,
        nitrate: (values[V.nitrate]! * MOLAR_MASS.nitrogen) / volume,
        pH: sums.pH / sums.weight,
        hardness: generalHardness(hardness),
        nitrite: (values[V.nitrite]! * MOLAR_MASS.nitrogen) / volume,
        chloride: (values[V.chloride]! * MOLAR_MASS.chloride) / volume,
        copper: copperOf(values),
        conductivity: conductivity / MICRO_PER_MILLI,
        isGone: isDriedUp(world) || !(values[V.waterArea]! > 0),
        air: {
          temperature: sums.airTemperature,
          humidity: sums.relativeHumidity * 100,
          groundWetness: groundWetness(world),
        },
        openCover: openCoverOf(world.setting.plan),
        ...(shore ? { shore } : {}),
      };
    },
    endDay(world, day) {
      const { values, life, volume } = world;
      const litre = 1000;
      if (isDriedUp(world)) holdWater(day);
      else writeWater(values, day);
      writeFixed('waterTemperature', day, sums.waterTemperature);
      writeFixed('airTemperature', day, sums.airTemperature);
      writeFixed('relativeHumidity', day, sums.relativeHumidity * 100);
      writeFixed('glassFog', day, sums.fogHours);
      writeFixed('waterVolume', day, volume * litre);
      writeFixed('waterLevel', day, geometry.levelAt(volume) * 100);
      writeFixed('topOff', day, sums.topOff * litre);
      const area = values[V.submergedArea]!;
      const algae = (values[V.attachedAlgae]! * MOLAR_MASS.carbon) / CARBON_SHARE.algae;
      writeFixed('attachedAlgae', day, area > 0 ? algae / area : 0);
      writeFixed('plantCover', day, cover('submerged', values));
      writeFixed('floatingCover', day, cover('floating', values));
      writeFixed('emersedCover', day, cover('emersed', values));
      writeFixed('detritus', day, (values[V.detritusCarbon]! * MOLAR_MASS.carbon) / CARBON_SHARE.detritus);
      writeFixed('litter', day, (values[V.litterCarbon]! * MOLAR_MASS.carbon) / CARBON_SHARE.litter);
      const { landPlants } = world;
      if (landPlants) {
        writeFixed('transpiration', day, landPlants.transpired);
        stands ??= landPlants.stands.map(({ id }) => byId.get(`planting:${id}`));
        for (let k = 0; k < stands.length; k += 1) {
          const written = stands[k];
          if (written) written[day] = landPlants.cover(k) * 100;
        }
      }
      writeFixed('woodMould', day, values[V.woodMouldCover]! * 100);
      const carbonate = values[V.carbonateSolid]! + values[V.aragoniteSolid]!;
      writeFixed('carbonateSolid', day, carbonate * MOLAR_MASS.calciumCarbonate);
      const population = ofPopulations(life);
      for (let p = 0; p < population.length; p += 1) {
        const { all, byStage } = population[p]!;
        let total = 0;
        for (let stage = 0; stage < byStage.length; stage += 1) {
          const count = life.count(p, stage);
          if (life.populations[p]!.stages[stage] !== 'brooded') total += count;
          const written = byStage[stage];
          if (written) written[day] = count;
        }
        if (all) all[day] = total;
      }
      sums = emptySums();
    },
  };
}
