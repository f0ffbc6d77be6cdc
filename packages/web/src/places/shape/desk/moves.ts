import type { LengthUnit } from '@shoreglass/figures';
import type { SoundShape } from '../../../worker/shape-orders.ts';
import { allHandles } from '../handles/all-handles.ts';
import {
  type Axis,
  type Choice,
  type Handle,
  handleNamed,
  type Measure,
  type Saying,
  type Write,
  within,
} from '../handles/handle.ts';
import { valueWritten } from './lengths.ts';
import type { Command } from './shape-desk-store.ts';

export const writeIn =
  (unit: LengthUnit): Write =>
  (value, dimension = 'length') =>
    valueWritten(value, dimension, unit);

export function handlesOf({ content, plan, materials }: SoundShape): Handle[] {
  return allHandles(content, plan.zones, materials);
}

/** Positions along some of the axes [m]. */
export type Place = Readonly<Partial<Record<Axis, number>>>;

/** Takes a handle to a place; what it cannot follow is left. */
export function moveTo(handle: Handle, place: Place, unit: LengthUnit): Command {
  return {
    words: handle.name,
    about: handle.id,
    edits: () =>
      handle.measures.flatMap((measure) => {
        const position = measure.drag && place[measure.drag.axis];
        if (measure.drag === undefined || position === undefined) return [];
        return measure.edits(within(measure, measure.drag.valueAt(position)), writeIn(unit));
      }),
  };
}

interface Nudge {
  readonly id: string;
  readonly words: string;
  readonly axis: Axis;
  /** [m] */
  readonly by: number;
}

/** Moves whatever the handle has become by a step along an axis; steps that follow one another are undone together. */
export function moveBy({ id, words, axis, by }: Nudge, unit: LengthUnit): Command {
  return {
    words,
    about: id,
    merge: `step ${id} ${axis}`,
    edits: (shape) => {
      const handle = handleNamed(handlesOf(shape), id);
      const measure = handle?.measures.find(({ drag }) => drag?.axis === axis);
      if (!measure?.drag) return [];
      return measure.edits(within(measure, measure.drag.valueAt(measure.drag.position + by)), writeIn(unit));
    },
  };
}

/** Gives one measure of a handle a value, in the plan's unit. */
export function setMeasure(
  handle: Handle,
  measure: Measure,
  value: number,
  { unit, merge }: { readonly unit: LengthUnit; readonly merge?: string },
): Command {
  return {
    words: `${handle.name}, ${measure.name.toLowerCase()}`,
    about: handle.id,
    ...(merge === undefined ? {} : { merge }),
    edits: (shape) => {
      const now = handleNamed(handlesOf(shape), handle.id)?.measures.find(({ id }) => id === measure.id);
      return now ? now.edits(value, writeIn(unit)) : [];
    },
  };
}

/** Another material, or another word, for a part. */
export function choose(handle: Handle, { name, path }: Choice, value: string): Command {
  return {
    words: `${handle.name}, ${name.toLowerCase()}`,
    about: handle.id,
    edits: () => [{ path, value }],
  };
}

/** Other words for a part: a name, a time of day. */
export function say(handle: Handle, { name, path, written }: Saying, typed: string): Command {
  return {
    words: `${handle.name}, ${name.toLowerCase()}`,
    about: handle.id,
    edits: () => [{ path, value: written(typed) }],
  };
}

/** A step of one measure up or down, within its limits. */
export function stepMeasure(handle: Handle, measure: Measure, by: number, unit: LengthUnit): Command {
  return {
    words: `${handle.name}, ${measure.name.toLowerCase()}`,
    about: handle.id,
    merge: `step ${handle.id} ${measure.id}`,
    edits: (shape) => {
      const now = handleNamed(handlesOf(shape), handle.id)?.measures.find(({ id }) => id === measure.id);
      return now ? now.edits(within(now, now.value + by), writeIn(unit)) : [];
    },
  };
}
