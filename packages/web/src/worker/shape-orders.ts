import { type EnclosureEdit, editEnclosureAll, type Finding } from '@shoreglass/contract';
import {
  type ClimateYear,
  type CoverAnswer,
  type CoverGoal,
  climateYear,
  coverFor,
  type Plan,
  type ShapeSheet,
  shapeSheet,
} from '@shoreglass/engine';
import { library } from '@shoreglass/library';
import type { MaterialName, ShapeContent } from '../places/shape/handles/handle.ts';
import { openText } from './open-text.ts';

/** What the Shape place asks of an engine worker. */
export type ShapeOrder =
  | {
      readonly do: 'shape';
      readonly text: string;
      readonly fileName: string;
      readonly edits: readonly EnclosureEdit[];
    }
  | { readonly do: 'climate'; readonly plan: Plan }
  | { readonly do: 'cover'; readonly plan: Plan; readonly goal: CoverGoal };

/** A text after its edits: what it says, and everything its shape tells where nothing stands in the way. */
export interface ShapeReading {
  readonly text: string;
  readonly findings: readonly Finding[];
  readonly sound?: SoundShape;
}

export interface SoundShape {
  readonly name: string;
  readonly content: ShapeContent;
  readonly plan: Plan;
  readonly sheet: ShapeSheet;
  /** Materials of the library, to choose from. */
  readonly materials: readonly MaterialName[];
}

export interface ShapeResults {
  readonly shape: ShapeReading;
  readonly climate: ClimateYear;
  readonly cover: CoverAnswer;
}

const MATERIALS: readonly MaterialName[] = Object.values(library.data.materials)
  .map(({ id, name, use }) => ({ id, name, use }))
  .sort((a, b) => a.name.localeCompare(b.name, 'en'));

export function carryOutShape(order: ShapeOrder): ShapeResults[keyof ShapeResults] {
  switch (order.do) {
    case 'shape':
      return readShape(editEnclosureAll(order.text, order.edits), order.fileName);
    case 'climate':
      return climateYear(order.plan);
    case 'cover':
      return coverFor(order.plan, order.goal);
  }
}

function readShape(text: string, fileName: string): ShapeReading {
  const { document, plan, findings } = openText(text, fileName);
  if (!document || !plan) return { text, findings };
  const { name, glass, cover, zones, water, hardscape, devices } = document.content;
  const content = { glass, cover, zones, water, hardscape, devices };
  return { text, findings, sound: { name, content, plan, sheet: shapeSheet(plan), materials: MATERIALS } };
}
