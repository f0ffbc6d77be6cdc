import { type Band, type ConflictKind, conflictsOf, type Plan, seriesSpec } from '@shoreglass/engine';
import { capital, type Library } from '@shoreglass/library';
import { inhabitantsOf, placeFactsOf } from '../plan/community-of.ts';
import { expectedOf } from '../plan/expected-of.ts';
import type { KeyPath } from '../read/problem.ts';
import type { EnclosureContent } from '../schema/enclosure.ts';
import type { Remark } from './finding.ts';

/** Where in the file somebody is named. */
type Whereabouts = ReadonlyMap<string, KeyPath>;

function whereaboutsOf({ animals = [], plants = [] }: EnclosureContent, library: Library): Whereabouts {
  return new Map([
    ...plants.map(({ plant }, index): [string, KeyPath] => [
      library.plant(plant).name,
      ['plants', index, 'plant'],
    ]),
    ...animals.map(({ species }, index): [string, KeyPath] => [
      library.organism(species).name,
      ['animals', index, 'species'],
    ]),
  ]);
}

const shown = (band: Pick<Band, 'series'>, value: number): string => {
  const { unit } = seriesSpec(band.series);
  return `${value} ${unit}`.trim();
};

/** Who can live with whom and in this place, as remarks at the species' lines. */
function communityRemarks(content: EnclosureContent, plan: Plan, library: Library): Remark[] {
  const { animals = [] } = content;
  const all = inhabitantsOf(content, library);
  const nameOf = (id: string | undefined): string | undefined => all.find((one) => one.id === id)?.name;
  const placeOf = (id: string | undefined, kind: ConflictKind): KeyPath => {
    const index = animals.findIndex(({ species }) => species === id);
    if (index < 0) return ['animals'];
    if (kind !== 'few') return ['animals', index, 'species'];
    return ['animals', index, (animals[index]?.adults ?? 0) > 0 ? 'adults' : 'juveniles'];
  };
  return conflictsOf(all, placeFactsOf(plan)).map(
    ({ who, kind, severity, sentence, mend, source }): Remark => {
      const name = nameOf(who[0]);
      return {
        severity,
        path: placeOf(who[0], kind),
        message: sentence.replace(/\.$/, ''),
        mend,
        source,
        ...(name === undefined ? {} : { name }),
      };
    },
  );
}

/** Kinds of risk of a plant that are told, and what helps; that it must not get outdoors is told of the enclosure. */
const PLANT_RISKS = {
  law: 'Ask your authority before you buy.',
  invasive: 'Ask your authority before you buy.',
  toxin: 'Keep it from children and from animals that chew it; wear gloves to cut it, and wash hands.',
  zoonosis: 'Wear gloves where the skin is broken, and wash hands.',
} as const;

/** What the law and health ask for with each plant, each plant once. */
function plantRisks({ plants = [] }: EnclosureContent, library: Library): Remark[] {
  const first = plants.filter(({ plant }, index) => plants.findIndex((one) => one.plant === plant) === index);
  return first.flatMap((planting) => {
    const { name, risks = [] } = library.plant(planting.plant);
    return risks.flatMap(({ kind, text, source }): Remark[] => {
      const mend = PLANT_RISKS[kind as keyof typeof PLANT_RISKS];
      if (mend === undefined) return [];
      const message = `${capital(name)}: ${text.replace(/\.$/, '')}`;
      const path = ['plants', plants.indexOf(planting), 'plant'];
      return [{ severity: 'note', path, message, mend, source, name }];
    });
  });
}

/** A plant that needs more than an animal bears, or the other way round. */
function plantConflicts(bands: readonly Band[], where: Whereabouts, animals: ReadonlySet<string>): Remark[] {
  return bands.flatMap((needy) =>
    bands.flatMap((frail): Remark[] => {
      if (needy.series !== frail.series || needy.owner === frail.owner) return [];
      if (animals.has(needy.owner) && animals.has(frail.owner)) return [];
      if (needy.low === undefined || frail.high === undefined || needy.low <= frail.high) return [];
      const { name } = seriesSpec(needy.series);
      return [
        {
          severity: 'warning',
          path: where.get(needy.owner) ?? [],
          message: `${needy.owner} and ${frail.owner} do not fit together: ${name} of at least ${shown(needy, needy.low)} for the first, at most ${shown(frail, frail.high)} for the second`,
          mend: 'Keep one of the two.',
          source: `${needy.source}; ${frail.source}`,
        },
      ];
    }),
  );
}

