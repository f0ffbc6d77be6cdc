import { TAP_WATER } from '../../../packages/engine/src/cycle/tank-test-kit.ts';
import { type Culture, culture, GRAMS_PER_MOL } from '../culture.ts';
import { type Experiment, NotStated, temperatureOf } from '../experiment.ts';

const MILLIGRAM = 1 / GRAMS_PER_MOL.nitrogen;
/** Well buffered, well aired water [mol/m3]. */
const BUFFERED = { ...TAP_WATER, sodium: 4.4, phosphate: 0.02 } as const;
const NOTHING_ELSE = ['attached-algae', 'suspended-algae', 'bacterial-film', 'denitrification'] as const;
/** Share of a well-stirred, strongly aired surface, and water brought to balance with the air [m3/s]. */
const AERATION = { surfaceRenewal: 1, fallAeration: 2e-4 } as const;

/** The trace of oxidisers with which a new filter begins [mol C/m3], as a new enclosure is taken to. */
const TRACE = { ammoniaOxidisers: 1e-7 / 0.04, nitriteOxidisers: 2.5e-8 / 0.04 } as const;

/**
 * Days until ammonium or nitrite falls below a threshold in a new filter to which animals give ammonium: 1 mg N/L a day
 * until 3 mg N/L are reached, then what keeps it there, and no more than 1 mg N/L a day.
 */
export const filterStart: Experiment = {
  name: 'start of a filter',
  asks: /filter start|start.?up|cycle (time|done)|maturation/i,
  answer(question) {
    const text = `${question.topic} ${question.quantity}`;
    const volume = 0.5;
    const tank = culture({
      water: BUFFERED,
      setting: {
        waterVolume: volume,
        waterArea: 1,
        waterDepth: 0.5,
        submergedArea: 5,
        darkFilmSurface: 50,
        wetSubstrate: 0,
        waterTemperature: temperatureOf(question, 22),
        ...AERATION,
      },
      contents: {
        ammoniaOxidisers: TRACE.ammoniaOxidisers * volume,
        nitriteOxidisers: TRACE.nitriteOxidisers * volume,
      },
      without: [...NOTHING_ELSE],
    });
    const watched = /nitrite/i.test(text) ? 'nitrite' : 'ammonium';
    const peak = { height: 0, day: 0 };
    for (let hour = 1; hour <= 24 * 120; hour += 1) {
      const room = 3 * MILLIGRAM - tank.holds('ammonium');
      tank.add({ ammonium: Math.max(0, Math.min(MILLIGRAM / 24, room)) * volume, chloride: 0 });
      tank.pass(1);
      tank.hold({ sodium: 4.4, phosphate: 0.02 });
      const now = tank.holds(watched);
      if (now > peak.height) Object.assign(peak, { height: now, day: hour / 24 });
      const isThrough = peak.height > 2 * MILLIGRAM && now < 0.25 * MILLIGRAM;
      if (!isThrough) continue;
      if (/peak|maximum/i.test(question.quantity))
        return /mg/.test(question.unit) ? peak.height / MILLIGRAM : peak.day;
      return hour / 24;
    }
    throw new Error(`${watched} is never used up`);
  },
};

/** A ripe film of 1 m2 in plentiful ammonium, kept at a temperature for `days`; ammonium oxidised on the last [mol]. */
function oxidisedInADay(temperature: number, days: number): number {
  const tank: Culture = culture({
    water: { ...BUFFERED, ammonium: 2 },
    setting: {
      waterVolume: 0.2,
      waterArea: 0.5,
      waterDepth: 0.4,
      submergedArea: 0.5,
      darkFilmSurface: 0.5,
      wetSubstrate: 0,
      waterTemperature: 20,
      ...AERATION,
    },
    contents: { ammoniaOxidisers: 0.005, nitriteOxidisers: 0.002 },
    without: [...NOTHING_ELSE],
  });
  const medium = { ammonium: 2, nitrite: 0, nitrate: 0, sodium: 4.4, phosphate: 0.02 };
  const keep = (times: number): void => {
    for (let hour = 0; hour < 24 * times; hour += 1) {
      tank.pass(1);
      tank.hold(medium);
    }
  };
  keep(40);
  tank.add({ waterTemperature: temperature - 20 });
  keep(days);
  const before = tank.extent('oxidation of ammonia');
  keep(1);
  return tank.extent('oxidation of ammonia') - before;
}

