export type Point = readonly [x: number, y: number];

/** Straight path through the points. */
export function polyline(points: readonly Point[], closed = false): string {
  const steps = points.map(([x, y], index) => `${index === 0 ? 'M' : 'L'}${pair(x, y)}`);
  return steps.join('') + (closed && points.length > 0 ? 'Z' : '');
}

/** Smooth path through the points: a uniform Catmull-Rom spline written as cubic Bezier curves. */
export function smoothLine(points: readonly Point[], closed = false): string {
  const count = points.length;
  if (count < 3) return polyline(points, closed);
  const at = (index: number): Point =>
    closed
      ? (points[(index + count) % count] as Point)
      : (points[Math.min(count - 1, Math.max(0, index))] as Point);
  let path = `M${pair(...at(0))}`;
  const segments = closed ? count : count - 1;
  for (let index = 0; index < segments; index++) {
    const [before, from, to, after] = [at(index - 1), at(index), at(index + 1), at(index + 2)];
    const first = pair(from[0] + (to[0] - before[0]) / 6, from[1] + (to[1] - before[1]) / 6);
    const second = pair(to[0] - (after[0] - from[0]) / 6, to[1] - (after[1] - from[1]) / 6);
    path += `C${first} ${second} ${pair(...to)}`;
  }
  return closed ? `${path}Z` : path;
}

/** Area between an upper and a lower course with the same direction. */
export function areaBetween(upper: readonly Point[], lower: readonly Point[]): string {
  return polyline([...upper, ...[...lower].reverse()], true);
}

function pair(x: number, y: number): string {
  if (!Number.isFinite(x) || !Number.isFinite(y))
    throw new RangeError(`a path has no finite point: ${x}, ${y}`);
  return `${tenth(x)} ${tenth(y)}`;
}

/** Courses are kept to a tenth of a pixel: finer than a pen, and a third shorter as text. */
function tenth(value: number): number {
  const rounded = Math.round(value * 10) / 10;
  return rounded === 0 ? 0 : rounded;
}
