import { remembered } from '../scene/remembered.ts';
import { standsDry } from './parts/zones.ts';
import type { GroundField, ShapePlan } from './plan-view-options.ts';

const fieldOnce = remembered<GroundField, GroundField>();

/**
 * The field as it would be without the ground that is drawn in plan and stands dry: the strips under it go on, so that
 * its shore is its outline and not the edge of the cells.
 */
export function fieldUnderDryZones({ plan, field }: { plan: ShapePlan; field: GroundField }): GroundField {
  const dry = plan.zones.map((zone) => standsDry(zone, plan.water.level));
  if (!dry.includes(true)) return field;
  return fieldOnce(field, dry.join(), () => {
    const under = field.ground.map((height, cell) =>
      dry[field.zone[cell] ?? -1] ? stripUnder(plan, field, cell) : { height, zone: field.zone[cell] ?? -1 },
    );
    return { ...field, ground: under.map(({ height }) => height), zone: under.map(({ zone }) => zone) };
  });
}

function stripUnder(
  { zones }: ShapePlan,
  field: GroundField,
  cell: number,
): { height: number; zone: number } {
  const x = ((cell % field.columns) + 0.5) * field.cellLength;
  const zone = zones.findIndex(({ outline, from, to }) => !outline && x >= from && x <= to);
  const strip = zones[zone];
  if (!strip) return { height: 0, zone: -1 };
  const share = strip.to > strip.from ? (x - strip.from) / (strip.to - strip.from) : 0;
  return { height: strip.groundStart + share * (strip.groundEnd - strip.groundStart), zone };
}
