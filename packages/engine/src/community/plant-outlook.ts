import { LAND_PLANT_CAUSES } from '../cycle/land-stand.ts';
import type { AheadDocument, QuantileSeries } from '../outlook/document.ts';
import type { PreparedOutlook } from '../outlook/prepare.ts';
import { type BookShape, PLANTING_ENTRIES } from '../run/block-book.ts';
import { feedsFromWater } from '../run/plant-cover.ts';
import type { RunRecord } from '../run/run.ts';
import type { SeriesId } from '../run/series.ts';

/** One planting over the outlook. */
export interface PlantOutlook {
  readonly id: string;
  readonly name: string;
  readonly zone: string;
  /** Cover of its ground [%]; plants that feed from the water share the cover of their group. */
  readonly cover: QuantileSeries;
  /**
   * By cause, what it lost over the expected run, over what good light alone would have let it grow [>= 0]; what dried
   * up counts too. On land only.
   */
  readonly heldBack: Readonly<Record<string, number>>;
}

const GROUP_SERIES = {
  submerged: 'plantCover',
  floating: 'floatingCover',
  emersed: 'emersedCover',
} as const satisfies Record<string, SeriesId>;

function shares(rows: Float64Array, { rowLength, plantOffset }: BookShape, stand: number) {
  const sums = Array.from({ length: PLANTING_ENTRIES }, (_, cause) => {
    let sum = 0;
    for (let row = 0; row < rows.length; row += rowLength)
      sum += rows[row + plantOffset + stand * PLANTING_ENTRIES + cause]!;
    return sum;
  });
  const possible = sums[LAND_PLANT_CAUSES.length]!;
  return Object.fromEntries(
    LAND_PLANT_CAUSES.map((name, cause) => [name, possible > 0 ? sums[cause]! / possible : 0]),
  );
}

/**
 * Returns every planting the outlook follows with its cover [%] and, on land, what kept it back [shares].
 * @param prepared plan and stands
 * @param expected the expected run with its book, laid out as `shape` says
 * @param series of the outlook
 * @source derived
 */
export function plantOutlooks(
  { plan, setting }: PreparedOutlook,
  expected: RunRecord,
  series: AheadDocument['series'],
  shape: BookShape,
): PlantOutlook[] {
  return plan.plants.flatMap((planting) => {
    const { id, name, zone, group } = planting;
    const stand = setting.stands.findIndex((each) => each.id === id);
    const own = series[`planting:${id}`];
    if (stand >= 0 && own)
      return [{ id, name, zone, cover: own, heldBack: shares(expected.bookRows, shape, stand) }];
    const shared =
      group !== 'moss' && group !== 'land' && feedsFromWater(planting, plan.zones)
        ? series[GROUP_SERIES[group]]
        : undefined;
    return shared ? [{ id, name, zone, cover: shared, heldBack: {} }] : [];
  });
}
