import type { Point } from '../scene/path.ts';
import type { SectionFrame } from './frame.ts';

/** One stretch of open water: its outline [px] and its ends [m]. */
export interface WaterBody {
  readonly from: number;
  readonly to: number;
  readonly outline: readonly Point[];
}

/** The stretches where the level stands above the ground, left to right. */
export function waterBodies({ ground, level, at }: SectionFrame): WaterBody[] {
  return stretches(ground.samples, (x) => level - ground.heightAt(x)).map(({ from, to }) => {
    const inner = ground.samples.filter((x) => x > from && x < to);
    const floor = [from, ...inner, to].map((x) => at(x, Math.min(level, ground.heightAt(x))));
    return { from, to, outline: [at(to, level), at(from, level), ...floor] };
  });
}

/** Intervals in which a course along x is positive, with their ends found on the straight between samples. */
export function stretches(
  samples: readonly number[],
  height: (x: number) => number,
): { from: number; to: number }[] {
  const found: { from: number; to: number }[] = [];
  let from: number | undefined;
  samples.forEach((x, index) => {
    const here = height(x);
    const before = samples[index - 1];
    const crossing =
      before === undefined ? x : crossingBetween({ x: before, h: height(before) }, { x, h: here });
    if (here > 0 && from === undefined) from = crossing;
    if (here <= 0 && from !== undefined) {
      found.push({ from, to: crossing });
      from = undefined;
    }
  });
  if (from !== undefined) found.push({ from, to: samples[samples.length - 1] ?? from });
  return found.filter((stretch) => stretch.to - stretch.from > 1e-6);
}

function crossingBetween(start: { x: number; h: number }, end: { x: number; h: number }): number {
  const rise = end.h - start.h;
  if (rise === 0) return end.x;
  return start.x + (end.x - start.x) * Math.min(1, Math.max(0, -start.h / rise));
}
