import { metresOf } from '../scale/length-unit.ts';
import { element, type Scene, sceneOf } from '../scene/scene.ts';
import { materialTiles } from '../section/materials.ts';
import { quantityText } from '../type/number-text.ts';
import { fieldUnderDryZones } from './field-under.ts';
import { planFrame } from './frame.ts';
import { contourLines } from './parts/contour-lines.ts';
import { cutLine, glassDefinition, lampPanels, panes, rulers } from './parts/glass.ts';
import { pieces } from './parts/pieces.ts';
import { water } from './parts/water.ts';
import { dryZones, zoneLook, zoneNames, zones } from './parts/zones.ts';
import type { PlanViewOptions, ShapePlan } from './plan-view-options.ts';

/** Back to front. */
const PARTS = [
  zones,
  water,
  contourLines,
  dryZones,
  pieces,
  lampPanels,
  cutLine,
  panes,
  rulers,
  zoneNames,
] as const;

/** The enclosure to scale as seen from above, the front pane at the bottom. */
export function planViewScene(options: PlanViewOptions): Scene {
  const frame = planFrame({ ...options, field: fieldUnderDryZones(options) });
  const patterns = materialTiles(
    options.plan.zones.map((zone) => zoneLook(zone).pattern),
    { palette: options.palette, pixelsPerMetre: frame.pixelsPerMetre, id: frame.id },
  );
  return sceneOf(options.size, planSentence(options.plan, options.unit), [
    element('defs', {}, glassDefinition(frame), ...patterns),
    ...PARTS.map((part) => part(frame)),
  ]);
}

/** The drawing in one sentence, for those who hear it. */
export function planSentence({ name, box, zones: parts }: ShapePlan, unit: 'cm' | 'in'): string {
  const length = (metres: number) => quantityText(metres / metresOf(unit), unit, 1);
  const listed = parts.map((zone) => {
    const kind = zone.name.toLowerCase() === zone.kind ? zone.name : `${zone.name} (${zone.kind})`;
    return `${kind} from ${length(zone.from)} to ${length(zone.to)}`;
  });
  return `Plan of ${name} from above, ${length(box.length)} by ${length(box.width)}: ${listed.join('; ')}.`;
}
