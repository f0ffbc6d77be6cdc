import type { Calculation } from '../harness/check.ts';
import type { Inputs } from '../harness/inputs.ts';
import { lengthInTheEnd, plateauOnRation } from './by-food.ts';
import { firstEggsAndLife } from './in-the-field.ts';
import {
  eggsByFeeding,
  eggToAdult,
  gainInDays,
  ingestion,
  lengthByFeeding,
  massFromStart,
  metamorphosis,
  rateRatio,
  recruitment,
  youngFromTen,
} from './more-quantities.ts';
import { lethalCopper } from './poisoned.ts';
import {
  adultOxygenUse,
  broodSize,
  broodTime,
  cumulativeYoung,
  doublingTime,
  firstBroodAge,
  firstReleaseAge,
  growthRate,
  lengthAtAge,
  maturityAge,
  medianLifespan,
  NotStated,
  type Quantity,
  type Question,
  reproductionInHeat,
  starvedSurvival,
  survival,
  wetMassAtAge,
} from './quantities.ts';
import { copperForNewborns, harmlessCopper, massInPoison, survivalByAge } from './slowed.ts';
import { speciesOf } from './species.ts';

interface Family {
  readonly name: string;
  /** What the quantity of a case must say to belong here; the first family that fits takes it. */
  readonly asks: RegExp;
  readonly answer: Quantity;
}

const FAMILIES: readonly Family[] = [
  { name: 'harmless copper', asks: /^copper without effect/i, answer: harmlessCopper },
  { name: 'copper for newborns', asks: /^copper that halves newborns/i, answer: copperForNewborns },
  { name: 'survival of poison by age', asks: /^survival .*copper by age/i, answer: survivalByAge },
  { name: 'mass in a poison', asks: /^mass after .* mg N\/L/i, answer: massInPoison },
  { name: 'lethal copper', asks: /lethal copper/i, answer: lethalCopper },
  { name: 'numbers on a ration', asks: /trajectory on a constant ration/i, answer: plateauOnRation },
  { name: 'first brood and life', asks: /first brood and lifespan/i, answer: firstEggsAndLife },
  { name: 'eggs by feeding', asks: /cumulative eggs .*relative to ad libitum/i, answer: eggsByFeeding },
  { name: 'length by feeding', asks: /length at day \d+/i, answer: lengthByFeeding },
  { name: 'rate ratio', asks: /rate ratio/i, answer: rateRatio },
  { name: 'young from ten adults', asks: /juveniles (after|per 10)/i, answer: youngFromTen },
  { name: 'metamorphosis', asks: /to metamorphosis/i, answer: metamorphosis },
  { name: 'egg to adult', asks: /egg to adult/i, answer: eggToAdult },
  { name: 'recruitment in fresh water', asks: /recruitment in fresh water/i, answer: recruitment },
  { name: 'gain of mass', asks: /growth in \d+ days/i, answer: gainInDays },
  { name: 'reproduction in heat', asks: /reproduction against temperature/i, answer: reproductionInHeat },
  { name: 'survival without food', asks: /survival .*starved|starved .*survival/i, answer: starvedSurvival },
  { name: 'survival', asks: /^survival\b/i, answer: survival },
  {
    name: 'egg time',
    asks: /(egg|incubation|brood|carrying|marsup)\w* .*time|incubation$/i,
    answer: broodTime,
  },
  { name: 'length at age', asks: /(length|diameter|size) at age/i, answer: lengthAtAge },
  { name: 'wet mass at age', asks: /(wet )?mass at age/i, answer: wetMassAtAge },
  { name: 'wet mass from a start', asks: /wet mass$/i, answer: massFromStart },
  { name: 'ultimate length', asks: /ultimate length|maximum length/i, answer: lengthInTheEnd },
  { name: 'age at first brood', asks: /birth to first brood/i, answer: firstReleaseAge },
  { name: 'age at first brood', asks: /first (brood|release)/i, answer: firstBroodAge },
  {
    name: 'age at maturity',
    asks: /maturity|first (egg|spawning|laying)/i,
    answer: maturityAge,
  },
  { name: 'ingestion', asks: /^ingestion/i, answer: ingestion },
  { name: 'cumulative young', asks: /cumulative (young|eggs|offspring)/i, answer: cumulativeYoung },
  { name: 'brood size', asks: /(eggs|young) per brood|(brood|clutch) size/i, answer: broodSize },
  { name: 'oxygen use', asks: /oxygen use|respiration/i, answer: adultOxygenUse },
  { name: 'median lifespan', asks: /lifespan|median death/i, answer: medianLifespan },
  { name: 'doubling time', asks: /doubling time/i, answer: doublingTime },
  {
    name: 'growth rate of a population',
    asks: /rate of increase|population growth rate/i,
    answer: growthRate,
  },
];

