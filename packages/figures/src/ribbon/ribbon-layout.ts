import type { AheadDocument, SeriesId, TurningPoint } from '@shoreglass/engine';
import { isNarrow, type RibbonScale, ribbonScale } from './ribbon-scale.ts';

export interface RibbonLayout {
  readonly scale: RibbonScale;
  readonly narrow: boolean;
  readonly rows: readonly RibbonRow[];
  /** Turning points by lane, so that marks of one lane keep apart. */
  readonly lanes: readonly (readonly TurningPoint[])[];
  readonly lanesTop: number;
  readonly axisTop: number;
  readonly height: number;
}

export interface RibbonRow {
  readonly id: SeriesId;
  /** Of the whole row, label included. */
  readonly top: number;
  /** Of the strip in which the curve runs. */
  readonly stripTop: number;
  readonly stripBottom: number;
}

export const LANE_HEIGHT = 13;
const HEAD = 36;
const ROW_GAP = 10;
const LABEL_LINE = 20;
const AXIS = 46;
const MARK_SPACING = 12;

export interface RibbonRequest {
  readonly document: AheadDocument;
  readonly strips: readonly SeriesId[];
  readonly width: number;
  readonly rowHeight: number;
}

export function ribbonLayout({ document, strips, width, rowHeight }: RibbonRequest): RibbonLayout {
  const narrow = isNarrow(width);
  const scale = ribbonScale({ days: document.run.days, width });
  const shown = strips.filter((id) => document.series[id] !== undefined);
  const rows = shown.map((id, index) => {
    const top = HEAD + index * (rowHeight + ROW_GAP);
    return { id, top, stripTop: narrow ? top + LABEL_LINE : top, stripBottom: top + rowHeight };
  });
  const lanes = lanesOf(document.turningPoints, scale);
  const lanesTop = HEAD + shown.length * (rowHeight + ROW_GAP);
  const axisTop = lanesTop + lanes.length * LANE_HEIGHT + (lanes.length > 0 ? 6 : 0);
  return { scale, narrow, rows, lanes, lanesTop, axisTop, height: axisTop + AXIS };
}

/** The height a ribbon needs at a width. */
export function ribbonHeight(request: RibbonRequest): number {
  return ribbonLayout(request).height;
}

function lanesOf(points: readonly TurningPoint[], scale: RibbonScale): TurningPoint[][] {
  const lanes: { points: TurningPoint[]; end: number }[] = [];
  for (const point of [...points].sort((a, b) => a.window.early - b.window.early)) {
    const start = scale.toX(point.window.early);
    const end = scale.toX(point.window.late);
    const lane = lanes.find((candidate) => candidate.end + MARK_SPACING <= start);
    if (lane) {
      lane.points.push(point);
      lane.end = end;
    } else lanes.push({ points: [point], end });
  }
  return lanes.map((lane) => lane.points);
}
