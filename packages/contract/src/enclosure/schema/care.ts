import { z } from 'zod';
import { timeOfDay } from './clock.ts';
import { measure } from './measured.ts';
import { oneOf, said } from './say.ts';
import { count, id, keys } from './strict.ts';

const { days, length, mass, share } = measure;

const done = <W extends string>(what: W, meaning: string) => z.literal(what).describe(meaning);

/** Where feed or leaves are put; into the water when left out. */
const place = z
  .enum(['water', 'land'])
  .describe('Where it is put: water or land; into the water when left out.')
  .optional();

const feed = {
  do: done('feed', 'Give feed.'),
  feed: id('Feed of the library.'),
  amount: mass('Mass of the feed as given.', '0.15 g', '0.1 mg', '5 kg'),
  place,
  at: timeOfDay(
    'Time of day at which it is given: those awake then have it first. As the day begins and for all alike when left out.',
  ).optional(),
};
const topOff = { do: done('top-off', 'Fill up to the level with the top-off water.') };
const waterChange = {
  do: done('water-change', 'Replace part of the water.'),
  share: share('Part of the water replaced.', '20 %'),
  water: id('Water of the library, or one of your own from `waters`.'),
};
const trim = {
  do: done('trim', 'Cut plants back.'),
  keep: share('Cover that is left standing, of the pool or of the ground of each planting.', '40 %'),
  plants: z
    .enum(['submerged', 'floating', 'emersed', 'moss', 'land'])
    .describe(
      'Which plants are cut: submerged, floating, emersed (in wet ground), moss or land; submerged ones when left out.',
    )
    .optional(),
  zone: id('Zone in which moss or land plants are cut; everywhere when left out.').optional(),
  cuttings: z
    .enum(['taken', 'left'])
    .describe('Whether cuttings are taken out or left to rot; taken when left out.')
    .optional(),
};

const every = {
  every: days('Days from one time to the next.', '3 d', '0.25 d', '1000 d'),
  after: days('When it is first done, after the start.', '2 d').optional(),
  until: days(
    'Last day on which it may be done, after the start; on to the end when left out.',
    '60 d',
  ).optional(),
};
const once = { after: days('When it is done, after the start.', '60 d') };

const animals = {
  species: id('Species, as listed under animals.'),
  adults: count('Adults.', 10_000).optional(),
  juveniles: count('Young.', 10_000).optional(),
};

const removal = {
  do: done('remove-animals', 'Take animals out.'),
  ...animals,
  finds: share(
    'Part of those there that a bait or a trap finds each time; all, up to the numbers given, when left out.',
    '30 %',
  ).optional(),
};

function chosen<const T extends readonly [z.core.$ZodTypeDiscriminable, ...z.core.$ZodTypeDiscriminable[]]>(
  options: T,
  words: readonly string[],
  meaning: string,
) {
  return z
    .discriminatedUnion('do', options, {
      error: () => said('does not say what is done', `Give the key 'do' with ${oneOf(words)}.`),
    })
    .describe(meaning);
}

const ROUTINES = ['feed', 'top-off', 'water-change', 'trim', 'remove-animals'] as const;
const ACTIONS = [...ROUTINES, 'add-animals', 'add-carbonate', 'add-litter'] as const;

export const routineSchema = chosen(
  [
    keys({ ...feed, ...every }, 'Feeding.'),
    keys({ ...topOff, ...every }, 'Top-off.'),
    keys({ ...waterChange, ...every }, 'Water change.'),
    keys({ ...trim, ...every }, 'Trimming.'),
    keys({ ...removal, ...every }, 'Animals taken out again and again, up to so many each time.'),
  ],
  ROUTINES,
  'Care that repeats.',
);

export const actionSchema = chosen(
  [
    keys({ ...feed, ...once }, 'Feeding once.'),
    keys({ ...topOff, ...once }, 'Top-off once.'),
    keys({ ...waterChange, ...once }, 'Water change once.'),
    keys({ ...trim, ...once }, 'Trimming once.'),
    keys({ do: done('add-animals', 'Bring animals in.'), ...animals, ...once }, 'Animals added later.'),
    keys({ ...removal, ...once }, 'Animals taken out.'),
    keys(
      {
        do: done('add-carbonate', 'Put carbonate into the water.'),
        material: id('Carbonate of the library.'),
        mass: mass('Dry mass.', '50 g'),
        grain: length(
          'Grain diameter, when it is not that of the library.',
          '4 mm',
          '0.01 mm',
          '30 cm',
        ).optional(),
        ...once,
      },
      'Carbonate added later.',
    ),
    keys(
      {
        do: done('add-litter', 'Put leaves into the water or onto the land.'),
        material: id('Litter of the library.'),
        mass: mass('Dry mass.', '10 g'),
        place,
        ...once,
      },
      'Litter added later.',
    ),
  ],
  ACTIONS,
  'Care done once.',
);

export type RoutineContent = z.output<typeof routineSchema>;
export type ActionContent = z.output<typeof actionSchema>;
