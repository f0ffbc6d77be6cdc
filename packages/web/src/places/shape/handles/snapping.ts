import type { Axis, Handle } from './handle.ts';

/** A place that what is dragged may fall on, and what stands there. */
export interface Neighbour {
  readonly at: number;
  readonly name: string;
}

export interface Snapping {
  /** Distance of the grid [m]. */
  readonly step: number;
  /** Places of others along the same axis [m]. */
  readonly neighbours: readonly Neighbour[];
  /** How near a neighbour has to be [m]. */
  readonly reach: number;
  /** Finest step, kept even when nothing attracts [m]. */
  readonly fine: number;
  readonly free: boolean;
}

export interface Snapped {
  readonly at: number;
  /** The neighbour it fell on. */
  readonly on?: Neighbour;
}

/** Where a dragged position comes to rest: on a near neighbour, else on the grid; anywhere when free. */
export function snapped(position: number, { step, neighbours, reach, fine, free }: Snapping): Snapped {
  if (free) return { at: onGrid(position, fine) };
  const near = neighbours
    .filter(({ at }) => Math.abs(at - position) <= reach)
    .sort((a, b) => Math.abs(a.at - position) - Math.abs(b.at - position))[0];
  return near ? { at: near.at, on: near } : { at: onGrid(position, step) };
}

function onGrid(position: number, step: number): number {
  return Math.round(position / step) * step;
}

/** What a handle may fall on along an axis: the others that move that way, and the panes with their middle. */
export function neighboursOf(handles: readonly Handle[], own: Handle, axis: Axis, room: number): Neighbour[] {
  const others = handles
    .filter(({ id }) => id !== own.id)
    .flatMap(({ name, measures }) =>
      measures.flatMap(({ drag }) => (drag?.axis === axis ? [{ at: drag.position, name }] : [])),
    );
  const panes =
    axis === 'z'
      ? []
      : [
          { at: 0, name: 'pane' },
          { at: room / 2, name: 'middle' },
          { at: room, name: 'pane' },
        ];
  return [...others, ...panes];
}
