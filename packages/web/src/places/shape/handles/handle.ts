import type { EnclosureContent, EnclosureEdit, KeyPath } from '@shoreglass/contract';
import type { Dimension } from '../desk/lengths.ts';

/** What can be shaped, group by group. */
export type HandleGroup = 'water' | 'ground' | 'layers' | 'pieces' | 'openings' | 'devices' | 'glass';

export type Axis = 'x' | 'y' | 'z';

/** One number of the shape that can be changed. */
export interface Measure {
  readonly id: string;
  readonly name: string;
  readonly dimension: Dimension;
  /** In the plan's unit (m, share of one, kg). */
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** Where findings about it stand in the file. */
  readonly path: KeyPath;
  /** Along what it is dragged, and where it stands there [m]; absent when it is only typed. */
  readonly drag?: Drag;
  /** What the file becomes; `write` gives a value as the file has it. */
  edits(value: number, write: Write): readonly EnclosureEdit[];
}

export interface Drag {
  readonly axis: Axis;
  readonly position: number;
  /** The value that belongs to a position [m]. */
  valueAt(position: number): number;
}

export type Write = (value: number, dimension?: Dimension) => string;

/** A word or material that can be chosen for a part. */
export interface Choice {
  readonly id: string;
  readonly name: string;
  readonly value: string;
  readonly options: readonly { readonly value: string; readonly name: string }[];
  readonly path: KeyPath;
}

/** Something of a part that is written and is no measure: a name, a time of day, a degree of protection. */
export interface Saying {
  readonly id: string;
  readonly name: string;
  /** As it stands in the field. */
  readonly value: string;
  /** How it is written: "09:30, 20:30". */
  readonly hint: string;
  readonly path: KeyPath;
  /** What the file gets for what was typed. */
  written(typed: string): string | readonly string[];
}

/** A key that can be added to a part, or left out of it. */
export interface Option {
  readonly name: string;
  readonly edit: EnclosureEdit;
}

/** A material of the library: its name, and whether it is wood, stone, a layer … */
export interface MaterialName {
  readonly id: string;
  readonly name: string;
  readonly use: string;
}

/** A choice between the materials of a use; the one the file names is among them in any case. */
export function materialChoice(
  value: string,
  path: KeyPath,
  materials: readonly MaterialName[],
  use: string,
): Choice {
  const options = materials
    .filter((each) => each.use === use || each.id === value)
    .map(({ id, name }) => ({ value: id, name }));
  return { id: 'material', name: 'Material', value, options, path };
}

/** Something that is taken hold of in the drawings. */
export interface Handle {
  readonly id: string;
  /** Names it had, or will have, when it falls together with another. */
  readonly aliases?: readonly string[];
  readonly group: HandleGroup;
  readonly name: string;
  readonly measures: readonly Measure[];
  readonly choices?: readonly Choice[];
  readonly sayings?: readonly Saying[];
  /** What it can be given besides, and what of it can be left out. */
  readonly more?: readonly Option[];
  readonly less?: readonly Option[];
  /** Where its mark stands in the section, and in the plan [m]; absent where it has none. */
  readonly inSection?: { readonly x: number; readonly z: number };
  readonly inPlan?: { readonly x: number; readonly y: number };
}

/** What the file says of everything that is shaped. */
export type ShapeContent = Pick<
  EnclosureContent,
  'glass' | 'cover' | 'zones' | 'water' | 'hardscape' | 'devices'
>;

interface LengthMeasure {
  readonly id: string;
  readonly name: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly path: KeyPath;
  readonly axis?: Axis;
  /** Further keys that take the same value. */
  readonly also?: readonly KeyPath[];
}

/** A length that stands under one key of the file, or under several that move together. */
export function lengthMeasure({ axis, also = [], ...measure }: LengthMeasure): Measure {
  return {
    ...measure,
    dimension: 'length',
    ...(axis ? { drag: { axis, position: measure.value, valueAt: (position: number) => position } } : {}),
    edits: (value, write) => [measure.path, ...also].map((path) => ({ path, value: write(value) })),
  };
}

/** A value held between the limits of its measure. */
export function within({ low, high }: Pick<Measure, 'low' | 'high'>, value: number): number {
  return Math.min(high, Math.max(low, value));
}

/** The handle of that name, or the one it has become. */
export function handleNamed(handles: readonly Handle[], id: string | undefined): Handle | undefined {
  if (id === undefined) return undefined;
  return handles.find((handle) => handle.id === id) ?? handles.find(({ aliases }) => aliases?.includes(id));
}
