import { describe, expect, it } from 'vitest';
import { palette } from '../palette/palette.ts';
import { sceneToSvg } from '../scene/scene-to-svg.ts';
import { countsChartScene } from './counts-chart.ts';

const counts = [
  { day: 0, number: 10, error: 2 },
  { day: 14, number: 16 },
  { day: 40, number: 30 },
];
const course = [0, 20, 40].map((day) => ({ day, value: 10 + day / 2, low: 8 + day / 2, high: 12 + day / 2 }));
const options = {
  name: 'Invented shrimp',
  startDate: '2026-03-01',
  counts,
  course,
  unit: 'animals',
  width: 600,
  height: 300,
  palette: palette('day'),
};
const circles = (svg: string): number[] =>
  [...svg.matchAll(/<circle cx="([\d.]+)" cy="([\d.]+)" r="3.6"/g)].map((match) => Number(match[2]));

describe('the chart of counts', () => {
  it('says in a sentence what it shows', () => {
    expect(sceneToSvg(countsChartScene(options))).toContain(
      'Invented shrimp, 3 counts until 10 Apr: 10 first, 30 last; the curve ends at 30, 95 % from 28 to 32.',
    );
  });
  it('draws greater counts higher, with a ring each and one in the legend', () => {
    const heights = circles(sceneToSvg(countsChartScene(options)));
    expect(heights).toHaveLength(4);
    expect(heights[0]).toBeGreaterThan(heights[1]!);
    expect(heights[1]).toBeGreaterThan(heights[2]!);
  });
  it('holds what was computed, on a log scale, at every width and in both views', () => {
    const computed = [0, 40].map((day) => ({ day, value: 50, low: 5, high: 1400 }));
    for (const width of [240, 390, 900])
      for (const view of ['day', 'night'] as const) {
        const svg = sceneToSvg(countsChartScene({ ...options, computed, width, palette: palette(view) }));
        expect(svg).toContain('animals, log scale');
        expect(svg).toContain('computed, median');
        expect(svg).not.toContain('NaN');
      }
  });
  it('draws a single count without a curve', () => {
    const svg = sceneToSvg(countsChartScene({ ...options, counts: counts.slice(0, 1), course: [] }));
    expect(svg).not.toContain('curve');
    expect(svg).not.toContain('NaN');
  });
});
