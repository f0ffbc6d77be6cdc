import { isAwake } from '../life/awake.ts';
import { vegetablesOf } from '../life/foraging.ts';
import { capital } from '../outlook/capital.ts';
import { type Conflict, type Inhabitant, median, type PlaceFacts } from './inhabitant.ts';

type Feeding = NonNullable<PlaceFacts['feedings']>[number];

/** Parts of a life in a place under which an animal does not count on what is fed there [1]. @source assumed */
const AT_HOME = 0.3;

function eats(one: Inhabitant, onLand: boolean): boolean {
  const wet = median(one, 'shareInWater');
  return onLand
    ? 1 - wet > AT_HOME && median(one, 'preferenceForRemains') > 0
    : wet > AT_HOME && median(one, 'preferenceForFeed') > 0;
}

const listed = (all: readonly Inhabitant[]): string => all.map(({ name }) => name).join(', ');
const SOURCE = 'the hours of waking in the species files';

/** One feeding at an hour: who is awake for it and who is not. */
function atItsHour(all: readonly Inhabitant[], { onLand, time, light }: Feeding): Conflict[] {
  const eaters = all.filter((one) => eats(one, onLand));
  const awake = eaters.filter(({ traits }) => isAwake(traits.active ?? 'always', light));
  const asleep = eaters.filter((one) => !awake.includes(one));
  if (asleep.length === 0) return [];
  const where = onLand ? 'on the land' : 'in the water';
  const spoils = onLand ? 'part of it moulds' : 'part of it falls apart';
  const late = light === 'light' ? 'after the lamps go out' : 'while the lamps are lit';
  return [
    {
      kind: 'leftovers',
      who: asleep.map(({ id }) => id),
      severity: awake.length === 0 ? 'warning' : 'note',
      sentence:
        awake.length === 0
          ? `The feed of ${time} ${where} comes while all who eat it rest (${listed(asleep)}): it lies until they wake, and ${spoils}.`
          : `Of the feed of ${time} ${where}, ${listed(awake)} have the first of it; ${listed(asleep)} rest then and get what is left.`,
      source: SOURCE,
      mend:
        awake.length === 0
          ? `Give it ${late}.`
          : `Give a part of it ${late}, where they are to have their share.`,
    },
  ];
}

const tastes = ({ priors }: Inhabitant['traits']) => ({
  preferenceForPrey: priors.preferenceForPrey.median,
  preferenceForCarrion: priors.preferenceForCarrion.median,
  preferenceForFeed: priors.preferenceForFeed.median,
});

/** Readiness to take a feed below which it counts as refused [1]. @source assumed */
const REFUSED = 0.5;

/** A feed of plants where nobody in the water but hunters eats feed. */
function refused(
  all: readonly Inhabitant[],
  feed: NonNullable<PlaceFacts['vegetables']>[number],
): Conflict[] {
  const eaters = all.filter((one) => eats(one, false));
  const taking = eaters.filter(({ traits }) => vegetablesOf(tastes(traits)) >= REFUSED);
  if (eaters.length === 0 || taking.length > 0) return [];
  return [
    {
      kind: 'leftovers',
      who: eaters.map(({ id }) => id),
      severity: 'warning',
      sentence: `${capital(listed(eaters))} live of prey and hardly touch ${feed}; it falls apart in the water.`,
      source: 'derived: what the species files say of their diet',
      mend: 'Give insects, bloodworm or brine shrimp, or add snails or shrimps that eat vegetables.',
    },
  ];
}

/** Feed that comes while those who eat it rest, and feed that none of them takes. @source derived from when each is awake and what it lives of */
export function feedingConflicts(all: readonly Inhabitant[], place: PlaceFacts | undefined): Conflict[] {
  return [
    ...(place?.feedings ?? []).flatMap((feeding) => atItsHour(all, feeding)),
    ...(place?.vegetables ?? []).flatMap((feed) => refused(all, feed)),
  ];
}
