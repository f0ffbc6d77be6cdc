import { checkGeometry } from '../geometry/check-geometry.ts';
import { centimetres } from '../geometry/geometry-problem.ts';
import type { Plan } from '../plan/plan.ts';
import type { ShapeRemark, ShapeSheet } from './shape-sheet.ts';

type Figures = Omit<ShapeSheet, 'remarks' | 'cautions'>;

/** Area load of a dwelling that a floor is made for, and total from which a look is due. @source irc-r301; judgement */
const FLOOR = { pressure: 1900, mass: 250 } as const;
/** Least freeboard after the pump has stopped [m]. @source common practice, no source */
const LEAST_FREEBOARD = 0.01;
/** Fouled flow below this part of the clean one is told. @source assumed */
const MUCH_LESS = 0.5;

const warning = (place: string, message: string, mend: string, source?: string): ShapeRemark => ({
  severity: 'warning',
  place,
  message,
  mend,
  ...(source ? { source } : {}),
});
const note = (place: string, message: string, mend: string, source?: string): ShapeRemark => ({
  ...warning(place, message, mend, source),
  severity: 'note',
});

/**
 * Returns lamps that hang inside the box, where mist and drops reach them, without protection against water.
 * @param plan box and devices
 * @source derived: iec-60529 for degrees of protection
 */
export function lampPlaceRemarks({ box, devices }: Plan): ShapeRemark[] {
  return devices.lamps.flatMap(({ name, panel, protection }, index) => {
    const place = `devices.lamps.${index}.panel`;
    if (!panel) return [];
    const outside =
      Math.abs(panel.x - box.length / 2) > box.length / 2 ||
      Math.abs(panel.y - box.width / 2) > box.width / 2;
    if (outside)
      return [
        warning(
          place,
          `${name} hangs beside the box, not over it`,
          `Keep its middle within ${centimetres(box.length)} by ${centimetres(box.width)}.`,
        ),
      ];
    if (panel.z >= box.height) return [];
    const degree = Number(protection?.[3] ?? Number.NaN);
    const sprays = devices.mister !== undefined || devices.fogger !== undefined;
    const needed = sprays ? 5 : 4;
    if (degree >= needed) return [];
    return [
      warning(
        place,
        `${name} hangs ${centimetres(box.height - panel.z)} below the rim, ${sprays ? 'inside the mist' : 'where condensation drips'}, ${protection ? `with ${protection}` : 'without a stated protection'}`,
        `Hang it above a glass cover, or use a lamp rated at least IPX${needed} and say so under protection.`,
        'IEC 60529, public summaries',
      ),
    ];
  });
}

/**
 * Returns what keeps a pump from moving water: an outlet above its greatest head, or next to no flow.
 * @param plan box, water and pump
 * @source derived
 */
export function pumpReachRemarks({ box, water, devices: { pump } }: Plan): ShapeRemark[] {
  if (!pump) return [];
  const lift = (pump.outlet ?? water.level) - water.level;
  const found: ShapeRemark[] = [];
  if (pump.curve && lift >= pump.curve.shutOffHead)
    found.push(
      warning(
        'devices.pump.outlet',
        `${pump.name} cannot reach its outlet: it lifts water ${centimetres(pump.curve.shutOffHead)} at most, and the outlet lies ${centimetres(lift)} above the water`,
        `Choose a pump that lifts more, or lower the outlet below ${centimetres(water.level + pump.curve.shutOffHead)}.`,
      ),
    );
  if (pump.outlet !== undefined && pump.outlet > box.height)
    found.push(
      note(
        'devices.pump.outlet',
        `the outlet of ${pump.name} lies above the rim`,
        'See that its water falls into the box.',
      ),
    );
  return found;
}

function flowRemarks(plan: Plan, { flow }: Figures): ShapeRemark[] {
  const { pump } = plan.devices;
  if (!flow || !pump) return [];
  const found: ShapeRemark[] = [];
  if (flow.stop.freeboardLeft < LEAST_FREEBOARD)
    found.push(
      warning(
        'water.level',
        `when the pump stops, ${(flow.stop.drainBack * 1000).toFixed(1)} L run back and the level rises by ${centimetres(flow.stop.rise)}, which leaves ${centimetres(flow.stop.freeboardLeft)} below the lowest opening`,
        'Lower the level, shorten what stands full above the pool, or raise the lowest opening.',
      ),
    );
  if (flow.clean.flow > 0 && flow.fouled.flow < MUCH_LESS * flow.clean.flow)
    found.push(
      note(
        'devices.pump.filter',
        `fouled, the pump moves ${Math.round((100 * flow.fouled.flow) / flow.clean.flow)} % of its clean flow`,
        'Give the filter more area or coarser foam, or note when to rinse it in old tank water.',
      ),
    );
  if (flow.sheet && !flow.sheet.isClosed)
    found.push(
      note(
        'devices.pump.lip',
        `over ${centimetres(pump.lip ?? 0)} of lip the water breaks into threads: ${((flow.sheet.perWidth * 3.6e6) / 1000).toFixed(1)} L/h per mm where 6 make a closed sheet`,
        'Narrow the lip or pump more for a closed sheet; threads and a wetted wall are fine otherwise.',
      ),
    );
  return found;
}

