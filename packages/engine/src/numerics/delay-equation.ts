/** dx/dt from x now and x a fixed time ago. */
export type DelayedRate = (now: number, before: number) => number;

/** A quantity whose change depends on what it was a fixed time ago. */
export interface DelayEquation {
  readonly rate: DelayedRate;
  /** How long ago, > 0 [time]. */
  readonly delay: number;
  /** What it was all the time before 0. */
  readonly history: number;
  /** Steps in a delay, whole, >= 2; the error falls with their fourth power. */
  readonly steps: number;
}

/**
 * Values at rising times [unit of x] by the method of steps: fourth-order Runge-Kutta with a whole number of steps in a
 * delay, so that the kinks handed on from the start fall between steps; halfway values of the past and values between
 * steps by cubic Hermite interpolation.
 * @param equation the rate, the delay and what was before
 * @param times >= 0, rising [time]
 * @throws RangeError when the delay, the steps or the times are not such
 * @source bellen-zennaro-2003 ch. 3
 */
export function delayedCourse(equation: DelayEquation, times: readonly number[]): number[] {
  const { rate, delay, history, steps } = equation;
  if (!(delay > 0 && Number.isInteger(steps) && steps >= 2))
    throw new RangeError(`a delay of ${delay} in ${steps} steps`);
  if (times.some((time, i) => !(time >= (times[i - 1] ?? 0))))
    throw new RangeError('times do not rise from 0');
  const h = delay / steps;
  const last = Math.ceil((times.at(-1) ?? 0) / h) + 1;
  const x = new Float64Array(last + 1);
  const slope = new Float64Array(last + 1);
  x[0] = history;
  const past = (i: number): number => (i <= 0 ? history : x[i]!);
  const halfway = (i: number): number => (i < 0 ? history : between(x, slope, { at: i, part: 0.5, h }));
  for (let i = 0; i < last; i += 1) {
    const [from, middle, to] = [past(i - steps), halfway(i - steps), past(i + 1 - steps)];
    const now = x[i]!;
    const k1 = rate(now, from);
    const k2 = rate(now + (h / 2) * k1, middle);
    const k3 = rate(now + (h / 2) * k2, middle);
    const k4 = rate(now + h * k3, to);
    slope[i] = k1;
    x[i + 1] = now + (h / 6) * (k1 + 2 * k2 + 2 * k3 + k4);
    slope[i + 1] = rate(x[i + 1]!, to);
  }
  return times.map((time) => {
    const at = Math.min(Math.floor(time / h), last - 1);
    return between(x, slope, { at, part: time / h - at, h });
  });
}

interface Within {
  readonly at: number;
  /** 0 to 1 of the step. */
  readonly part: number;
  readonly h: number;
}

/** Cubic Hermite interpolation between a step and the next. */
function between(x: Float64Array, slope: Float64Array, { at, part, h }: Within): number {
  const s = part;
  const rest = 1 - s;
  return (
    rest * rest * (1 + 2 * s) * x[at]! +
    s * s * (3 - 2 * s) * x[at + 1]! +
    h * s * rest * (rest * slope[at]! - s * slope[at + 1]!)
  );
}
