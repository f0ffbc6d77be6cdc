import type {
  Action,
  FeedComposition,
  RepeatedCare,
  Routine,
  SingleCare,
  WaterComposition,
} from '@shoreglass/engine';
import { MOLAR_MASS } from '@shoreglass/engine';
import type { Library } from '@shoreglass/library';
import type { ActionContent, RoutineContent } from '../schema/care.ts';
import type { EnclosureContent } from '../schema/enclosure.ts';
import { foundersOf } from './inhabitants.ts';
import { carbonateAmount, litterContents } from './pieces.ts';
import { plain } from './plain.ts';

export interface CareSources {
  readonly library: Library;
  readonly waterNamed: (id: string) => WaterComposition;
}

/** Decay of soaked flakes at 25 degC [1/d], the reference of the engine's feed breakdown. @source the library's flake */
const FLAKE_DECAY = 0.25;

/** Part of a feed that is of animals [1]. */
const MEATY = { plants: 0, mixed: 0.5, animals: 1 } as const;

/** Contents of a feed as given [mol/kg], from shares of its dry mass. */
export function feedOf(id: string, library: Library): FeedComposition {
  const feed = library.feed(id);
  const dry = plain(feed.dryMatter, 'share');
  const moles = (share: number, gramsPerMole: number) => (1000 * dry * share) / gramsPerMole;
  return {
    id: feed.id,
    name: feed.name,
    carbon: moles(plain(feed.carbon, 'share'), MOLAR_MASS.carbon),
    nitrogen: moles(plain(feed.nitrogen, 'share'), MOLAR_MASS.nitrogen),
    phosphorus: moles(plain(feed.phosphorus, 'share'), MOLAR_MASS.phosphorus),
    pace: feed.decay.value / FLAKE_DECAY,
    ...(feed.kind === undefined ? {} : { meaty: MEATY[feed.kind] }),
  };
}

type Removal = Extract<RoutineContent, { do: 'remove-animals' }>;
type Repeatable = Exclude<
  RoutineContent | Extract<ActionContent, { do: RoutineContent['do'] }>,
  { do: 'remove-animals' }
>;

function repeatedOf(content: Repeatable, { library, waterNamed }: CareSources): RepeatedCare {
  switch (content.do) {
    case 'feed':
      return {
        kind: 'feed',
        feed: feedOf(content.feed, library),
        mass: content.amount,
        ...(content.place === 'land' ? { onLand: true } : {}),
        ...(content.at === undefined ? {} : { hour: content.at }),
      };
    case 'top-off':
      return { kind: 'top-off' };
    case 'water-change':
      return { kind: 'water change', fraction: content.share, water: waterNamed(content.water) };
    case 'trim':
      return {
        kind: 'trim',
        keepCover: content.keep,
        ...(content.plants === undefined ? {} : { group: content.plants }),
        ...(content.zone === undefined ? {} : { zone: content.zone }),
        ...(content.cuttings === 'left' ? { left: true } : {}),
      };
  }
}

/** One line of the file may be several routines: adults and young are taken out apart. */
export function routinesOf(content: RoutineContent, sources: CareSources): Routine[] {
  const times = {
    everyDays: content.every,
    firstDay: content.after ?? 0,
    ...(content.until === undefined ? {} : { lastDay: content.until }),
  };
  const care = content.do === 'remove-animals' ? removalOf(content) : [repeatedOf(content, sources)];
  return care.map((each) => ({ ...each, ...times }));
}

function removalOf(content: Pick<Removal, 'species' | 'adults' | 'juveniles' | 'finds'>): RepeatedCare[] {
  return foundersOf(content).map((founders) => ({
    kind: 'remove animals',
    population: content.species,
    ...founders,
    ...(content.finds === undefined ? {} : { finds: content.finds }),
  }));
}

function isRepeatable(content: ActionContent): content is Extract<ActionContent, Repeatable> {
  return (
    content.do === 'feed' ||
    content.do === 'top-off' ||
    content.do === 'water-change' ||
    content.do === 'trim'
  );
}

/** One line of the file may be several actions: adults and young are brought in apart. */
function singleOf(content: ActionContent, sources: CareSources): SingleCare[] {
  if (isRepeatable(content)) return [repeatedOf(content, sources)];
  switch (content.do) {
    case 'remove-animals':
      return removalOf(content);
    case 'add-animals':
      return foundersOf(content).map((founders) => ({
        kind: 'add animals',
        population: content.species,
        ...founders,
      }));
    case 'add-carbonate': {
      const material = sources.library.material(content.material);
      if (material.use !== 'carbonate') throw new Error(`${material.name} is not a carbonate`);
      const grain = content.grain ?? plain(material.grain, 'length');
      const amount = carbonateAmount(material, content.mass);
      return [{ kind: 'add carbonate', amount, grain, mineral: material.mineral }];
    }
    case 'add-litter': {
      const material = sources.library.material(content.material);
      if (material.use !== 'litter') throw new Error(`${material.name} is not litter`);
      return [
        {
          kind: 'add litter',
          ...litterContents(material, content.mass),
          ...(content.place === 'land' ? { onLand: true } : {}),
        },
      ];
    }
  }
}

/** Founders who move in after the start. */
function arrivals({ animals = [] }: EnclosureContent): Action[] {
  return animals
    .filter(({ after = 0 }) => after > 0)
    .flatMap((content) =>
      foundersOf(content).map(
        (founders): Action => ({
          kind: 'add animals',
          population: content.species,
          ...founders,
          day: content.after ?? 0,
        }),
      ),
    );
}

/** Everything done once, in order of days. */
export function actionsOf(content: EnclosureContent, sources: CareSources): Action[] {
  const written = (content.actions ?? []).flatMap((action) =>
    singleOf(action, sources).map((care): Action => ({ ...care, day: action.after })),
  );
  return [...arrivals(content), ...written].sort((a, b) => a.day - b.day);
}
