/** What a case asks, in its own words. */
export interface Question {
  readonly topic: string;
  readonly setup: string;
  readonly quantity: string;
  readonly unit: string;
  /** Temperatures the set-up and the quantity name, in their order [degC]. */
  readonly temperatures: readonly number[];
}

/** The case leaves out something without which the experiment cannot be set up, or asks what is not computed. */
export class NotStated extends Error {}

/** The computed quantity in the unit it is named with; true or false where the case is a statement. */
export type Answer = number | boolean;

/** One family of experiments: the published set-up run on the cycle with the library's parameters. */
export interface Experiment {
  readonly name: string;
  /** What topic and quantity of a case must say to belong here; the first family that fits takes it. */
  readonly asks: RegExp;
  /** @throws NotStated as said there */
  readonly answer: (question: Question) => Answer;
}

/** Temperatures a text names, such as '20 C', '27 C and 17 C', '25, 30, 35 C' or '5 to 20 C' [degC]. */
export function temperaturesIn(text: string): number[] {
  const found: number[] = [];
  const numbers = /((?:-?\d+(?:\.\d+)?(?:\s*(?:,|-|to|and|\/)\s*)?)+)\s*(?:°|deg )?C\b/g;
  for (const [, list = ''] of text.matchAll(numbers))
    for (const [number] of list.matchAll(/\d+(?:\.\d+)?/g)) found.push(Number(number));
  return found;
}

/** The only temperature of a question, or `otherwise` where it names none. */
export function temperatureOf({ temperatures }: Question, otherwise: number): number {
  return temperatures[0] ?? otherwise;
}

/** Slope of the least-squares line through points. */
export function slopeOf(points: readonly (readonly [x: number, y: number])[]): number {
  const mean = (k: 0 | 1): number => points.reduce((sum, point) => sum + point[k], 0) / points.length;
  const [x, y] = [mean(0), mean(1)];
  let upper = 0;
  let lower = 0;
  for (const point of points) {
    upper += (point[0] - x) * (point[1] - y);
    lower += (point[0] - x) ** 2;
  }
  return upper / lower;
}
