import { satiation } from '../../packages/engine/src/life/foraging.ts';
import type { Calculation } from '../harness/check.ts';
import { figuresOf } from './answers.ts';

interface Rates {
  readonly r: number;
  readonly K: number;
  readonly a: number;
  readonly h: number;
  readonly e: number;
  readonly m: number;
}
type State = readonly [food: number, grazers: number];

/** Food that grows to a limit and grazers that eat it by the engine's response [1/d]. */
function change({ r, K, a, h, e, m }: Rates, [food, grazers]: State): [number, number] {
  const eaten = (grazers * satiation(food, 1 / (a * h))) / h;
  return [r * food * (1 - food / K) - eaten, e * eaten - m * grazers];
}

function stepped(rates: Rates, [food, grazers]: State, step: number): State {
  const along = (by: number, [x, y]: State): State => [food + by * x, grazers + by * y];
  const k1 = change(rates, [food, grazers]);
  const k2 = change(rates, along(step / 2, k1));
  const k3 = change(rates, along(step / 2, k2));
  const k4 = change(rates, along(step, k3));
  const mean = (i: 0 | 1): number => (k1[i] + 2 * k2[i] + 2 * k3[i] + k4[i]) / 6;
  return [food + step * mean(0), grazers + step * mean(1)];
}

/** A root of a rising or falling function by halving. */
function rootOf(f: (x: number) => number, low: number, high: number): number {
  const isRising = f(high) > 0;
  let [from, to] = [low, high];
  for (let i = 0; i < 200; i += 1) {
    const middle = (from + to) / 2;
    if (f(middle) > 0 === isRising) to = middle;
    else from = middle;
  }
  return (from + to) / 2;
}

/** Food at which grazers hold, and grazers that then hold the food. */
function restingPoint(rates: Rates): State {
  const food = rootOf((x) => change(rates, [x, 1])[1], 0, 1e6 * rates.K);
  return [food, rootOf((y) => change(rates, [food, y])[0], 0, 1e6)];
}

/** Trace and determinant of the changes around the resting point. */
function around(rates: Rates): { trace: number; determinant: number } {
  const point = restingPoint(rates);
  const column = (i: 0 | 1): readonly [number, number] => {
    const by = 1e-5 * point[i];
    const moved = (sign: number): State => [
      point[0] + (i === 0 ? sign * by : 0),
      point[1] + (i === 1 ? sign * by : 0),
    ];
    const [up, down] = [change(rates, moved(1)), change(rates, moved(-1))];
    return [(up[0] - down[0]) / (2 * by), (up[1] - down[1]) / (2 * by)];
  };
  const [byFood, byGrazers] = [column(0), column(1)];
  return {
    trace: byFood[0] + byGrazers[1],
    determinant: byFood[0] * byGrazers[1] - byGrazers[0] * byFood[1],
  };
}

const STEP = 0.02;
const SETTLING = 8000;

/** The settled cycle: time from one rise of the food through its resting level to the next, and the extremes. */
function cycleOf(rates: Rates, start: State): Record<string, number> {
  const [level] = restingPoint(rates);
  let state = start;
  let time = 0;
  const rises: number[] = [];
  const least = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  const most = [0, 0];
  while (time < SETTLING + 20_000 && rises.length < 4) {
    const next = stepped(rates, state, STEP);
    if (time > SETTLING && state[0] < level && next[0] >= level)
      rises.push(time + (STEP * (level - state[0])) / (next[0] - state[0]));
    if (rises.length > 0)
      for (const i of [0, 1] as const) {
        least[i] = Math.min(least[i]!, next[i]);
        most[i] = Math.max(most[i]!, next[i]);
      }
    state = next;
    time += STEP;
  }
  return {
    cycle_period: (rises.at(-1)! - rises[0]!) / (rises.length - 1),
    N_min: least[0]!,
    N_max: most[0]!,
    P_min: least[1]!,
    P_max: most[1]!,
  };
}

/** A grazer on regrowing food: where it rests, from which richness on it cycles, and the cycle. */
export const grazerFigures: Calculation = (inputs) => {
  const of = (name: string): number => inputs.number(name, '-');
  const rates: Rates = { r: of('r'), K: of('K'), a: of('a'), h: of('h'), e: of('e'), m: of('m') };
  const [food, grazers] = restingPoint(rates);
  const threshold = rootOf((K) => around({ ...rates, K }).trace, 1.05 * food, 50 * food);
  return figuresOf({
    N_star: food,
    P_star: grazers,
    K_hopf: threshold,
    period_at_hopf: (2 * Math.PI) / Math.sqrt(around({ ...rates, K: threshold }).determinant),
    ...(rates.K > threshold ? cycleOf(rates, [of('N0'), of('P0')]) : {}),
  });
};
