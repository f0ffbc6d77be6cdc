import { VARIABLE_INDEX as V } from '@shoreglass/engine';
import { TAP_WATER } from '../../../packages/engine/src/cycle/tank-test-kit.ts';
import { type Culture, culture, GRAMS_PER_MOL } from '../culture.ts';
import { type Experiment, NotStated, temperatureOf } from '../experiment.ts';

/** Beds in a row, each of a square metre. */
const BEDS = 5;
/** Depth of cocopeat and charcoal, its pores, and grains [m]: a planter. @source assumed */
const BED = { depth: 0.3, pores: 0.5, grain: 0.003 } as const;
/** Days until the beds are ripe, and days over which they are measured. @source assumed */
const RIPE = 12;
const MEASURED = 3;
/** Greywater [mol/m3]: 400 g/m3 of oxygen demand as detritus, nitrogen half in it and half ammonium, phosphorus 2 g/m3. @source oxygen demand: abstract of the work; split and phosphorus assumed */
const CARBON = 400 / GRAMS_PER_MOL.oxygen;
const PHOSPHORUS = 2 / GRAMS_PER_MOL.phosphorus;
const ORGANIC = 0.5;
/** Light on a wall in a room [umol/m2/s] and hours lit. @source assumed */
const LIGHT = 60;
const LIT = 12;
/** Emersed plants at full cover [mol C/m2]: the library's pothos. */
const PLANTS = 12;

const FLOWING = [
  'ammonium',
  'nitrite',
  'nitrate',
  'phosphate',
  'oxygen',
  'dissolvedInorganicCarbon',
  'labileOrganicCarbon',
  'dissolvedOrganicCarbon',
] as const;

function bedOf(temperature: number): Culture {
  const volume = BED.depth * BED.pores;
  return culture({
    water: { ...TAP_WATER, sodium: 4.4, phosphate: 0.02 },
    setting: {
      waterVolume: volume,
      waterArea: 1,
      waterDepth: BED.depth,
      submergedArea: 0,
      darkFilmSurface: (6 * (1 - BED.pores) * BED.depth) / BED.grain,
      wetSubstrate: 1,
      wetPlantGround: 1,
      waterTemperature: temperature,
      surfaceRenewal: 1,
      // Water trickles over air-filled pores: it is brought to balance with the air some ten times a day.
      fallAeration: (10 * volume) / 86_400,
    },
    contents: { ammoniaOxidisers: 0.01, nitriteOxidisers: 0.004, biofilm: 0.05, emersedPlants: PLANTS },
    without: ['attached-algae', 'suspended-algae', 'floating-plants', 'submerged-plants'],
  });
}

/** What flows on in an hour [mol/m3]: what is dissolved; what is solid stays in the bed. */
const dissolvedIn = (bed: Culture): number[] => FLOWING.map((id) => bed.holds(id));

/** Puts an hour's flow of water of these concentrations [mol/m3] through a bed; returns what ran off. */
function flow(bed: Culture, entering: readonly number[], volume: number): number[] {
  const leaving = dissolvedIn(bed);
  const moved = Object.fromEntries(
    FLOWING.map((id, k) => {
      const there = bed.values[V[id]]!;
      return [id, Math.max(-there, volume * (entering[k]! - leaving[k]!))];
    }),
  );
  bed.add(moved);
  return leaving;
}

/** Part of the nitrogen of greywater that a wall of five planted beds keeps from running off. */
export const plantWall: Experiment = {
  name: 'nitrogen in a wall of plants',
  asks: /pothos wall|plant wall|green wall/i,
  answer(question) {
    const [, load] = /(\d+) cm\/d/.exec(question.setup) ?? [];
    const [, total] = /TN up to about (\d+) mg\/L/.exec(question.setup) ?? [];
    if (!load || !total || !/N removed/.test(question.quantity))
      throw new NotStated('load and nitrogen are needed');
    const nitrogen = Number(total) / GRAMS_PER_MOL.nitrogen;
    const perHour = Number(load) / 100 / 24;
    const beds = Array.from({ length: BEDS }, () => bedOf(temperatureOf(question, 25)));
    const fresh = FLOWING.map((id) =>
      id === 'ammonium'
        ? (1 - ORGANIC) * nitrogen
        : id === 'phosphate'
          ? PHOSPHORUS / 2
          : beds[0]!.holds(id) * (id === 'oxygen' || id === 'dissolvedInorganicCarbon' ? 1 : 0),
    );
    let [brought, runOff] = [0, 0];
    for (let hour = 0; hour < 24 * (RIPE + MEASURED); hour += 1) {
      const light = hour % 24 >= 12 - LIT / 2 && hour % 24 < 12 + LIT / 2 ? LIGHT : 0;
      beds[0]!.add({
        detritusCarbon: perHour * CARBON,
        detritusNitrogen: perHour * ORGANIC * nitrogen,
        detritusPhosphorus: (perHour * PHOSPHORUS) / 2,
      });
      let water: readonly number[] = fresh;
      for (const bed of beds) {
        water = flow(bed, water, perHour);
        bed.pass(1, light);
      }
      if (hour < 24 * RIPE) continue;
      brought += nitrogen;
      runOff += water[0]! + water[1]! + water[2]!;
    }
    return 1 - runOff / brought;
  },
};
