import { moistSurfaceEvaporation, VARIABLE_INDEX as V, VARIABLE_IDS } from '@shoreglass/engine';
import { library } from '@shoreglass/library';
import type {
  LandPlantParameters,
  MossParameters,
} from '../../../packages/engine/src/cycle/land-plant-parameters.ts';
import { createLandPlants, type LandPlants } from '../../../packages/engine/src/cycle/land-plants.ts';
import type { LandStand } from '../../../packages/engine/src/cycle/land-stand.ts';
import { leafTranspiration } from '../../../packages/engine/src/cycle/leaf-transpiration.ts';
import { GRAMS_PER_MOL, MEDIANS } from '../culture.ts';
import { type Experiment, NotStated } from '../experiment.ts';

/** Carbon in dry moss [g/g]. @source memory: 0.38 to 0.46 */
const CARBON_SHARE = 0.42;
const WATER_PER_MOL = 0.018015;

interface Place {
  readonly cover: number;
  readonly light: number;
  readonly hoursLit: number;
  readonly fragments?: boolean;
}

/** A square metre of a moss of the library. */
function standOf(id: string, place: Place): LandStand {
  const moss = library.plant(id);
  const { growth, light, fullCoverBiomass, tolerances } = moss;
  if (!growth) throw new Error(`${id} has no growth`);
  return {
    id,
    layer: 'moss',
    zone: 'mat',
    area: 1,
    fullCoverBiomass: fullCoverBiomass.value,
    least: light.least.value,
    good: light.good.value,
    growth: growth.value / 86_400,
    warmest: tolerances?.airTemperature?.high?.value ?? 28,
    driest: tolerances?.relativeHumidity?.low?.value ?? 60,
    offGround: false,
    mist: 0,
    shore: 0,
    fragments: false,
    ...place,
  };
}

/** Soil on which nothing is scarce, and what grows on it. */
function planted(stand: LandStand): { readonly values: Float64Array; readonly flora: LandPlants } {
  const values = new Float64Array(VARIABLE_IDS.length);
  values[V.soilMineralNitrogen] = 1e3;
  values[V.soilMineralPhosphorus] = 1e3;
  const flora = createLandPlants({
    stands: [stand],
    moss: () => MEDIANS.moss as unknown as MossParameters,
    tall: () => MEDIANS['land-plants'] as unknown as LandPlantParameters,
    poolArea: 0,
  });
  flora.plant(values, 1);
  return { values, flora };
}

/** Fragments over half of a mat, 100 µmol/m2/s for 16 h, 20 °C and 95 % RH on a wet mat. @source assumed: not stated */
const MAT = { cover: 0.5, light: 100, hoursLit: 16, fragments: true } as const;

export const mossMat: Experiment = {
  name: 'cover of moss mats',
  asks: /moss mat.*cover/i,
  answer({ quantity }) {
    if (!/four months/.test(quantity)) throw new NotStated('the time is not four months');
    const { values, flora } = planted(standOf('hypnum-cupressiforme', MAT));
    for (let day = 0; day < 122; day += 1)
      flora.pass(values, { temperature: 20, humidity: 95, groundWetness: 1 });
    return flora.cover(0);
  },
};

/**
 * A year in north-western Germany by months: mean 9.5 °C with 8.5 K either way, 12 h of day with 4.5 h either way, 20 mol
 * of light a day with 15 either way, water table just below the heads. @source assumed from general climate
 */
const YEAR = { mean: 9.5, swing: 8.5, day: 12, dayswing: 4.5, light: 20, lightSwing: 15 } as const;

export const sphagnumYield: Experiment = {
  name: 'yield of a bog moss lawn',
  asks: /sphagnum growth.*dry mass/i,
  answer() {
    let taken = 0;
    for (let month = 0; month < 12; month += 1) {
      const season = -Math.cos((2 * Math.PI * (month + 0.5)) / 12);
      const hoursLit = YEAR.day + YEAR.dayswing * season;
      const light = (1e6 * (YEAR.light + YEAR.lightSwing * season)) / (3600 * hoursLit);
      const { values, flora } = planted(standOf('sphagnum-palustre', { cover: 1, light, hoursLit }));
      for (let day = 0; day < 365 / 12; day += 1)
        flora.pass(values, {
          temperature: YEAR.mean + YEAR.swing * season,
          humidity: 85,
          groundWetness: 1,
        });
      taken += values[V.airCarbonTaken]! - values[V.givenOffCarbon]!;
    }
    return (taken * GRAMS_PER_MOL.carbon) / CARBON_SHARE;
  },
};

/** A summer day and night in a boreal wood: 13 °C and 75 % RH, mean. @source assumed */
const WOOD = { airTemperature: 13, surfaceTemperature: 13, relativeHumidity: 0.75 } as const;

export const mossEvaporation: Experiment = {
  name: 'evaporation of moss',
  asks: /moss evaporation/i,
  answer() {
    const { airResistance, drynessResistance } = MEDIANS.climate ?? {};
    if (airResistance === undefined || drynessResistance === undefined)
      throw new Error('the climate has no resistances');
    // Half dry, between feather moss that has dried and wet bog moss; a kilogram per square metre is a millimetre.
    return 86_400 * moistSurfaceEvaporation({ ...WOOD, airResistance, surfaceResistance: drynessResistance });
  },
};

/** An office, and the leaves of a potted plant. @source assumed */
const OFFICE = { temperature: 23, humidity: 50, hoursLit: 10 } as const;
const LEAVES = 0.15;

export const plantTranspiration: Experiment = {
  name: 'transpiration of indoor plants',
  asks: /indoor plant transpiration/i,
  answer() {
    const resistance = MEDIANS['land-plants']?.leafResistance;
    if (resistance === undefined) throw new Error('land plants have no leaf resistance');
    return (LEAVES * leafTranspiration({ ...OFFICE, resistance })) / WATER_PER_MOL;
  },
};