function loadRemarks({ masses, structure }: Figures): ShapeRemark[] {
  const found: ShapeRemark[] = [];
  if (masses.floorPressure > FLOOR.pressure || masses.total > FLOOR.mass)
    found.push(
      note(
        'box',
        `${Math.round(masses.total)} kg press on the floor with ${(masses.floorPressure / 1000).toFixed(1)} kPa`,
        'Set it along a wall across the joists, on a stand that spreads the load, and ask somebody who can judge the floor.',
      ),
    );
  const { allowedStress, panes } = structure;
  const weak = panes.filter(({ planned }) => planned && planned.stress > allowedStress);
  for (const pane of weak)
    found.push(
      warning(
        'box.glassThickness',
        `the ${pane.pane} pane bears ${(pane.planned!.stress / 1e6).toFixed(1)} MPa as planned, above the ${(allowedStress / 1e6).toFixed(0)} MPa taken as working stress of annealed glass`,
        'Take thicker glass, a rim or braces, or less water, and ask a glazier.',
      ),
    );
  const least = Math.min(...panes.map(({ fillTo, height }) => fillTo ?? height));
  const height = panes[0]?.height ?? 0;
  if (weak.length === 0 && least < height - 1e-6)
    found.push(
      note(
        'box.glassThickness',
        `the glass reaches its working stress of ${(allowedStress / 1e6).toFixed(0)} MPa with ${centimetres(Math.floor(least * 100) / 100)} of water, not full to its rim at ${centimetres(height)}`,
        'Never fill it deeper, not even to look for leaks; or take thicker glass, a rim or braces.',
      ),
    );
  for (const { name, force, place } of masses.uplift)
    if (force > 5)
      found.push(
        note(
          place,
          `${name} pushes upwards with ${force.toFixed(0)} N once under water`,
          'Tie, glue or weigh it down before filling.',
        ),
      );
  return found;
}

function isOfWaterAlone({ populations }: Plan): boolean {
  return (
    populations.length > 0 && populations.every(({ traits: { habitat = 'water' } }) => habitat === 'water')
  );
}

function groundRemarks(plan: Plan, { geometry, zones, light }: Figures): ShapeRemark[] {
  const found: ShapeRemark[] = [];
  if (!geometry.escapes.hasWayOut)
    found.push(
      // Where all who are planned live in the water, nobody needs it.
      (isOfWaterAlone(plan) ? note : warning)(
        'zones',
        'nothing leads out of the water: no shore of 45 degrees or less, no ledge, no piece through the surface',
        'Draw a margin that slopes, or let a branch or stone pass through the surface.',
        'common practice, no source',
      ),
    );
  for (const zone of zones)
    if (zone.drainage === 'soggy' && (zone.kind === 'bank' || zone.kind === 'island'))
      found.push(
        warning(
          `zones.${zone.id}.layers`,
          `the ground of ${zone.name} lifts water to within ${centimetres(zone.drainHeight)} of its surface: it stays soggy`,
          'Put a coarse drainage layer between water and soil, or lower the water.',
        ),
      );
  for (const plant of light.plants)
    if (plant.verdict === 'too dark' && plan.devices.lamps.length > 0)
      found.push(
        note(
          'plants',
          `${plant.name} gets ${plant.light.toFixed(0)} µmol/m²/s and needs ${plant.least} to last`,
          'More light, a brighter place, or another plant.',
        ),
      );
  return found;
}

/**
 * Returns what speaks against a plan as drawn, worst first: place, what is wrong, mend.
 * @param plan that can be drawn
 * @param figures of the same plan
 * @source derived
 */
export function shapeRemarks(plan: Plan, figures: Figures): ShapeRemark[] {
  const geometry = checkGeometry(plan).map(
    ({ severity = 'blocking', place, message, mend }): ShapeRemark => ({ severity, place, message, mend }),
  );
  const order = { blocking: 0, warning: 1, note: 2 } as const;
  return [
    ...geometry,
    ...pumpReachRemarks(plan),
    ...lampPlaceRemarks(plan),
    ...flowRemarks(plan, figures),
    ...loadRemarks(figures),
    ...groundRemarks(plan, figures),
  ].sort((a, b) => order[a.severity] - order[b.severity]);
}
