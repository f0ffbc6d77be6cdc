import { mouthfulPerLength } from '../life/mouthful.ts';
import { capital } from '../outlook/capital.ts';
import { type Conflict, type Inhabitant, median, type PlaceFacts, PREY_WORDS, shown } from './inhabitant.ts';

const RULE = 'derived: sizes and prey of both species files';

/** Whether two species meet at all: both in water, or both on land for part of their lives. */
function meet(a: Inhabitant, b: Inhabitant): boolean {
  const wet = median(a, 'shareInWater') * median(b, 'shareInWater');
  const dry = (1 - median(a, 'shareInWater')) * (1 - median(b, 'shareInWater'));
  return wet > 0.005 || dry > 0.005;
}

interface Reach {
  readonly smallest: number;
  readonly largest: number;
}

/** Lengths of prey a full-grown animal takes [mm]; undefined for those that hunt nobody. */
function reachOf(hunter: Inhabitant): Reach | undefined {
  const end = median(hunter, 'lengthAtEnd');
  const largest = median(hunter, 'preyLargest') * end;
  return largest > 0 ? { smallest: median(hunter, 'preySmallest') * end, largest } : undefined;
}

function huntsKind(hunter: Inhabitant, prey: Inhabitant): number {
  const { preyKind } = prey.traits;
  return preyKind === undefined ? 0 : (hunter.traits.hunts?.[preyKind] ?? 0);
}

/** Length a species counts as in a mouth, over its own [1]. */
function mouthfulOf(prey: Inhabitant): number {
  return mouthfulPerLength(prey.traits.preyKind, median(prey, 'dryMassPerCube'));
}

function pair(hunter: Inhabitant, prey: Inhabitant): Conflict[] {
  const reach = reachOf(hunter);
  if (!reach || huntsKind(hunter, prey) <= 0 || !meet(hunter, prey)) return [];
  const birth = median(prey, 'lengthAtBirth');
  const end = median(prey, 'lengthAtEnd');
  const mouthful = mouthfulOf(prey);
  if (birth * mouthful > reach.largest || end < reach.smallest) return [];
  const whole = end * mouthful <= reach.largest;
  const size = whole ? 'of any size' : `up to ${shown(reach.largest / mouthful)} mm, the young above all`;
  const thin =
    mouthful < 1
      ? `; thin as they are, they count as ${shown(birth * mouthful)} to ${shown(end * mouthful)} mm in a mouth`
      : '';
  const young = prey.traits.mating === 'division' ? 'when they part' : 'at birth';
  const rare = huntsKind(hunter, prey) < 0.1;
  const cover = median(prey, 'hiding') > 0.5 ? ' Dense plants, litter and crevices save part of them.' : '';
  return [
    {
      kind: 'eaten',
      who: [prey.id, hunter.id],
      severity: whole && !rare ? 'warning' : 'note',
      sentence: `${capital(hunter.name)} ${rare ? 'now and then eat' : 'eat'} ${prey.name} ${size}: they take prey of ${shown(reach.smallest)} to ${shown(reach.largest)} mm, and ${prey.name} are ${shown(birth)} mm long ${young} and ${shown(end)} mm full grown${thin}.${cover}`,
      source: RULE,
      mend: whole
        ? 'Keep one of the two, or count the prey as food and keep a culture of it apart.'
        : 'Give the young cover: moss, fine plants, litter, stones; or rear them apart.',
    },
  ];
}

/** Hunters whose mouths no prey here fits, or that find no prey here at all. */
function mouth(hunter: Inhabitant, all: readonly Inhabitant[]): Conflict[] {
  const reach = reachOf(hunter);
  const wants = median(hunter, 'preferenceForPrey') * 0.02;
  const others = 0.2 - wants;
  if (!reach || wants < others * 0.66) return [];
  const prey = all.filter((each) => each !== hunter && huntsKind(hunter, each) > 0 && meet(hunter, each));
  const kinds = Object.entries(hunter.traits.hunts ?? {})
    .filter(([, weight]) => weight > 0.1)
    .map(([kind]) => PREY_WORDS[kind as keyof typeof PREY_WORDS])
    .join(', ');
  if (prey.length === 0)
    return [
      {
        kind: 'mouth',
        who: [hunter.id],
        severity: 'warning',
        sentence: `${capital(hunter.name)} live mostly on prey (${kinds}), and none of it lives here.`,
        source: RULE,
        mend: 'Give live or frozen prey regularly, or keep a culture of it.',
      },
    ];
  const fitting = prey.filter((each) => median(each, 'lengthAtBirth') * mouthfulOf(each) <= reach.largest);
  if (fitting.length > 0) return [];
  return [
    {
      kind: 'mouth',
      who: [hunter.id, ...prey.map(({ id }) => id)],
      severity: 'warning',
      sentence: `The mouth of ${hunter.name} takes prey up to ${shown(reach.largest)} mm; here even the newborn are larger (${prey.map((each) => `${each.name} ${shown(median(each, 'lengthAtBirth') * mouthfulOf(each))} mm`).join(', ')}).`,
      source: RULE,
      mend: 'Give smaller prey, such as springtails, water fleas or freshly hatched brine shrimp.',
    },
  ];
}

/** Feed that nobody there eats when it is left over. */
function leftovers(all: readonly Inhabitant[], place: PlaceFacts): Conflict[] {
  const eats = (where: 'water' | 'land'): boolean =>
    all.some((each) => {
      const share = median(each, 'shareInWater');
      return where === 'water'
        ? share > 0.3 && median(each, 'preferenceForFeed') > 0 && median(each, 'preferenceForDetritus') > 0
        : share < 0.7 && (median(each, 'preferenceForRemains') > 0 || median(each, 'preferenceForFungi') > 0);
    });
  const lacking = (where: 'water' | 'land'): Conflict => ({
    kind: 'leftovers',
    who: [],
    severity: 'warning',
    sentence:
      where === 'water'
        ? 'Nobody in the water eats what is left of the feed; it rots and takes oxygen.'
        : 'Nobody on the land eats leftovers; they mould.',
    source: 'common practice, no source',
    mend:
      where === 'water'
        ? 'Add scavengers that fit (snails, scuds, shrimps), or take leftovers out after a few hours.'
        : 'Add springtails and woodlice that fit, or take leftovers out the next day.',
  });
  return [
    ...(place.feedsWater && !eats('water') ? [lacking('water')] : []),
    ...(place.feedsLand && !eats('land') ? [lacking('land')] : []),
  ];
}

/** Who eats whom at which size, mouths too small, and nobody for the leftovers. @source derived */
export function eatingConflicts(all: readonly Inhabitant[], place: PlaceFacts | undefined): Conflict[] {
  const pairs = all.flatMap((hunter) => all.flatMap((prey) => (hunter === prey ? [] : pair(hunter, prey))));
  return [...pairs, ...all.flatMap((hunter) => mouth(hunter, all)), ...(place ? leftovers(all, place) : [])];
}
