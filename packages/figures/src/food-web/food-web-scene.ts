import { lookFill, lookPatterns } from '../budget/term-look.ts';
import type { Palette } from '../palette/palette.ts';
import { roundStep } from '../scale/ticks.ts';
import { element, group, type Scene, type SceneNode, sceneOf } from '../scene/scene.ts';
import { textAt } from '../type/text.ts';
import { fitText, wrapText } from '../type/text-width.ts';
import { type FlowUnit, flowAmountText } from './flow-amount.ts';
import { foodLook } from './food-look.ts';
import {
  BAR,
  type FoodWebInput,
  type FoodWebLayout,
  foodWebLayout,
  type WebBand,
  type WebNode,
  type WebPrey,
} from './food-web-layout.ts';

export interface FoodWebOptions extends FoodWebInput {
  readonly unit: FlowUnit;
  /** "in the week from 14 May", "a week, mean of 300 days". */
  readonly when: string;
  readonly palette: Palette;
}

/** Narrowest drawing in which names and bands find room [px]; below it a list reads better. */
export const NARROWEST_FOOD_WEB = 320;

const PREFIX = 'food-web';

/** Who eats what: foods at the left, eaters at the right, bands as wide as the amount in a week. */
export function foodWebScene(options: FoodWebOptions): Scene {
  const { width, palette } = options;
  const layout = foodWebLayout(options);
  const looks = [...layout.foods.map(({ id }) => id), 'prey'].map(foodLook);
  return sceneOf({ width, height: layout.height }, sentence(options, layout), [
    lookPatterns(looks, PREFIX, palette),
    group(
      { 'data-part': 'bands' },
      [...layout.bands].sort((a, b) => b.amount - a.amount).map((each) => band(each, layout, palette)),
    ),
    group(
      { 'data-part': 'prey' },
      layout.prey.map((_, at) => preyArc(at, layout, options)),
    ),
    group(
      { 'data-part': 'foods' },
      layout.foods.map((node) => food(node, layout, options)),
    ),
    group(
      { 'data-part': 'eaters' },
      layout.eaters.map((node) => eater(node, layout, options)),
    ),
    group(
      { 'data-part': 'amounts' },
      layout.bands.map((each) => amountOn(each, layout, options)),
    ),
    scaleMark(layout, options),
  ]);
}

function band(
  { food: id, thickness, from, to }: WebBand,
  layout: FoodWebLayout,
  palette: Palette,
): SceneNode {
  const [x0, x1] = [layout.left, layout.right];
  const middle = (x0 + x1) / 2;
  const at = (x: number, y: number) => `${x.toFixed(1)} ${y.toFixed(1)}`;
  return element('path', {
    d: [
      `M${at(x0, from)}C${at(middle, from)} ${at(middle, to)} ${at(x1, to)}`,
      `V${(to + thickness).toFixed(1)}`,
      `C${at(middle, to + thickness)} ${at(middle, from + thickness)} ${at(x0, from + thickness)}Z`,
    ].join(''),
    fill: lookFill(foodLook(id), PREFIX),
    stroke: palette.ink,
    'stroke-width': 0.7,
    'stroke-opacity': 0.75,
  });
}

const LEAST_FOR_AMOUNT = 13;

/** Written on the band itself, near the eater, where it is wide enough. */
function amountOn(
  { amount, thickness, from, to }: WebBand,
  { left, right }: FoodWebLayout,
  { unit, palette }: FoodWebOptions,
): SceneNode | undefined {
  if (thickness < LEAST_FOR_AMOUNT) return undefined;
  const part = 0.86;
  const x = left + (right - left) * along(part, 0.5);
  const y = from + (to - from) * along(part, 0) + thickness / 2;
  return textAt(x, y + 4, flowAmountText(amount, unit), {
    size: 12,
    fill: palette.ink,
    anchor: 'middle',
    halo: palette.paper,
    haloWidth: 4,
  });
}

/** Cubic with ends 0 and 1; both handles at `handle` (0.5), or one at either end (0). */
function along(t: number, handle: number): number {
  const [first, second] = handle === 0.5 ? [0.5, 0.5] : [0, 1];
  const rest = 1 - t;
  return 3 * rest * rest * t * first + 3 * rest * t * t * second + t * t * t;
}

function bar(x: number, { top, height }: WebNode, fill: string, palette: Palette): SceneNode {
  return element('rect', {
    x,
    y: height > 0 ? top : top - 1,
    width: BAR,
    height: Math.max(2, height),
    fill,
    stroke: palette.ink,
    'stroke-width': 1.1,
  });
}

function food(node: WebNode, { left, narrow }: FoodWebLayout, { unit, palette }: FoodWebOptions): SceneNode {
  const x = left - BAR;
  return group({ 'data-food': node.id }, [
    bar(x, node, lookFill(foodLook(node.id), PREFIX), palette),
    named(
      node,
      {
        x: x - (narrow ? 5 : 9),
        room: x - (narrow ? 5 : 10),
        anchor: 'end',
        note: flowAmountText(node.amount, unit),
        narrow,
      },
      palette,
    ),
  ]);
}

