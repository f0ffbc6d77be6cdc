import type { Calculation } from '../harness/check.ts';
import type { Inputs } from '../harness/inputs.ts';
import { type Answer, type Experiment, NotStated, type Question, temperaturesIn } from './experiment.ts';
import { carcassLoss, carcassPulse } from './experiments/carcasses.ts';
import { denitrificationRate, denitrificationWarmth } from './experiments/denitrification.ts';
import {
  duckweedCrowding,
  duckweedGrowth,
  duckweedNitrogen,
  duckweedWarmth,
  duckweedYield,
  floatingFernCrowding,
  floatingFernWarmth,
} from './experiments/duckweed.ts';
import { hornwortGrowth } from './experiments/hornwort.ts';
import { leafBreakdown, leafLeaching } from './experiments/leaf-litter.ts';
import { leavesOnLand } from './experiments/leaves-on-land.ts';
import { mouldOnWood } from './experiments/mould-on-wood.ts';
import { coldNitrification, filterStart, nitrificationBalance } from './experiments/nitrification.ts';
import { faecesRespiration, feedDemand, feedRespiration } from './experiments/oxygen-demand.ts';
import { periphytonProduction, periphytonSaturation, periphytonStock } from './experiments/periphyton.ts';
import { plantRemains } from './experiments/plant-remains.ts';
import { plantWall } from './experiments/plant-wall.ts';
import { mossEvaporation, mossMat, plantTranspiration, sphagnumYield } from './experiments/plants-on-land.ts';
import { mossAcidity, peatCapacity, woodCarbon } from './experiments/wood-and-moss.ts';

/** Families of experiments; the first that fits a case takes it. One file of `experiments` each, or a few of a kind. */
const EXPERIMENTS: readonly Experiment[] = [
  duckweedNitrogen,
  duckweedWarmth,
  duckweedYield,
  duckweedCrowding,
  duckweedGrowth,
  floatingFernCrowding,
  floatingFernWarmth,
  hornwortGrowth,
  filterStart,
  coldNitrification,
  nitrificationBalance,
  feedRespiration,
  faecesRespiration,
  feedDemand,
  plantRemains,
  carcassLoss,
  carcassPulse,
  leafLeaching,
  leavesOnLand,
  leafBreakdown,
  woodCarbon,
  peatCapacity,
  mossAcidity,
  periphytonSaturation,
  periphytonProduction,
  periphytonStock,
  denitrificationWarmth,
  denitrificationRate,
  mossMat,
  sphagnumYield,
  mossEvaporation,
  plantTranspiration,
  mouldOnWood,
  plantWall,
];

/** Family a case belongs to, in words; its topic where none fits. */
export function familyOf(topic: string, quantity: string): string {
  return EXPERIMENTS.find(({ asks }) => asks.test(`${topic}; ${quantity}`))?.name ?? topic;
}

function questionOf(inputs: Inputs): Question {
  const [setup, quantity] = [inputs.textOr('setup', ''), inputs.text('quantity')];
  return {
    topic: inputs.text('topic'),
    setup,
    quantity,
    unit: inputs.textOr('unit', '-'),
    temperatures: temperaturesIn(`${quantity}; ${setup}`),
  };
}

/** The answer, or undefined when the case asks or leaves out what the experiment cannot do. */
function answered(inputs: Inputs, experiment: Experiment): Answer | undefined {
  try {
    return experiment.answer(questionOf(inputs));
  } catch (error) {
    if (error instanceof NotStated) return undefined;
    throw error;
  }
}

/** Runs the experiment of a family; undefined when none is built. */
export function experimentOf(family: string): Calculation | undefined {
  const experiment = EXPERIMENTS.find(({ name }) => name === family);
  if (!experiment) return undefined;
  return (inputs, wanted) => {
    const answer = answered(inputs, experiment);
    if (answer === undefined) return {};
    const value = typeof answer === 'boolean' ? Number(answer) : answer;
    return Object.fromEntries([...wanted].map(([name, { unit }]) => [name, { value, unit }]));
  };
}
