import { expect, it } from 'vitest';
import { polyline, smoothLine } from './path.ts';
import { element, sceneOf } from './scene.ts';
import { sceneToSvg } from './scene-to-svg.ts';

it('escapes text and attributes and drops characters XML does not allow', () => {
  const scene = sceneOf({ width: 10, height: 5 }, 'a "b" & <c>', [
    element('text', {}, 'x < y & z\u0000\u0007'),
  ]);
  expect(sceneToSvg(scene)).toBe(
    '<svg xmlns="http://www.w3.org/2000/svg" width="10" height="5" viewBox="0 0 10 5" role="img" aria-label="a &quot;b&quot; &amp; &lt;c&gt;"><text>x &lt; y &amp; z</text></svg>',
  );
});

it('refuses numbers that cannot be drawn', () => {
  expect(() => element('rect', { x: Number.NaN })).toThrow(RangeError);
  expect(() => polyline([[0, Number.POSITIVE_INFINITY]])).toThrow(RangeError);
});

it('leaves undefined attributes and children out', () => {
  expect(element('g', { fill: undefined, stroke: 'none' }, undefined, 'a')).toEqual({
    tag: 'g',
    attributes: { stroke: 'none' },
    children: ['a'],
  });
});

it('writes straight and smooth paths; a smooth line through a straight row stays straight', () => {
  expect(
    polyline(
      [
        [0, 0],
        [1, 2],
      ],
      true,
    ),
  ).toBe('M0 0L1 2Z');
  expect(
    smoothLine([
      [0, 0],
      [6, 0],
      [12, 0],
    ]),
  ).toBe('M0 0C1 0 4 0 6 0C8 0 11 0 12 0');
});
