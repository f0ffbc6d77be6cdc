/** The few SVG elements a figure may use. */
export type SceneTag =
  | 'svg'
  | 'g'
  | 'path'
  | 'rect'
  | 'circle'
  | 'ellipse'
  | 'line'
  | 'text'
  | 'tspan'
  | 'title'
  | 'desc'
  | 'defs'
  | 'pattern'
  | 'clipPath'
  | 'linearGradient'
  | 'stop';

export type AttributeValue = string | number;
export type Attributes = Readonly<Record<string, AttributeValue>>;
/** What a figure writes; `undefined` leaves the attribute out. */
export type AttributeInput = Readonly<Record<string, AttributeValue | undefined>>;

export interface SceneNode {
  readonly tag: SceneTag;
  readonly attributes: Attributes;
  readonly children: readonly SceneChild[];
}
export type SceneChild = SceneNode | string;

/** A whole figure: an `svg` element whose attributes carry width, height, viewBox, role and label. */
export interface Scene extends SceneNode {
  readonly tag: 'svg';
}

export interface Size {
  readonly width: number;
  readonly height: number;
}

/**
 * One node of a scene. Numbers are rounded to a hundredth of a pixel, so that a drawing is short and the same
 * numbers always give the same text.
 * @throws RangeError when a number is not finite
 */
export function element(
  tag: SceneTag,
  attributes: AttributeInput = {},
  ...children: readonly (SceneChild | undefined)[]
): SceneNode {
  const kept: Record<string, AttributeValue> = {};
  for (const [name, value] of Object.entries(attributes)) {
    if (value === undefined) continue;
    if (typeof value === 'number' && !Number.isFinite(value))
      throw new RangeError(`<${tag}> has no finite ${name}: ${value}`);
    kept[name] = typeof value === 'number' ? hundredth(value) : value;
  }
  return { tag, attributes: kept, children: children.filter((child) => child !== undefined) };
}

/** A group; children that are `undefined` (a part with nothing to draw) are left out. */
export function group(attributes: AttributeInput, children: readonly (SceneChild | undefined)[]): SceneNode {
  return element('g', attributes, ...children);
}

/** The outermost element of a figure, with the sentence that screen readers speak. */
export function sceneOf(size: Size, label: string, children: readonly (SceneChild | undefined)[]): Scene {
  const attributes = {
    xmlns: 'http://www.w3.org/2000/svg',
    width: size.width,
    height: size.height,
    viewBox: `0 0 ${hundredth(size.width)} ${hundredth(size.height)}`,
    role: 'img',
    'aria-label': label,
  };
  const node = element('svg', attributes, ...children);
  return { ...node, tag: 'svg' };
}

/** Every node of a scene, parents before children. */
export function* walkScene(node: SceneNode): Generator<SceneNode> {
  yield node;
  for (const child of node.children) if (typeof child !== 'string') yield* walkScene(child);
}

export function hundredth(value: number): number {
  const rounded = Math.round(value * 100) / 100;
  return rounded === 0 ? 0 : rounded;
}
