import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dayStateOf } from '../../day/day-state.ts';
import { palette } from '../../palette/palette.ts';
import type { Point } from '../../scene/path.ts';
import { ALDER_CORNER } from '../../testdata/alder-corner.ts';
import { ALDER_YEAR } from '../../testdata/alder-year.ts';
import { CROWDED_CORNER, CROWDED_YEAR } from '../../testdata/crowded-corner.ts';
import { MIRRORED_CORNER } from '../../testdata/mirrored-corner.ts';
import { anchorsOf } from '../anchors.ts';
import { sectionFrame } from '../frame.ts';
import { sectionHeight } from '../layout.ts';
import type { SectionPlan } from '../section-plan.ts';
import { subjectsOf } from '../subjects.ts';
import { arrangeLabels, type PlacedLabel } from './arrange.ts';
import { stackTops } from './stack.ts';

describe('stacking', () => {
  it('leaves items where they wish to be when they do not touch', () => {
    const items = [
      { wish: 10, height: 20 },
      { wish: 50, height: 20 },
    ];
    expect(stackTops(items, { top: 0, bottom: 100, gap: 5 })).toEqual([10, 50]);
  });

  it('parts two items of one wish evenly', () => {
    const items = [
      { wish: 50, height: 20 },
      { wish: 50, height: 20 },
    ];
    expect(stackTops(items, { top: 0, bottom: 100, gap: 0 })).toEqual([40, 60]);
  });

  it('keeps order, distance and bounds for any wishes that fit', () => {
    const item = fc.record({
      wish: fc.integer({ min: -200, max: 700 }),
      height: fc.integer({ min: 5, max: 30 }),
    });
    fc.assert(
      fc.property(fc.array(item, { minLength: 1, maxLength: 12 }), (items) => {
        const tops = stackTops(items, { top: 0, bottom: 500, gap: 4 });
        expect(tops[0]).toBeGreaterThanOrEqual(-1e-9);
        items.forEach((current, index) => {
          const end = (tops[index] ?? 0) + current.height;
          expect(end).toBeLessThanOrEqual((tops[index + 1] ?? 504) - 4 + 1e-9);
        });
      }),
    );
  });
});

const CASES: readonly [string, SectionPlan, typeof ALDER_YEAR, number][] = [
  ['the invented corner', ALDER_CORNER, ALDER_YEAR, 960],
  ['land on the left', MIRRORED_CORNER, ALDER_YEAR, 960],
  ['ten populations with long names', CROWDED_CORNER, CROWDED_YEAR, 960],
  ['ten populations in a narrow drawing', CROWDED_CORNER, CROWDED_YEAR, 620],
];

describe.each(CASES)('labels of %s', (_, plan, document, width) => {
  const size = { width, height: sectionHeight({ plan, width, labels: true }) };
  const day = dayStateOf(document, 150);
  const frame = sectionFrame({ plan, day, size, palette: palette('day'), labels: true });
  const { labels, left } = arrangeLabels(frame, anchorsOf(frame, subjectsOf(plan, day)));

  it('do not overlap and stay inside the drawing', () => {
    expect(labels.length + left).toBe(subjectsOf(plan, day).length);
    const boxes = labels.map(boxOf).sort((a, b) => a.top - b.top);
    boxes.forEach((box, index) => {
      expect(box.right).toBeLessThanOrEqual(width);
      expect(box.bottom).toBeLessThanOrEqual(size.height);
      expect(box.top).toBeGreaterThanOrEqual(0);
      const next = boxes[index + 1];
      if (next) expect(box.bottom).toBeLessThanOrEqual(next.top + 1e-6);
    });
  });

  it('have leaders that never cross one another', () => {
    const crossings = labels.flatMap((first, index) =>
      labels.slice(index + 1).filter((second) => linesCross(first.leader, second.leader)),
    );
    expect(crossings.map(({ block }) => block.subject.name)).toEqual([]);
  });

  it('have leaders that leave the water through the base and the land through the air', () => {
    for (const { leader, anchor } of labels) {
      const exit = leader[1]?.[1] ?? 0;
      if (anchor.way === 'base') expect(exit).toBeGreaterThan(frame.layout.inside.bottom);
      else expect(exit).toBeLessThanOrEqual(frame.y(frame.ground.highest(anchor.x, plan.box.length)));
    }
  });

  it('name every population', () => {
    const named = labels.map(({ block }) => block.subject.key);
    for (const { id } of plan.populations) expect(named).toContain(`population:${id}`);
  });
});

function boxOf({ left, top, block }: PlacedLabel): { top: number; bottom: number; right: number } {
  return { top, bottom: top + block.height, right: left + block.width };
}

/** Whether two lines of upright and level stretches meet anywhere. */
function linesCross(first: readonly Point[], second: readonly Point[]): boolean {
  return stretchesOf(first).some((a) =>
    stretchesOf(second).some((b) => overlap(a, b, 0) && overlap(a, b, 1)),
  );
}

type Stretch = readonly [from: Point, to: Point];

function stretchesOf(points: readonly Point[]): Stretch[] {
  return points.slice(1).map((point, index) => [points[index] ?? point, point]);
}

function overlap(a: Stretch, b: Stretch, axis: 0 | 1): boolean {
  const [aLow, aHigh] = [Math.min(a[0][axis], a[1][axis]), Math.max(a[0][axis], a[1][axis])];
  const [bLow, bHigh] = [Math.min(b[0][axis], b[1][axis]), Math.max(b[0][axis], b[1][axis])];
  return aLow <= bHigh && bLow <= aHigh;
}
