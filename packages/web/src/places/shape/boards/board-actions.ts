import type { LengthUnit } from '@shoreglass/figures';
import type { Place } from '../desk/moves.ts';
import type { Axis, Handle } from '../handles/handle.ts';

/** What both drawings share: what is shown and held, and what becomes of it. */
export interface BoardActions {
  readonly handles: readonly Handle[];
  /** Those whose marks are drawn. */
  readonly shown: readonly Handle[];
  readonly selected: Handle | undefined;
  readonly concerned: ReadonlySet<string>;
  readonly unit: LengthUnit;
  readonly snap: boolean;
  readonly onSelect: (handle: Handle) => void;
  readonly onDrag: (handle: Handle, place: Place) => void;
  /** Nowhere: it goes back to where it was. */
  readonly onDrop: (handle: Handle, place: Place | undefined) => void;
  readonly onStep: (handle: Handle, axis: Axis, by: number) => void;
  readonly onType: (handle: Handle) => void;
}
