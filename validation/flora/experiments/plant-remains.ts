import { library } from '@shoreglass/library';
import { culture } from '../culture.ts';
import { type Experiment, type Question, slopeOf, temperatureOf } from '../experiment.ts';

/** Breakdown of the plant a case names over that of soft shoots [1], as the library has it; 1 of those it lacks. */
function paceOf({ topic }: Question): number {
  const named = Object.values(library.data.plants).find(({ name }) => topic.toLowerCase().includes(name));
  return named?.breakdown?.value ?? 1;
}

/** Share left of dead plants in aired water in the dark, day by day; what has become detritus has left the bag. */
function left(question: Question, temperature: number, days: number): number[] {
  const carbon = 0.05;
  const bag = culture({
    water: { sodium: 1, chloride: 0.5 },
    setting: {
      waterTemperature: temperature,
      surfaceRenewal: 1,
      wetSubstrate: 0,
      remainsPace: paceOf(question),
    },
    contents: { plantRemains: carbon },
  });
  return Array.from({ length: days + 1 }, (_, k) => {
    if (k > 0) bag.pass(24);
    return bag.amount('plantRemains') / carbon;
  });
}

/** First-order rate over the first fifty days [1/d]. */
function firstOrder(question: Question): number {
  const course = left(question, temperatureOf(question, 25), 50);
  return -slopeOf(course.map((share, k) => [k, Math.log(share)]));
}

/** Loss per day where mass is said to fall along a line: of its first half [1/d]. */
function alongALine(question: Question): number {
  const course = left(question, temperatureOf(question, 20), 400);
  const half = course.findIndex((share) => share < 0.5);
  return 0.5 / half;
}

export const plantRemains: Experiment = {
  name: 'breakdown of dead water plants',
  asks: /(soft plant|water lettuce|pistia|egeria|hydrilla|nelumbo|ludwigia|macrophyte).*decay|plant decay/i,
  answer: (question) => (/linear/i.test(question.quantity) ? alongALine(question) : firstOrder(question)),
};