function eater(node: WebNode, { right, names, narrow }: FoodWebLayout, options: FoodWebOptions): SceneNode {
  const { unit, palette, width } = options;
  const note = node.amount > 0 ? `eat ${flowAmountText(node.amount, unit)}` : 'eat nothing then';
  const far = names - right > 30;
  return group({ 'data-eater': node.id }, [
    far
      ? element('path', {
          d: `M${right + BAR + 3} ${node.middle.toFixed(1)}H${names - 5}`,
          stroke: palette.softInk,
          'stroke-width': 0.8,
          'stroke-dasharray': '1.5 3',
        })
      : undefined,
    bar(right, node, palette.ink, palette),
    named(node, { x: names, room: width - names, anchor: 'start', note, narrow }, palette),
  ]);
}

interface Naming {
  readonly x: number;
  readonly room: number;
  readonly anchor: 'start' | 'end';
  readonly note: string;
  readonly narrow: boolean;
}

function named(
  { name, middle }: WebNode,
  { x, room, anchor, note, narrow }: Naming,
  palette: Palette,
): SceneNode {
  const [size, step] = narrow ? [12.5, 14] : [14, 16];
  const lines = wrapText(name, { width: room, size, face: 'strong', lines: narrow ? 3 : 2 });
  const top = middle - (lines.length * step + step - 1) / 2 + step - 4;
  return group({}, [
    ...lines.map((line, at) =>
      textAt(x, top + at * step, line, {
        size,
        face: 'strong',
        fill: palette.ink,
        anchor,
        halo: palette.paper,
      }),
    ),
    textAt(x, top + lines.length * step, fitText(note, room, size - 1), {
      size: size - 1,
      fill: palette.softInk,
      anchor,
      halo: palette.paper,
    }),
  ]);
}

const FEW_ARCS = 3;
/** Between the ends of arcs that meet at one bar [px]. */
const APART = 8;

/** Eaten by another animal: an arc beside the bars from the prey to the eater, with a barb where it ends. */
function preyArc(
  at: number,
  { eaters, right, prey, narrow, perMilligram }: FoodWebLayout,
  options: FoodWebOptions,
): SceneNode {
  const { palette, unit } = options;
  const flow = prey[at] as WebPrey;
  const middleOf = (id: string) => eaters.find((each) => each.id === id)?.middle ?? 0;
  const own = flow.prey === flow.eater;
  // Arcs that end at the same eater arrive one below the other.
  const before = prey
    .slice(0, at)
    .filter(({ eater, prey: other }) => eater === flow.eater && other !== eater);
  const start = middleOf(flow.prey) + (own ? -4 : 6);
  const end = own ? start - 2 * APART : middleOf(flow.eater) + APART * before.length;
  const x = right + BAR + 1;
  const reach = narrow ? 24 : own ? 26 : Math.min(70, 28 + Math.abs(end - start) * 0.16);
  // Of many arcs only the weighty ones are labelled, or the labels would hide each other.
  const told = !narrow && (prey.length <= FEW_ARCS || flow.amount * perMilligram >= 1);
  const handles = `${x + reach} ${start.toFixed(1)} ${x + reach} ${end.toFixed(1)}`;
  const d = `M${x} ${start.toFixed(1)}C${handles} ${x + 5} ${end.toFixed(1)}`;
  const label = start + (end - start) * (own ? 0.5 : 0.35) + 4;
  return group({ 'data-prey': flow.prey }, [
    element('path', {
      d,
      fill: 'none',
      stroke: lookFill(foodLook('prey'), PREFIX),
      'stroke-width': Math.max(3, flow.thickness),
    }),
    element('path', { d, fill: 'none', stroke: palette.ink, 'stroke-width': 1 }),
    element('path', { d: `M${x} ${end.toFixed(1)}l7 -4v8z`, fill: palette.ink }),
    told
      ? textAt(x + reach * 0.75 + 4, label, flowAmountText(flow.amount, unit), {
          size: 12,
          fill: palette.ink,
          halo: palette.paper,
          haloWidth: 4,
        })
      : undefined,
  ]);
}

const WANTED_MARK = 16;

/** How wide a round amount is. */
function scaleMark({ perMilligram, left, height }: FoodWebLayout, options: FoodWebOptions): SceneNode {
  const { unit, palette } = options;
  const amount = roundStep(WANTED_MARK / perMilligram);
  const wide = amount * perMilligram;
  const y = height - 6;
  return group({ 'data-part': 'scale' }, [
    element('path', {
      d: `M${left} ${(y - wide).toFixed(1)}h8m-4 0v${wide.toFixed(1)}m-4 0h8`,
      stroke: palette.softInk,
      'stroke-width': 1,
      fill: 'none',
    }),
    textAt(left + 14, y - wide / 2 + 4, `${flowAmountText(amount, unit)} a week`, {
      size: 12,
      fill: palette.softInk,
    }),
  ]);
}

function sentence({ when, unit }: FoodWebOptions, { eaters, foods, bands, prey }: FoodWebLayout): string {
  const nameOf = (id: string) => foods.find((each) => each.id === id)?.name ?? id;
  const parts = eaters.map(({ id, name, amount }) => {
    if (amount <= 0) return `${name} eat nothing`;
    const largest = bands.filter((each) => each.eater === id).sort((a, b) => b.amount - a.amount)[0];
    const most = largest ? `, most of it ${nameOf(largest.food)}` : '';
    return `${name} eat ${flowAmountText(amount, unit)}${most}`;
  });
  const hunted =
    prey.length > 0
      ? ` ${prey.length === 1 ? 'One' : prey.length} of the flows is animals eaten by animals.`
      : '';
  return `Who eats what, ${when}: ${parts.join('; ')}.${hunted}`;
}
