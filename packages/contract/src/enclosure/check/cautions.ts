import { geometryOf, type Plan } from '@shoreglass/engine';
import { capital, type Library } from '@shoreglass/library';
import type { KeyPath } from '../read/problem.ts';
import type { EnclosureContent } from '../schema/enclosure.ts';
import type { Remark } from './finding.ts';

const note = (path: KeyPath, message: string, mend: string): Remark => ({
  severity: 'note',
  path,
  message,
  mend,
});

/** [kg/m3] */
const DENSITY = { glass: 2500, water: 998 } as const;

/** Water and glass alone; ground and stones come on top. */
function weightOf(plan: Plan): number {
  const { length, width, height, glassThickness } = plan.box;
  const panes = 2 * (length + width) * height + length * width;
  return panes * glassThickness * DENSITY.glass + geometryOf(plan).volumeAt(plan.water.level) * DENSITY.water;
}

function entryCautions(content: EnclosureContent, library: Library): Remark[] {
  const from = (cautions: readonly string[] | undefined, path: KeyPath, name?: string): Remark[] =>
    (cautions ?? []).map((caution) => {
      const message = caution.replace(/\.$/, '');
      return name === undefined
        ? note(path, message, '')
        : { ...note(path, `${capital(name)}: ${message}`, ''), name };
    });
  const named = [
    ...content.zones.flatMap(({ layers }, zone) =>
      layers.flatMap(({ material }, layer) =>
        from(library.material(material).cautions, ['zones', zone, 'layers', layer, 'material']),
      ),
    ),
    ...(content.hardscape ?? []).flatMap(({ material }, index) =>
      from(library.material(material).cautions, ['hardscape', index, 'material']),
    ),
    ...(content.plants ?? []).flatMap(({ plant }, index) => {
      const { cautions, name } = library.plant(plant);
      return from(cautions, ['plants', index, 'plant'], name);
    }),
    ...(content.animals ?? []).flatMap(({ species }, index) => {
      const { cautions, name } = library.organism(species);
      return from(cautions, ['animals', index, 'species'], name);
    }),
  ];
  return named.filter(
    ({ message }, index) => named.findIndex((other) => other.message === message) === index,
  );
}

/** What to mind with this enclosure: electricity, weight, release, and the cautions of all that is used. */
export function cautionRemarks(content: EnclosureContent, plan: Plan, library: Library): Remark[] {
  const remarks: Remark[] = [];
  const { lamps, heater, pump, mister } = plan.devices;
  if (lamps.length > 0 || heater || pump || mister)
    remarks.push(
      note(
        ['devices'],
        'Mains electricity stands beside water here',
        'Use a residual-current device (RCD, GFCI), drip loops on every cable, and parts rated for wet places; unplug before reaching in.',
      ),
    );
  remarks.push(
    note(
      ['glass'],
      `Glass and water alone weigh about ${Math.round(weightOf(plan))} kg; ground and stones come on top`,
      'Check floor and stand, and set the box on a level, cushioned base.',
    ),
  );
  if (plan.populations.length > 0 || plan.plants.length > 0)
    remarks.push(
      note(
        content.animals?.length ? ['animals'] : ['plants'],
        'Never release animals, plants, water or ground outdoors',
        'Give surplus to other keepers; let water seep away on soil far from streams and ponds, dry and bin the rest.',
      ),
    );
  return [...remarks, ...entryCautions(content, library)];
}
