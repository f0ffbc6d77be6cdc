import type { AheadDocument, SeriesId } from '@shoreglass/engine';
import type { Palette } from '../palette/palette.ts';

/** A value from the journal, drawn as an open circle; an instrument's interval as a thin upright line. */
export interface RibbonReading {
  readonly series: SeriesId;
  readonly day: number;
  readonly value: number;
  readonly low?: number;
  readonly high?: number;
}

export interface RibbonOptions {
  readonly document: AheadDocument;
  /** The chosen day, and today where it falls within the run; days of the run. */
  readonly day: number;
  readonly today?: number;
  readonly strips: readonly SeriesId[];
  readonly width: number;
  /** Height of one strip [px]. */
  readonly rowHeight: number;
  readonly palette: Palette;
  readonly readings?: readonly RibbonReading[];
}
