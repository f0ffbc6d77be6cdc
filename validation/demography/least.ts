/** A function of parameters above 0, to be made least. */
export type Cost = (parameters: readonly number[]) => number;

interface Corner {
  readonly at: readonly number[];
  readonly cost: number;
}

const LEAST_STEPS = 20_000;

/**
 * Parameters above 0 at which a cost is least: downhill simplex of Nelder and Mead (1965) over their logarithms, begun
 * anew until nothing is gained.
 */
export function leastOf(cost: Cost, start: readonly number[]): readonly number[] {
  const inLogs: Cost = (logs) => cost(logs.map(Math.exp));
  let best = start.map(Math.log);
  for (let round = 0; round < 12; round += 1) {
    const next = descended(inLogs, best, 0.3 / (1 + 3 * round));
    const gained = inLogs(best) - inLogs(next);
    best = next;
    if (round > 2 && gained <= 1e-15 * Math.abs(inLogs(best))) break;
  }
  return best.map(Math.exp);
}

function descended(cost: Cost, start: readonly number[], reach: number): number[] {
  const corner = (at: readonly number[]): Corner => ({ at, cost: cost(at) });
  let corners = [
    corner(start),
    ...start.map((_, i) => corner(start.map((each, j) => (i === j ? each + reach : each)))),
  ];
  for (let step = 0; step < LEAST_STEPS; step += 1) {
    corners.sort((a, b) => a.cost - b.cost);
    const best = corners[0]!;
    const worst = corners.at(-1)!;
    const width = Math.max(...worst.at.map((each, i) => Math.abs(each - best.at[i]!)));
    if (width < 1e-10) break;
    const middle = start.map(
      (_, i) => corners.slice(0, -1).reduce((sum, { at }) => sum + at[i]!, 0) / (corners.length - 1),
    );
    const along = (times: number): Corner =>
      corner(middle.map((each, i) => each + times * (each - worst.at[i]!)));
    const mirrored = along(1);
    if (mirrored.cost < best.cost) {
      const further = along(2);
      corners[corners.length - 1] = further.cost < mirrored.cost ? further : mirrored;
    } else if (mirrored.cost < corners.at(-2)!.cost) corners[corners.length - 1] = mirrored;
    else {
      const inside = along(mirrored.cost < worst.cost ? 0.5 : -0.5);
      if (inside.cost < worst.cost) corners[corners.length - 1] = inside;
      else
        corners = corners.map(({ at }) =>
          corner(at.map((each, i) => best.at[i]! + (each - best.at[i]!) / 2)),
        );
    }
  }
  return [...corners.sort((a, b) => a.cost - b.cost)[0]!.at];
}
