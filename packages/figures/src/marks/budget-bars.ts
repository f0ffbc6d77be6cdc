import type { Palette } from '../palette/palette.ts';
import { element, group, type Scene, type SceneNode, sceneOf } from '../scene/scene.ts';
import { numberText } from '../type/number-text.ts';
import { textAt } from '../type/text.ts';
import { fitText, textWidth } from '../type/text-width.ts';

export interface BudgetTerm {
  readonly term: string;
  /** Part of the whole [0..1]. */
  readonly share: number;
}

export interface BudgetBarsOptions {
  readonly terms: readonly BudgetTerm[];
  readonly width: number;
  readonly palette: Palette;
  /** Tells several bars on one page apart. */
  readonly id: string;
}

const ROW = 36;
const BAR = 8;
const FIGURES = 46;

/** Who adds or removes, as thin bars on one scale; hatching thins out with the rank, so that rank shows without colour. */
export function budgetBarsScene({ terms, width, palette, id }: BudgetBarsOptions): Scene {
  const prefix = id.replaceAll(/[^A-Za-z0-9_-]/g, '_');
  const room = Math.max(20, width - FIGURES);
  const label = terms.map(({ term, share }) => `${term} ${percent(share)}`).join(', ');
  return sceneOf(
    { width, height: Math.max(1, terms.length * ROW) },
    label === '' ? 'No terms.' : `${label}.`,
    [
      element(
        'defs',
        {},
        ...HATCHES.map((spacing, index) => hatch(palette, `${prefix}-hatch-${index}`, spacing)),
      ),
      ...terms.map((term, index) => bar({ term, index, room, palette, prefix })),
    ],
  );
}

/** Distance of the hatch lines by rank [px]. */
const HATCHES = [2.6, 4, 6, 9];

function hatch(palette: Palette, id: string, spacing: number): SceneNode {
  return element(
    'pattern',
    { id, width: spacing, height: spacing, patternUnits: 'userSpaceOnUse', patternTransform: 'rotate(45)' },
    element('path', { d: `M0 0V${spacing}`, stroke: palette.ink, 'stroke-width': 1.5 }),
  );
}

interface Bar {
  readonly term: BudgetTerm;
  readonly index: number;
  readonly room: number;
  readonly palette: Palette;
  readonly prefix: string;
}

function bar({ term, index, room, palette, prefix }: Bar): SceneNode {
  const top = index * ROW;
  const share = Math.min(1, Math.max(0, term.share));
  const box = { x: 0.5, y: top + 20.5, height: BAR };
  const fill = `url(#${prefix}-hatch-${Math.min(index, HATCHES.length - 1)})`;
  const figure = percent(term.share);
  return group({ 'data-term': term.term }, [
    textAt(0, top + 14, fitText(term.term, room, 13.5), { size: 13.5, fill: palette.ink }),
    element('path', { d: `M0 ${box.y + BAR + 0.5}H${room}`, stroke: palette.rule, 'stroke-width': 0.8 }),
    element('rect', {
      ...box,
      width: Math.max(1, room * share),
      fill,
      stroke: palette.ink,
      'stroke-width': 0.9,
    }),
    textAt(room + FIGURES, box.y + BAR, figure, {
      size: 13.5,
      face: 'strong',
      fill: palette.ink,
      anchor: 'end',
    }),
    term.share > 1 && textWidth(figure, 13.5, 'strong') < FIGURES
      ? element('path', { d: `M${room + 2} ${box.y}v${BAR}`, stroke: palette.ink, 'stroke-width': 1.5 })
      : undefined,
  ]);
}

function percent(share: number): string {
  return `${numberText(share * 100)}\u00a0%`;
}