/** What a plant needs and room or fill water do not give; animals are told by the community. */
function plantMisfits(plan: Plan, where: Whereabouts, animals: ReadonlySet<string>): Remark[] {
  const expected = expectedOf(plan);
  return plan.bands.flatMap((band): Remark[] => {
    const now = expected.find(({ series }) => series === band.series);
    if (!now || animals.has(band.owner)) return [];
    const margin = MARGIN[band.series] ?? 0;
    const { name, unit } = seriesSpec(band.series);
    const tell = (value: number, side: string, limit: number): Remark => ({
      severity: 'warning',
      path: where.get(band.owner) ?? [],
      message: `${band.owner} needs ${name} ${side} ${shown(band, limit)}; ${now.from} gives ${value.toFixed(1)} ${unit}`,
      mend:
        now.from === 'the room'
          ? 'Choose another species, place or heater.'
          : 'Choose another water, a blend, or another species.',
      source: band.source,
    });
    if (band.low !== undefined && now.low < band.low - margin)
      return [tell(now.low, 'of at least', band.low)];
    if (band.high !== undefined && now.high > band.high + margin)
      return [tell(now.high, 'of at most', band.high)];
    return [];
  });
}

/** Lamp and pump warm the water a little; a room is only called too cold or too warm beyond this [K, degrees]. */
const MARGIN: Readonly<Record<string, number>> = { waterTemperature: 1.5, GH: 0.2, KH: 0.2 };

function placeRemarks({ animals = [], plants = [], zones }: EnclosureContent, library: Library): Remark[] {
  const kindOf = new Map(zones.map(({ id, kind }) => [id, kind]));
  const wet = (zone: string) => ['pool', 'margin', 'stream'].includes(kindOf.get(zone) ?? '');
  const remark = (path: KeyPath, lives: string, zone: string, where: string): Remark => ({
    severity: 'warning',
    path,
    message: `${lives} ${where}, but the zone '${zone}' is a ${kindOf.get(zone)}`,
    mend: `Name a zone of the ${where === 'in the water' ? 'water' : 'land'}.`,
  });
  return [
    ...animals.flatMap(({ species, zone }, index): Remark[] => {
      const { name, habitat } = library.organism(species);
      const path = ['animals', index, 'zone'];
      if (habitat === 'water' && !wet(zone)) return [remark(path, `${name} live`, zone, 'in the water')];
      const isDrowned = habitat === 'land' && kindOf.get(zone) === 'pool';
      return isDrowned ? [remark(path, `${name} live`, zone, 'on land')] : [];
    }),
    ...plants.flatMap(({ plant, zone }, index): Remark[] => {
      const { name, group } = library.plant(plant);
      return (group === 'submerged' || group === 'floating') && !wet(zone)
        ? [remark(['plants', index, 'zone'], `${name} lives`, zone, 'in the water')]
        : [];
    }),
  ];
}

function animalsOf({ animals = [] }: EnclosureContent, library: Library): ReadonlySet<string> {
  return new Set(animals.map(({ species }) => library.organism(species).name));
}

/** Who does not fit whom, the water, the room or the place; and too few founders. */
export function inhabitantRemarks(content: EnclosureContent, plan: Plan, library: Library): Remark[] {
  const where = whereaboutsOf(content, library);
  const animals = animalsOf(content, library);
  return [
    ...placeRemarks(content, library),
    ...communityRemarks(content, plan, library),
    ...plantConflicts(plan.bands, where, animals),
    ...plantRisks(content, library),
    ...plantMisfits(plan, where, animals),
  ];
}