export const coldNitrification: Experiment = {
  name: 'nitrification in the cold',
  asks: /\bnitrif.*(cold|temperature)/i,
  answer({ temperatures, setup }) {
    const [cold, warm] = [...temperatures].sort((a, b) => a - b);
    if (cold === undefined) throw new NotStated('no temperature is named');
    const days = /long exposure/i.test(setup) ? 60 : 0;
    return oxidisedInADay(cold, days) / oxidisedInADay(warm === cold ? 20 : (warm ?? 20), days);
  },
};

interface Use {
  readonly alkalinity: number;
  readonly oxygen: number;
  /** Of mol nitrogen oxidised. */
  readonly nitrogen: number;
}

/**
 * What a closed bottle of ammonium and oxidisers uses while it oxidises about 1 mg N [mol]; the alkalinity that their
 * growth takes with ammonium and gives with phosphate is left out, as the identity is stated without growth.
 */
function useInABottle(): Use {
  const bottle = culture({
    water: { sodium: 3, chloride: 0.5, phosphate: 0.02, ammonium: 1.05 * MILLIGRAM, oxygen: 1 },
    setting: {
      waterVolume: 1,
      waterArea: 0,
      waterDepth: 1,
      submergedArea: 1,
      darkFilmSurface: 0,
      wetSubstrate: 0,
      waterTemperature: 20,
      surfaceRenewal: 0,
    },
    contents: { ammoniaOxidisers: 0.002, nitriteOxidisers: 0.002 },
    without: [...NOTHING_ELSE, 'gas-exchange', 'mineralisation'],
  });
  const alkalinity = (): number =>
    2 * bottle.holds('calcium') +
    2 * bottle.holds('magnesium') +
    bottle.holds('sodium') +
    bottle.holds('potassium') +
    bottle.holds('ammonium') -
    bottle.holds('chloride') -
    2 * bottle.holds('sulfate') -
    bottle.holds('nitrate') -
    bottle.holds('nitrite') -
    bottle.holds('phosphate');
  const start = { ...held(bottle), alkalinity: alkalinity() };
  bottle.pass(24 * 90);
  const end = held(bottle);
  const nitrogen = end.oxidised - start.oxidised;
  const built = start.ammonium - end.ammonium - nitrogen;
  const phosphate = start.phosphate - end.phosphate;
  return {
    alkalinity: start.alkalinity - alkalinity() - built + phosphate,
    oxygen: start.oxygen - end.oxygen,
    nitrogen,
  };
}

function held(bottle: Culture): Readonly<Record<'ammonium' | 'oxidised' | 'phosphate' | 'oxygen', number>> {
  return {
    ammonium: bottle.holds('ammonium'),
    oxidised: bottle.holds('nitrate') + bottle.holds('nitrite'),
    phosphate: bottle.holds('phosphate'),
    oxygen: bottle.holds('oxygen'),
  };
}

export const nitrificationBalance: Experiment = {
  name: 'alkalinity and oxygen for nitrification',
  asks: /(alkalinity|oxygen) per N|per N oxidised/i,
  answer({ topic, quantity }) {
    const use = useInABottle();
    if (/oxygen/i.test(`${topic} ${quantity}`))
      return (use.oxygen * GRAMS_PER_MOL.oxygen) / (use.nitrogen * GRAMS_PER_MOL.nitrogen);
    return (use.alkalinity * 50.0435) / (use.nitrogen * GRAMS_PER_MOL.nitrogen);
  },
};
