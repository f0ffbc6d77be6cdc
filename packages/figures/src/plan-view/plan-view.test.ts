import { describe, expect, it } from 'vitest';
import { palette } from '../palette/palette.ts';
import { rulerMarks } from '../scale/length-unit.ts';
import { sceneToSvg } from '../scene/scene-to-svg.ts';
import { ALDER_CORNER } from '../testdata/alder-corner.ts';
import { fieldFrom, stripField } from '../testdata/fields.ts';
import { contourHeights, contourPieces } from './contours.ts';
import { planViewHeight, planViewLayout } from './plan-view-layout.ts';
import { planViewScene } from './plan-view-scene.ts';

/** A round hill of radius 0.3 m at half its height, in the middle of 1 m by 1 m. */
const hill = fieldFrom({ columns: 120, rows: 120, length: 1, width: 1 }, (column, row) => ({
  zone: 0,
  ground: 0.6 - Math.hypot((column + 0.5) / 120 - 0.5, (row + 0.5) / 120 - 0.5),
}));

describe('contours', () => {
  it('of a cone are circles: length 2 pi r', () => {
    const length = contourPieces(hill, 0.3).reduce(
      (sum, [x1, y1, x2, y2]) => sum + Math.hypot(x2 - x1, y2 - y1),
      0,
    );
    expect(length / (2 * Math.PI * 0.3)).toBeCloseTo(1, 3);
  });
  it('of a slope are straight lines from pane to pane', () => {
    const slope = fieldFrom({ columns: 20, rows: 10, length: 1, width: 0.5 }, (column) => ({
      zone: 0,
      ground: (column + 0.5) / 20,
    }));
    const pieces = contourPieces(slope, 0.4);
    for (const [x1, , x2] of pieces)
      expect([x1, x2]).toEqual([expect.closeTo(0.4, 12), expect.closeTo(0.4, 12)]);
    const across = pieces.reduce((sum, [, y1, , y2]) => sum + Math.abs(y2 - y1), 0);
    expect(across).toBeCloseTo(0.5, 12);
  });
  it('stand at round heights between the lowest and the highest ground', () => {
    const flat = fieldFrom({ columns: 2, rows: 1, length: 1, width: 1 }, (column) => ({
      zone: 0,
      ground: 0.04 + 0.12 * column,
    }));
    expect(contourHeights(flat, 0.05)).toEqual([
      expect.closeTo(0.05),
      expect.closeTo(0.1),
      expect.closeTo(0.15),
    ]);
  });
});

describe('a plan view', () => {
  const width = 480;
  const size = { width, height: planViewHeight(ALDER_CORNER, width) };
  const draw = (unit: 'cm' | 'in') =>
    planViewScene({
      plan: ALDER_CORNER,
      field: stripField(ALDER_CORNER),
      size,
      palette: palette('day'),
      unit,
      grid: true,
    });

  it('keeps both directions to one scale and the front pane at the bottom', () => {
    const { inside, pixelsPerMetre } = planViewLayout(ALDER_CORNER, size);
    expect((inside.right - inside.left) / pixelsPerMetre).toBeCloseTo(0.9, 9);
    expect((inside.bottom - inside.top) / pixelsPerMetre).toBeCloseTo(0.45, 9);
  });
  it('is drawable and says what lies where, in the unit asked for', () => {
    const svg = sceneToSvg(draw('in'));
    expect(svg).not.toMatch(/NaN|Infinity|undefined/);
    expect(svg).toContain('35.4\u00a0in by 17.7\u00a0in');
    expect(sceneToSvg(draw('cm'))).toContain('bank from 46.0\u00a0cm to 90.0\u00a0cm');
  });
});

describe('a ruler', () => {
  it('has round marks of its unit, at least as far apart as asked', () => {
    expect(rulerMarks(0.9, 0.06, 'cm').marks.map(({ text }) => Number(text))).toEqual([
      0, 10, 20, 30, 40, 50, 60, 70, 80, 90,
    ]);
    const inches = rulerMarks(0.9, 0.06, 'in');
    expect(inches.step).toBeCloseTo(5 * 0.0254, 12);
    expect(inches.marks.map(({ text }) => text)).toEqual(['0', '5', '10', '15', '20', '25', '30', '35']);
  });
});
