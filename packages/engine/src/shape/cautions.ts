import type { Plan } from '../plan/plan.ts';
import type { ShapeCaution } from './shape-sheet.ts';

function deviceCautions({ devices }: Plan): ShapeCaution[] {
  const cautions: ShapeCaution[] = [];
  const add = (place: ShapeCaution['place'], message: string) => cautions.push({ place, message });
  if (devices.lamps.length > 0)
    add(
      'lamps',
      'Mains beside water: a residual-current device (RCD, GFCI), drip loops, parts rated for wet places. Lamps grow hot: keep 5 cm free around them, and look into no UV lamp.',
    );
  if (devices.heater)
    add(
      'heater',
      'Unplug it before hands or the water level go down: a heater in air cracks or burns, and a stuck thermostat cooks the water. Guard it from animals that climb.',
    );
  if (devices.pump)
    add(
      'pump',
      'Unplug it before reaching in; test the RCD every month. Cover the intake so that no animal is drawn in, and try what the level does when it stops.',
    );
  if (devices.mister)
    add(
      'mister',
      'Mist carries what lives in its reservoir: use clean water, empty and dry it often, and keep sockets and lamps out of reach of the spray.',
    );
  if (devices.fogger)
    add(
      'fogger',
      'Fog carries germs, Legionella among them, deep into lungs: distilled or boiled water, a reservoir that is emptied and dried, and none of it into the room.',
    );
  if (devices.fans?.length)
    add(
      'fans',
      'Low voltage, with the supply outside and above the water; mesh before the blades so that no animal reaches them.',
    );
  if (devices.mats?.length)
    add(
      'mats',
      'Heat under glass can crack it and burn animals that dig: always with a thermostat, never under more than half of the base, with feet that leave air below.',
    );
  return cautions;
}

/**
 * Returns what to mind, each beside the equipment or work it concerns; local codes and licensed trades decide.
 * @param plan whose equipment and ground is looked at
 * @source derived; docs/science/hydraulics-and-structure.md
 */
export function shapeCautions(plan: Plan): ShapeCaution[] {
  const cautions: ShapeCaution[] = [
    {
      place: 'glass',
      message:
        'Gloves and eye protection at glass edges; two people and suckers to lift; never lift a filled box. Leave silicone about a week, then fill slowly where a leak does no harm, and wait a day.',
    },
    {
      place: 'building',
      message:
        'Uncured silicone smells of acetic acid and irritates: air the room until the smell is gone, and rinse before anything lives there.',
    },
  ];
  const hasFoam = plan.zones.some(({ layers }) =>
    layers.some(({ kind, porosity }) => kind === 'foam' && porosity < 0.5),
  );
  if (hasFoam)
    cautions.push({
      place: 'ground',
      message:
        'Expanding foam gives off isocyanate while it cures and can make asthmatic for life: outdoors or under strong exhaust, gloves and goggles, others and animals away, 24 h before the next step. Glue it down: it floats.',
    });
  if (plan.hardscape.length > 0)
    cautions.push({
      place: 'hardscape',
      message:
        'Set heavy stone on the base or a support before the ground goes in, never on sand that animals dig away. Collected wood and stone may carry germs, and wood floats until soaked: tie it down.',
    });
  if (plan.box.coverOpenFraction < 0.01 && !plan.box.vents?.length && plan.devices.lamps.length > 0)
    cautions.push({
      place: 'cover',
      message:
        'Closed all round: sun or a strong lamp can overheat it within minutes. Keep it out of direct sun and watch a thermometer.',
    });
  return [...cautions, ...deviceCautions(plan)];
}
