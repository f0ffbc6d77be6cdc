/** What a course is integrated with. */
export interface CourseProblem {
  rate(y: number): number;
  readonly start: number;
  /** Times asked for, rising from 0. */
  readonly times: readonly number[];
  /** Error allowed per step, in the unit of y. */
  readonly tolerance: number;
}

const MOST_STEPS = 20_000;

/**
 * y at the times asked for, of dy/dt = rate(y), by the embedded pair of orders 3 and 2 of Bogacki and Shampine (1989)
 * with steps chosen by the error between the two.
 * @throws Error when times do not rise or the steps are used up.
 */
export function course({ rate, start, times, tolerance }: CourseProblem): number[] {
  let t = 0;
  let y = start;
  let step = (times[0] ?? 1) / 100;
  let steps = 0;
  return times.map((end) => {
    if (!(end >= t)) throw new Error(`times do not rise at ${end}`);
    while (t < end) {
      if (++steps > MOST_STEPS) throw new Error(`the course needs more than ${MOST_STEPS} steps`);
      const h = Math.min(step, end - t);
      const k1 = rate(y);
      const k2 = rate(y + 0.5 * h * k1);
      const k3 = rate(y + 0.75 * h * k2);
      const next = y + (h / 9) * (2 * k1 + 3 * k2 + 4 * k3);
      const second = y + (h / 24) * (7 * k1 + 6 * k2 + 8 * k3 + 3 * rate(next));
      const error = Math.abs(next - second) / tolerance;
      if (error <= 1) {
        t = h === end - t ? end : t + h;
        y = next;
      }
      const factor = Math.min(4, Math.max(0.2, 0.9 * error ** (-1 / 3)));
      if (error > 1 || h === step || factor < 1) step = h * factor;
    }
    return y;
  });
}
