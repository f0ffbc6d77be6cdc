import { type AttributeInput, element, type SceneNode } from '../scene/scene.ts';
import type { Face } from './metrics.ts';

const SANS = "'Atkinson Hyperlegible Next Variable', 'Atkinson Hyperlegible Next', system-ui, sans-serif";
const SERIF = "'Literata Variable', Literata, Georgia, serif";

export interface TextStyle {
  readonly size: number;
  readonly fill: string;
  readonly face?: Face;
  readonly anchor?: 'start' | 'middle' | 'end';
  /** Paper-coloured outline that keeps text readable over a drawing. */
  readonly halo?: string;
  readonly haloWidth?: number;
}

/** One line of text with its baseline at (x, y). */
export function textAt(x: number, y: number, content: string, style: TextStyle): SceneNode {
  return element('text', { x, y, ...textAttributes(style) }, content);
}

/** One line of text in several voices, one after the other. */
export function textRun(
  at: { readonly x: number; readonly y: number },
  parts: readonly { readonly content: string; readonly style: TextStyle }[],
): SceneNode {
  const [first] = parts;
  const anchor = first?.style.anchor;
  const spans = parts.map(({ content, style }) => element('tspan', textAttributes(style), content));
  return element('text', { x: at.x, y: at.y, 'text-anchor': anchor }, ...spans);
}

function textAttributes({
  size,
  fill,
  face = 'text',
  anchor,
  halo,
  haloWidth = 3,
}: TextStyle): AttributeInput {
  const serif = face === 'serif' || face === 'italic';
  return {
    'font-family': serif ? SERIF : SANS,
    'font-size': size,
    'font-weight': face === 'strong' ? 600 : undefined,
    'font-style': face === 'italic' ? 'italic' : undefined,
    'font-variant': 'tabular-nums',
    'text-anchor': anchor === 'start' ? undefined : anchor,
    fill,
    ...(halo === undefined
      ? {}
      : { stroke: halo, 'stroke-width': haloWidth, 'stroke-linejoin': 'round', 'paint-order': 'stroke' }),
  };
}
