import type { Zone } from '@shoreglass/engine';
import type { GroundField, ShapePlan } from '../plan-view/plan-view-options.ts';

/** The ground of zones that are strips, on a grid; made here so that drawings are tested without the engine. */
export function stripField(
  { box, zones }: Pick<ShapePlan, 'box' | 'zones'>,
  columns = 60,
  rows = 30,
): GroundField {
  const centre = (column: number) => ((column + 0.5) / columns) * box.length;
  const zoneAt = (x: number) => zones.findIndex(({ from, to }) => x >= from && x < to);
  const groundAt = (zone: Zone | undefined, x: number) =>
    zone
      ? zone.groundStart + ((zone.groundEnd - zone.groundStart) * (x - zone.from)) / (zone.to - zone.from)
      : 0;
  return fieldFrom({ columns, rows, length: box.length, width: box.width }, (column) => {
    const zone = zoneAt(centre(column));
    return { zone, ground: groundAt(zones[zone], centre(column)) };
  });
}

/** A field by what stands in each cell. */
export function fieldFrom(
  { columns, rows, length, width }: { columns: number; rows: number; length: number; width: number },
  cellOf: (column: number, row: number) => { zone: number; ground: number },
): GroundField {
  const cells = Array.from({ length: columns * rows }, (_, index) =>
    cellOf(index % columns, Math.floor(index / columns)),
  );
  return {
    columns,
    rows,
    cellLength: length / columns,
    cellWidth: width / rows,
    ground: cells.map(({ ground }) => ground),
    zone: cells.map(({ zone }) => zone),
  };
}
