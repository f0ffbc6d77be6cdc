import { expect, test } from 'vitest';
import { palette } from '../palette/palette.ts';
import { walkScene } from '../scene/scene.ts';
import { stageScene } from './stage-course.ts';

// Invented: springtails by the thousand, so that the figures of the axis are long.
const scene = stageScene({
  stages: [
    { name: 'adults', values: [30, 4000, 9000] },
    { name: 'young', values: [0, 60_000, 20_000] },
    { name: 'eggs and brooded young', values: [0, 30_000, 0] },
  ],
  startDate: '2026-03-01',
  day: 1,
  width: 360,
  height: 270,
  palette: palette('day'),
  id: 'springtails',
});

test('says the numbers of the last day by stage', () => {
  expect(scene.attributes['aria-label']).toBe(
    'By stage until 3 Mar, medians of the runs: 9000 adults, 20\u00a0000 young, 0 eggs and brooded young at the end.',
  );
});

test('figures of the axis have room at the left', () => {
  const figures = [...walkScene(scene)].filter(
    ({ tag, attributes }) => tag === 'text' && attributes['text-anchor'] === 'end',
  );
  expect(figures.length).toBeGreaterThan(1);
  // About 7 px a digit at this size.
  for (const { attributes, children } of figures)
    expect(Number(attributes.x)).toBeGreaterThan(5.5 * String(children[0]).length);
});
