import type { Noise } from '../../noise/noise.ts';
import { type Point, polyline, smoothLine } from '../../scene/path.ts';

/** Path of a fern frond that rises from a point and bends over, with leaflets that shorten towards the tip. */
export function frondPath(base: Point, length: number, lean: number): string {
  const knots = Math.max(6, Math.round(length / 4.2));
  const midrib: Point[] = Array.from({ length: knots + 1 }, (_, index) => {
    const t = index / knots;
    return [
      base[0] + lean * length * (0.3 * t + 0.7 * t * t),
      base[1] - length * (t - 0.42 * Math.abs(lean) * t * t),
    ];
  });
  const leaflets = midrib.map((point, index) => {
    const [before, t] = [midrib[index - 1], index / knots];
    if (!before || t < 0.22) return '';
    const reach = length * 0.23 * Math.sqrt(Math.max(0, 1.04 - t));
    const [dx, dy] = [point[0] - before[0], point[1] - before[1]];
    const step = Math.hypot(dx, dy) || 1;
    const [ux, uy] = [dx / step, dy / step];
    return [1, -1]
      .map((hand) =>
        polyline([
          point,
          [
            point[0] + reach * (0.45 * ux - 0.85 * hand * uy),
            point[1] + reach * (0.45 * uy + 0.85 * hand * ux),
          ],
        ]),
      )
      .join('');
  });
  return smoothLine(midrib) + leaflets.join('');
}

/** A tuft of moss: short strokes that fan out of one point. */
export function tuftPath(base: Point, height: number, noise: Noise): string {
  return [-0.8, -0.3, 0.2, 0.75]
    .map((lean) => {
      const tall = height * (0.65 + 0.5 * noise());
      const bend = lean + 0.4 * (noise() - 0.5);
      return smoothLine([
        base,
        [base[0] + bend * tall * 0.35, base[1] - tall * 0.6],
        [base[0] + bend * tall * 0.9, base[1] - tall],
      ]);
    })
    .join('');
}

/** Blades of a sedge or rush. */
export function bladesPath(base: Point, height: number, noise: Noise): string {
  return Array.from({ length: 5 }, (_, index) => {
    const lean = (index - 2) * 0.2 + 0.16 * (noise() - 0.5);
    const tall = height * (0.6 + 0.4 * noise());
    return smoothLine([
      [base[0] + (index - 2) * 0.8, base[1]],
      [base[0] + lean * tall * 0.4, base[1] - tall * 0.6],
      [base[0] + lean * tall * (1 + 0.4 * Math.abs(lean)), base[1] - tall],
    ]);
  }).join('');
}

/** A submerged stem with whorls of fine leaves. */
export function whorlPath(base: Point, height: number, sway: number): string {
  const knots = Math.max(3, Math.round(height / 5));
  const stem: Point[] = Array.from({ length: knots + 1 }, (_, index) => {
    const t = index / knots;
    return [base[0] + sway * Math.sin(t * 2.6) * height * 0.16, base[1] - height * t];
  });
  const whorls = stem.slice(1).map(([x, y], index) => {
    const reach = 2.2 + 2.6 * (1 - (0.55 * index) / knots);
    return `${polyline([
      [x - reach, y - 1.8],
      [x, y],
      [x + reach, y - 1.8],
    ])}`;
  });
  return smoothLine(stem) + whorls.join('');
}

/** A fallen leaf seen from the side: a lens with a midrib. */
export function leafPath(center: Point, length: number, angle: number): string {
  const [dx, dy] = [(Math.cos(angle) * length) / 2, (Math.sin(angle) * length) / 2];
  const [nx, ny] = [-dy * 0.42, dx * 0.42];
  const start: Point = [center[0] - dx, center[1] - dy];
  const end: Point = [center[0] + dx, center[1] + dy];
  const blade = [start, [center[0] + nx, center[1] + ny], end, [center[0] - nx, center[1] - ny]] as const;
  return smoothLine(blade, true) + polyline([start, end]);
}
