import { describe, expect, it } from 'vitest';
import type { Judged, Leaving } from './buffer-judge.ts';
import { obstacleOf } from './buffer-obstacle.ts';
import type { Search, SearchSetting, Tried } from './buffer-search.ts';

const LIMIT = 3;
const below = (day: number): Leaving => ({
  series: 'KH',
  side: 'low',
  limit: { value: LIMIT, owner: 'a snail', source: 'test' } as Leaving['limit'],
  day,
});

/** A run that leaves the lower limit of hardness on day 40; `placed` of carbonate at first, `left` of it at the end [g]. */
function run(member: Judged['member'], leastKH: number, placed = 0, left = 0, day = 40): Judged {
  return {
    member,
    below: below(day),
    leastKH,
    leastHeld: { KH: leastKH, pH: 7 },
    solidAtStart: placed,
    solidAtEnd: left,
  };
}

/** Masses of 6.4 and 25.6 g/L in ten litres, with the least hardness that each held and what was left of it. */
function told(
  tries: readonly { readonly kg: number; readonly least: number; readonly left: number }[],
  day = 40,
) {
  const tried: Tried[] = tries.map(({ kg, least, left }) => ({
    mass: kg,
    runs: (['expected', 0, 1] as const).map((member) => run(member, least, kg * 1000, left * kg * 1000, day)),
  }));
  const search = { tried, closest: tried.at(-1)! } as unknown as Search;
  const setting = {
    probability: 0.9,
    without: (['expected', 0, 1] as const).map((member) => run(member, 0.5)),
  } as unknown as SearchSetting;
  return obstacleOf(search, setting);
}

describe('what stands in the way of a buffer', () => {
  it('is too strong an acid when even the most that was tried is used up', () => {
    const { kind, left, most } = told([
      { kg: 0.064, least: 0.8, left: 0 },
      { kg: 0.256, least: 1.2, left: 0.1 },
    ]);
    expect(kind).toBe('acid too strong');
    expect(left).toBeCloseTo(0.1, 12);
    expect(most).toBe(0.256);
  });

  it('is too slow a grain when four times as much dissolves in proportion, though most is left', () => {
    const { kind, lowest } = told([
      { kg: 0.064, least: 0.8, left: 0.99 },
      { kg: 0.256, least: 2.2, left: 0.98 },
    ]);
    expect(kind).toBe('dissolves too slowly');
    expect(lowest).toBe(2.2);
  });

  it('is saturated water when of four times as much hardly more dissolves, near the limit or far from it', () => {
    const { kind } = told([
      { kg: 0.064, least: 2.1, left: 0.95 },
      { kg: 0.256, least: 2.15, left: 0.98 },
    ]);
    expect(kind).toBe('saturated');
    const near = told([
      { kg: 0.064, least: 2.9, left: 1 },
      { kg: 0.256, least: 2.99, left: 1 },
    ]);
    expect(near.kind).toBe('saturated');
  });

  it('is the fill when the limit is left before carbonate can be felt', () => {
    expect(told([{ kg: 0.256, least: 1, left: 0.9 }], 5).kind).toBe('too late');
  });
});
