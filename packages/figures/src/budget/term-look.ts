import type { Ink, Palette } from '../palette/palette.ts';
import { element, type SceneNode } from '../scene/scene.ts';
import { REST } from './gathered.ts';

/** How a term is drawn: its letter, a wash that recalls what it is, and a pattern no other term of the budget has. */
export interface TermLook {
  readonly letter: string;
  readonly wash: Ink;
  readonly pattern: number;
}

/** The wash by what the term is called; the first word found counts. */
const WASHES: readonly (readonly [RegExp, Ink])[] = [
  [/wood/, 'wood'],
  [/litter|leaf|leaves/, 'litter'],
  [/algae/, 'algae'],
  [/plants|moss/, 'moss'],
  [/carbonate|lime|shell|moult|coral/, 'stone'],
  [/gas|air|top-off|water change/, 'waterDeep'],
  [/feed|detritus|carcass|dead|soil/, 'soil'],
  [/animal|graz|fung/, 'litter'],
  [/denitrif|exchange/, 'fanInner'],
];

/** Looks of a budget's terms, in their order. */
export function termLooks(terms: readonly { readonly term: string }[]): TermLook[] {
  return terms.map(({ term }, index) => ({
    letter: term === REST ? 'z' : String.fromCharCode(97 + (index % 25)),
    wash: WASHES.find(([words]) => words.test(term))?.[1] ?? 'fanOuter',
    pattern: term === REST ? PATTERNS.length - 1 : index % (PATTERNS.length - 1),
  }));
}

interface Pattern {
  readonly size: number;
  readonly path: string;
  readonly stroke: number;
  readonly turn?: number;
}

const upright = (size: number, stroke = 1, turn?: number): Pattern => ({
  size,
  path: `M${size / 2} 0V${size}`,
  stroke,
  ...(turn === undefined ? {} : { turn }),
});

/** Open enough to stay apart on a phone; the last is for what was put together. */
const PATTERNS: readonly Pattern[] = [
  upright(5, 1, 45),
  { size: 6, path: 'M1.5 1.5h.1M4.5 4.5h.1', stroke: 1.7 },
  upright(5, 1, 90),
  upright(6.5, 1, -45),
  { size: 7, path: 'M0 0L7 7M7 0L0 7', stroke: 0.8 },
  upright(4.5, 0.9),
  { size: 8, path: 'M0 4q2 -3 4 0t4 0', stroke: 1 },
  { size: 8, path: 'M1.6 4a2.4 2.4 0 1 0 4.8 0a2.4 2.4 0 1 0 -4.8 0', stroke: 0.9 },
  { size: 9, path: 'M0 4.5h3.5', stroke: 1 },
];

/** Pattern definitions of the looks in use; `prefix` keeps them apart from those of other figures on the page. */
export function lookPatterns(looks: readonly TermLook[], prefix: string, palette: Palette): SceneNode {
  return element('defs', {}, ...looks.map((look) => patternOf(look, prefix, palette)));
}

export function lookFill({ pattern, wash }: TermLook, prefix: string): string {
  return `url(#${lookId(prefix, pattern, wash)})`;
}

function lookId(prefix: string, pattern: number, wash: Ink): string {
  return `${prefix}-look-${pattern}-${wash}`;
}

function patternOf({ pattern, wash }: TermLook, prefix: string, palette: Palette): SceneNode {
  const { size, path, stroke, turn } = PATTERNS[pattern] ?? (PATTERNS[0] as Pattern);
  return element(
    'pattern',
    {
      id: lookId(prefix, pattern, wash),
      width: size,
      height: size,
      patternUnits: 'userSpaceOnUse',
      patternTransform: turn === undefined ? undefined : `rotate(${turn})`,
    },
    element('rect', { x: 0, y: 0, width: size, height: size, fill: palette[wash], 'fill-opacity': 0.5 }),
    element('path', {
      d: path,
      fill: 'none',
      stroke: palette.ink,
      'stroke-opacity': 0.62,
      'stroke-width': stroke,
      'stroke-linecap': pattern === 1 ? 'round' : undefined,
    }),
  );
}
