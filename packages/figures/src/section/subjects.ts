import { feedsFromWater, type Planting } from '@shoreglass/engine';
import type { DayState, Estimate } from '../day/day-state.ts';
import { countSpreadText, countText, numberText, quantityText, spreadText } from '../type/number-text.ts';
import type { SectionPlan } from './section-plan.ts';

/** One thing the section names: what the label says, and where in the enclosure it belongs. */
export interface Subject {
  readonly key: string;
  /** Letter that stands in the drawing where there are no leader lines. */
  readonly letter: string;
  readonly number: string;
  readonly name: string;
  /** Middle half of the runs, or what stands in its place; empty where the runs do not differ. */
  readonly interval: string;
  /** What needs the keeper, in words: "above 300". */
  readonly alarm?: string;
  readonly zone: string;
  readonly group: SubjectGroup;
}

type SubjectGroup = 'animal' | 'water plant' | 'bank plant' | 'film' | 'litter';

type Unlettered = Omit<Subject, 'letter'>;

/** Animals first, then plants, then films and litter. */
export function subjectsOf(plan: SectionPlan, day: DayState): Subject[] {
  return [...animals(plan, day), ...plants(plan, day), ...poolMatter(plan, day)].map((subject, index) => ({
    ...subject,
    letter: letterOf(index),
  }));
}

function animals(plan: SectionPlan, day: DayState): Unlettered[] {
  return plan.populations.map((population) => {
    const estimate = day.populations[population.id];
    return {
      key: `population:${population.id}`,
      name: population.name,
      zone: population.zone,
      group: 'animal',
      ...(estimate ? animalText(estimate) : { number: '–', interval: 'not in the outlook' }),
    };
  });
}

function animalText(estimate: Estimate): Pick<Subject, 'number' | 'interval' | 'alarm'> {
  const { coming } = estimate;
  if (coming !== undefined) {
    const when = coming === 'in some runs' ? coming : `from day\u00a0${Math.round(coming)}`;
    return { number: countText(estimate.median), interval: when };
  }
  const alarm = Math.round(estimate.median) === 0 ? 'none left' : alarmText(estimate, '', 0);
  return {
    number: countText(estimate.median),
    interval: countSpreadText(estimate.low, estimate.high),
    ...(alarm ? { alarm } : {}),
  };
}

/** Groups whose cover the outlook follows, each as one cover for all its plants. */
const FOLLOWED = [
  { group: 'submerged', key: 'plantCover', kind: 'water plant' },
  { group: 'floating', key: 'floatingCover', kind: 'water plant' },
  { group: 'emersed', key: 'emersedCover', kind: 'bank plant' },
] as const;

function plants(plan: SectionPlan, day: DayState): Unlettered[] {
  const followed = FOLLOWED.map((each) => ({
    ...each,
    plantings: plan.plants.filter(
      (planting) => planting.group === each.group && feedsFromWater(planting, plan.zones),
    ),
  }));
  const taken = new Set(followed.flatMap(({ plantings }) => plantings));
  const others = plan.plants.filter((planting) => !taken.has(planting));
  return [
    ...followed.flatMap((each) => followedCover(each, day)),
    ...others.flatMap((planting) => landCover(planting, day)),
  ];
}

type Followed = (typeof FOLLOWED)[number] & { readonly plantings: readonly Planting[] };

function followedCover({ key, kind, plantings }: Followed, day: DayState): Unlettered[] {
  const [first] = plantings;
  if (!first) return [];
  const cover = day[key];
  if (!cover) return plantings.map(plantedCover);
  const alarm = alarmText(cover, '%', 0);
  return [
    {
      key,
      name: plantings.map((planting) => planting.name).join(', '),
      zone: first.zone,
      group: kind,
      number: quantityText(cover.median, '%'),
      interval: spreadText(cover, '%'),
      ...(alarm ? { alarm } : {}),
    },
  ];
}

/** A planting on land with the outlook's cover, as planted where the outlook has none. */
function landCover(planting: Planting, day: DayState): Unlettered[] {
  const cover = day.plantings?.[planting.id];
  if (!cover) return [plantedCover(planting)];
  return [
    {
      ...plantedCover(planting),
      number: quantityText(cover.median, '%'),
      interval: spreadText(cover, '%'),
    },
  ];
}

function plantedCover(planting: Planting): Unlettered {
  return {
    key: `planting:${planting.id}`,
    name: planting.name,
    zone: planting.zone,
    group: planting.group === 'submerged' || planting.group === 'floating' ? 'water plant' : 'bank plant',
    number: quantityText(planting.cover * 100, '%'),
    interval: 'as planted',
  };
}

function poolMatter(plan: SectionPlan, day: DayState): Unlettered[] {
  const pool = plan.zones.find((zone) => zone.kind === 'pool') ?? plan.zones[0];
  if (!pool) return [];
  const found: Unlettered[] = [];
  const add = (key: 'attachedAlgae' | 'litter', spec: { name: string; unit: string; digits: number }) => {
    const estimate = day[key];
    if (!estimate) return;
    const alarm = alarmText(estimate, spec.unit, spec.digits);
    found.push({
      key,
      name: spec.name,
      zone: pool.id,
      group: key === 'litter' ? 'litter' : 'film',
      number: quantityText(estimate.median, spec.unit, spec.digits),
      interval: spreadText(estimate, spec.unit, spec.digits),
      ...(alarm ? { alarm } : {}),
    });
  };
  add('attachedAlgae', { name: 'attached algae', unit: 'g/m²', digits: 1 });
  if (plan.hardscape.some((piece) => piece.kind === 'litter'))
    add('litter', { name: 'leaf litter', unit: 'g', digits: 0 });
  return found;
}

function alarmText({ beyond }: Estimate, unit: string, digits: number): string | undefined {
  if (!beyond) return undefined;
  const limit = Number.isInteger(beyond.limit)
    ? numberText(beyond.limit)
    : numberText(beyond.limit, Math.max(1, digits));
  return `${beyond.side} ${limit}${unit === '' ? '' : `\u00a0${unit}`}`;
}

function letterOf(index: number): string {
  const letter = String.fromCharCode(97 + (index % 26));
  return index < 26 ? letter : `${letter}${Math.floor(index / 26)}`;
}