/** Family that a quantity belongs to, in words; the quantity itself where none fits. */
export function familyOf(quantity: string): string {
  return FAMILIES.find(({ asks }) => asks.test(quantity))?.name ?? quantity;
}

/** Temperatures a text names, such as '22 C' or '20-22 C' (its ends) [degC]. */
export function temperaturesIn(conditions: string): number[] {
  const [, from, to] =
    /(\d+(?:\.\d+)?)(?:\s*(?:-|to|and)\s*(\d+(?:\.\d+)?))?\s*(?:°|deg )?C\b/.exec(conditions) ?? [];
  return [from, to].filter((each) => each !== undefined).map(Number);
}

/** Part of what they want that poor food is taken to hold: then gnats need 22.4 for 20.9 d, as on the poorer of two foods. */
const POOR_RATION = 0.8;

/** The family's one answer on good (1) and poor food (0), in the order asked. */
function onGoodAndPoor(family: Family, question: Question, foods: readonly number[]): number[] {
  return foods.map((food) => {
    const species = { ...question.species, ration: food > 0 ? 1 : POOR_RATION };
    const answer = family.answer({ ...question, species, x: undefined, xName: '' });
    if (typeof answer !== 'number') throw new NotStated('one answer for each food is needed');
    return answer;
  });
}

/** Carbon of Chlorella sorokiniana [mg per thousand cells]: 14 um3 (Benider et al. 2002, via the Add-my-Pet species file), a quarter of a picogram per um3 (assumed). */
const THOUSAND_CELLS = 3.5e-6;

/** Food as carbon [mg C/L]; algae counted by cells are taken for small green ones. */
function concentrationOf(food: number, unit: string | undefined): number {
  if (unit === 'mg C/L') return food;
  if (unit === 'thousand cells/mL') return food * THOUSAND_CELLS * 1000;
  throw new NotStated('food is not given as carbon per litre or as cells');
}

/** The family's one answer with floating algae held at a concentration. */
function atConcentration(family: Family, question: Question, food: number, unit: string | undefined): number {
  const concentration = concentrationOf(food, unit);
  const answer = family.answer({
    ...question,
    species: { ...question.species, concentration },
    x: undefined,
    xName: '',
  });
  if (typeof answer !== 'number') throw new NotStated('one answer for each concentration is needed');
  return answer;
}

function answered(inputs: Inputs, family: Family): number | readonly number[] {
  const species = speciesOf(inputs.text('taxon'));
  if (!species) throw new Error(`the library models no '${inputs.text('taxon')}'`);
  const text = `${inputs.text('quantity')}; ${inputs.textOr('conditions', '')}`;
  const feedEvery = /alternate/i.test(text) ? 2 : 1;
  const question = {
    species: { ...species, feedEvery },
    x: inputs.has('x') ? inputs.numbers('x', inputs.unit('x') ?? '-') : undefined,
    xName: inputs.textOr('xName', ''),
    temperatures: temperaturesIn(inputs.textOr('conditions', '')),
    text,
  };
  const { x, xName } = question;
  if (x && /good.*poor/.test(inputs.textOr('xUnit', ''))) return onGoodAndPoor(family, question, x);
  if (x && /^food$/i.test(xName))
    return x.map((food) => atConcentration(family, question, food, inputs.textOr('xUnit', '')));
  const held = /food (\d+(?:\.\d+)?) (mg C\/L)/.exec(text);
  return held && !x ? atConcentration(family, question, Number(held[1]), held[2]) : family.answer(question);
}

/** The answer, or undefined when the case leaves out what the rearing needs. */
function answeredOrNot(inputs: Inputs, family: Family): number | readonly number[] | undefined {
  try {
    return answered(inputs, family);
  } catch (error) {
    if (error instanceof NotStated) return undefined;
    throw error;
  }
}

/** Computes a quantity of a species of the library by a rearing; undefined when either is not modelled. */
export function rearingOf(taxon: string, familyName: string): Calculation | undefined {
  const family = FAMILIES.find(({ name }) => name === familyName);
  if (!family || !speciesOf(taxon)) return undefined;
  return (inputs, wanted) => {
    const value = answeredOrNot(inputs, family);
    if (value === undefined) return {};
    return Object.fromEntries(
      [...wanted].map(([name, { unit, value: threshold }]) => [
        name,
        name.startsWith('shortfall') && typeof value === 'number' && inputs.has('atLeast')
          ? { value: Math.max(0, inputs.number('atLeast', '-') - value) + Number(threshold), unit }
          : { value, unit },
      ]),
    );
  };
}
