import { CARBON_SHARE, type Culture, culture, day, dryMass, GRAMS_PER_MOL } from '../culture.ts';
import { type Experiment, NotStated } from '../experiment.ts';

/** Fertilised pond water [mol/m3]: 1.4 mg N/L, 0.3 mg P/L, 2 meq/L. */
const POND = { nitrate: 0.08, ammonium: 0.02, phosphate: 0.01, calcium: 1 };
/** Daylight of the tropics in the water, as a mean over 12 h, at 28 °C. @source assumed: 35 mol/m2/d at the surface */
const SUN = { light: 800, lit: 12, medium: POND };
/** Algae in fertilised ponds, 50 µg chlorophyll/L at 50 g C/g, kept as they are [mol C/m3]. @source memory */
const GREEN = 0.2;
const UNGRAZED_POLES = ['suspended-algae', 'bacterial-film', 'denitrification'];

/** Bare poles in a pond, a square metre of them in a cubic metre of water, with what settles there on the first day. */
function poles(): Culture {
  return culture({
    water: POND,
    setting: {
      waterVolume: 1,
      waterArea: 1,
      waterDepth: 1,
      submergedArea: 1,
      darkFilmSurface: 0,
      wetSubstrate: 0,
      waterTemperature: 28,
      surfaceRenewal: 1,
    },
    contents: { attachedAlgae: 0.01, suspendedAlgae: GREEN },
    without: UNGRAZED_POLES,
  });
}

function stockAfter(days: number): number {
  const pond = poles();
  for (let k = 0; k < days; k += 1) day(pond, SUN);
  return dryMass(pond.amount('attachedAlgae'), CARBON_SHARE.periphyton);
}

export const periphytonStock: Experiment = {
  name: 'stock of attached algae',
  asks: /periphyton (stock|after)|periphyton.*; .*dry mass/i,
  answer({ topic, quantity }) {
    const [, days] = /(?:day|after) (\d+)/i.exec(`${topic} ${quantity}`) ?? [];
    return stockAfter(days === undefined ? 120 : Number(days));
  },
};

/** Greatest net production on the way to a full stock [g C/m2/d]. */
export const periphytonProduction: Experiment = {
  name: 'production of attached algae',
  asks: /periphyton productiv/i,
  answer() {
    const pond = poles();
    const made = (): number =>
      pond.extent('growth of attached algae on ammonium') +
      pond.extent('growth of attached algae on nitrate') +
      pond.extent('growth of attached algae on what it kept') -
      pond.extent('respiration of attached algae');
    let best = 0;
    for (let k = 0; k < 60; k += 1) {
      const before = made();
      day(pond, SUN);
      best = Math.max(best, made() - before);
    }
    return best * GRAMS_PER_MOL.carbon;
  },
};

/** Where a line that rises and then stays level bends, fitted to points by least squares over all bends. */
function bendOf(points: readonly (readonly [x: number, y: number])[]): number {
  let best = { bend: 0, squares: Number.POSITIVE_INFINITY };
  const most = Math.max(...points.map(([x]) => x));
  for (let k = 1; k < 400; k += 1) {
    const bend = (most * k) / 400;
    const shape = points.map(([x, y]) => [Math.min(x, bend), y] as const);
    const meanX = shape.reduce((sum, [x]) => sum + x, 0) / shape.length;
    const meanY = shape.reduce((sum, [, y]) => sum + y, 0) / shape.length;
    const above = shape.reduce((sum, [x, y]) => sum + (x - meanX) * (y - meanY), 0);
    const slope = above / shape.reduce((sum, [x]) => sum + (x - meanX) ** 2, 0);
    const squares = shape.reduce((sum, [x, y]) => sum + (y - meanY - slope * (x - meanX)) ** 2, 0);
    if (squares < best.squares) best = { bend, squares };
  }
  return best.bend;
}

/** Growth of a young film over ten days in water held at a phosphate or nitrate content [1/d]. */
function growthAt(medium: Readonly<Record<string, number>>): number {
  const start = 0.002;
  const channel = culture({
    water: POND,
    setting: {
      waterVolume: 1,
      waterArea: 1,
      submergedArea: 1,
      darkFilmSurface: 0,
      wetSubstrate: 0,
      waterTemperature: 20,
    },
    contents: { attachedAlgae: start },
    without: UNGRAZED_POLES,
  });
  channel.hold(medium);
  for (let k = 0; k < 10; k += 1) day(channel, { light: 200, lit: 12, medium });
  return Math.log(channel.amount('attachedAlgae') / start) / 10;
}

/** The nutrient content at which growth stops rising [ug/L]: bend of two lines through growth at eight contents. */
export const periphytonSaturation: Experiment = {
  name: 'nutrients that saturate attached algae',
  asks: /periphyton nutrient/i,
  answer({ quantity, setup }) {
    if (/chlorophyll/i.test(quantity)) throw new NotStated('chlorophyll is not told apart from carbon');
    const isNitrate = /nitrate/i.test(quantity) && !/phosphate/i.test(`${quantity} ${setup}`);
    const contents = isNitrate ? [2, 5, 10, 20, 40, 80, 160, 320] : [0.25, 0.5, 1, 2, 4, 8, 16, 32];
    return bendOf(
      contents.map((content) => {
        const medium = isNitrate
          ? { ...POND, ammonium: 0, nitrate: content / 1000 / GRAMS_PER_MOL.nitrogen }
          : { ...POND, phosphate: content / 1000 / GRAMS_PER_MOL.phosphorus };
        return [content, growthAt(medium)] as const;
      }),
    );
  },
};
