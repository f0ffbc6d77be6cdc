import { type Command, InvalidArgumentError } from 'commander';
import { type Belonging, both } from './options-given.ts';

/** Where and when the feed that is looked for is given. */
export interface FeedingChoice {
  readonly place?: 'land' | 'pool';
  /** Hours after midnight. */
  readonly at?: number;
}

export interface FreshRuns {
  readonly seed: number;
  /** As asked for; nothing where they were left out. */
  readonly members: number | undefined;
}

/** Reads '21:00' as hours after midnight. */
function hourOf(text: string): number {
  const [, hours, minutes] = /^(\d{1,2}):(\d{2})$/.exec(text.trim())?.map(Number) ?? [];
  if (hours === undefined || minutes === undefined || hours > 23 || minutes > 59)
    throw new InvalidArgumentError('Give hours and minutes of the day, such as 21:00.');
  return hours + minutes / 60;
}

function placeOf(text: string): 'land' | 'pool' {
  if (text !== 'land' && text !== 'pool') throw new InvalidArgumentError('Give land or pool.');
  return text;
}

/** The options of `life` that go with `--hold`. */
export function withFeedingOptions(command: Command): Command {
  return command
    .option(
      '--place <place>',
      'with --hold: give the feed on the land, or into the pool; where most of them live when left out',
      placeOf,
    )
    .option('--at <time>', 'with --hold: time of day at which it is given, such as 21:00', hourOf);
}

/** What goes with `--hold` alone. */
export const WITH_HOLD: Belonging = {
  options: ['place', 'at'],
  to: 'hold',
  say: ['goes with --hold:', 'go with --hold:'],
  mend: both('say whom to feed for, as --hold hyalella-azteca:20.'),
};

/** What the feeding plan is told of them; fresh runs judge it, as many as are asked for, else as many as it takes itself. */
export function feedingChoice({ place, at }: FeedingChoice, { seed, members }: FreshRuns) {
  return {
    seed,
    ...(members === undefined ? {} : { members }),
    ...(place === undefined ? {} : { onLand: place === 'land' }),
    ...(at === undefined ? {} : { hour: at }),
  };
}
