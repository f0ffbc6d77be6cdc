/** Round values (1, 2 or 5 times a power of ten apart) inside a domain, at most about `count` of them. */
export function roundTicks(domain: readonly [number, number], count: number): number[] {
  const [low, high] = domain;
  const step = roundStep((high - low) / Math.max(1, count));
  if (!(step > 0)) return [low];
  const ticks: number[] = [];
  for (let index = Math.ceil(low / step - 1e-9); index * step <= high + step * 1e-9; index++)
    ticks.push(Number((index * step).toPrecision(12)));
  return ticks;
}

/** Counts that divide a log scale evenly for the eye: 0, 1, 3, 10, 30, 100 … within the domain. */
export function countTicks(domain: readonly [number, number]): number[] {
  const ticks = [0];
  for (let decade = 1; decade <= domain[1]; decade *= 10) ticks.push(decade, 3 * decade);
  return ticks.filter((tick) => tick >= domain[0] && tick <= domain[1]);
}

/** Smallest 1, 2 or 5 times a power of ten that is at least `step`. */
export function roundStep(step: number): number {
  const power = 10 ** Math.floor(Math.log10(step));
  const factor = [1, 2, 5, 10].find((candidate) => candidate * power >= step * (1 - 1e-9)) ?? 10;
  return factor * power;
}

/** Digits after the point that a tick step needs. */
export function stepDigits(step: number): number {
  return Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
}
