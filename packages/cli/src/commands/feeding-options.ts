import { type Command, InvalidArgumentError } from 'commander';
import { BadInput } from '../exit-codes.ts';

/** Where and when the feed that is looked for is given. */
export interface FeedingChoice {
  readonly place?: 'land' | 'pool';
  /** Hours after midnight. */
  readonly at?: number;
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

/**
 * What the feeding plan is told of them.
 * @throws BadInput when they are given and no numbers are to be held
 */
export function feedingChoice({ place, at }: FeedingChoice, holds: boolean) {
  const given = [...(place === undefined ? [] : ['--place']), ...(at === undefined ? [] : ['--at'])];
  if (given.length > 0 && !holds)
    throw new BadInput(
      `${given.join(' and ')} ${given.length > 1 ? 'go' : 'goes'} with --hold: say whom to feed for, as --hold hyalella-azteca:20.`,
    );
  return {
    ...(place === undefined ? {} : { onLand: place === 'land' }),
    ...(at === undefined ? {} : { hour: at }),
  };
}
