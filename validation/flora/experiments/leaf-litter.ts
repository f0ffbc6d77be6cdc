import { library, type MaterialOf } from '@shoreglass/library';
import { litterContents } from '../../../packages/contract/src/enclosure/plan/pieces.ts';
import { type Culture, culture } from '../culture.ts';
import { type Experiment, NotStated, type Question, slopeOf, temperatureOf } from '../experiment.ts';

/** Leaves in grams in forty litres of aired tap water with a trace of fungi on them. */
const LEAVES = 10;
const SPORES = 0.002;
/**
 * What leaf eaters of a stream or an estuary clear of a leaf pack [1/d]. @source assumed: a tenth of the leaves' mass
 * of amphipods and insects that eat 15 % of their own mass a day
 */
const EATERS = 0.015;

function litterNamed(words: string): MaterialOf<'litter'> {
  const genus = ['alder', 'oak', 'beech', 'almond'].find((each) => words.toLowerCase().includes(each));
  const material = genus === undefined ? undefined : library.data.materials[`${genus}-litter`];
  if (material?.use !== 'litter') throw new NotStated('the library holds no such leaves');
  return material;
}

function bag(material: MaterialOf<'litter'>, temperature: number, withEaters: boolean): Culture {
  const { leachable, carbon, nitrogen, phosphorus, pace } = litterContents(material, LEAVES / 1000);
  return culture({
    water: { calcium: 0.8, sodium: 0.4, chloride: 0.3, nitrate: 0.05, ammonium: 0.003, phosphate: 0.001 },
    setting: {
      waterVolume: 1,
      waterTemperature: temperature,
      surfaceRenewal: 1,
      wetSubstrate: 0,
      litterPace: pace,
      grazingOnLitter: withEaters ? EATERS / 86_400 : 0,
    },
    contents: {
      litterCarbon: carbon,
      litterNitrogen: nitrogen,
      litterPhosphorus: phosphorus,
      litterLeachable: leachable,
      litterFungi: SPORES * carbon,
    },
  });
}

/** Share of the mass left: leaves, what has not leached, and the fungi in them. */
function left(vessel: Culture): () => number {
  const mass = () =>
    vessel.amount('litterCarbon') + vessel.amount('litterLeachable') + vessel.amount('litterFungi');
  const start = mass();
  return () => mass() / start;
}

const withEaters = ({ setup }: Question): boolean =>
  /with (shredders|leaf eaters)|invertebrates/i.test(setup);

/** First-order rate over sixty days from the seventh, leaching left out [1/d]. */
function rate(question: Question): number {
  const vessel = bag(
    litterNamed(`${question.topic} ${question.setup}`),
    temperatureOf(question, 10),
    withEaters(question),
  );
  const share = left(vessel);
  const points: [number, number][] = [];
  for (let day = 1; day <= 67; day += 1) {
    vessel.pass(24);
    if (day >= 7) points.push([day, Math.log(share())]);
  }
  return -slopeOf(points);
}

/** Share of the mass lost in the days the question names. */
function lost(question: Question): number {
  const days = Number(/(\d+)\s*d/.exec(question.quantity)?.[1]);
  if (!(days > 0)) throw new NotStated('no number of days is named');
  const vessel = bag(
    litterNamed(`${question.topic} ${question.setup}`),
    temperatureOf(question, /warm|tropic/i.test(question.setup) ? 28 : 15),
    withEaters(question),
  );
  const share = left(vessel);
  vessel.pass(24 * days);
  return 1 - share();
}

export const leafBreakdown: Experiment = {
  name: 'breakdown of leaves in water',
  asks: /(leaves|litter).*(in water|almond).*(first-order|mass lost)|almond leaves|leaves in water/i,
  answer: (question) => (/first-order/i.test(question.quantity) ? rate(question) : lost(question)),
};

/** Share of the mass that leaves dry leaves in three days, mean of the library's leaves. */
function leached({ setup }: Question): number {
  const days = Number(/(\d+)\s*d/.exec(setup)?.[1] ?? 3);
  const kinds = Object.values(library.data.materials).filter(
    (material): material is MaterialOf<'litter'> => material.use === 'litter',
  );
  const shares = kinds.map((material) => {
    const vessel = bag(material, 15, false);
    const share = left(vessel);
    vessel.pass(24 * days);
    return 1 - share();
  });
  return shares.reduce((sum, share) => sum + share, 0) / shares.length;
}

export const leafLeaching: Experiment = {
  name: 'leaching of leaves',
  asks: /leaf leaching|leaching.*leaves/i,
  answer: leached,
};
