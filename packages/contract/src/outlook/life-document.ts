import { CONFLICT_KINDS, DEATH_CAUSES, SLOWING_CAUSES } from '@shoreglass/engine';
import { z } from 'zod';
import { quantileSeries } from './ahead-document.ts';

const numbers = z.array(z.number()).readonly();
const spread = z.strictObject({ q10: z.number(), q50: z.number(), q90: z.number() });

const conflict = z
  .strictObject({
    kind: z.enum(CONFLICT_KINDS),
    who: z
      .array(z.string())
      .readonly()
      .describe('Species concerned, by id; the one to suffer or to blame first.'),
    severity: z.enum(['warning', 'note']),
    sentence: z.string(),
    source: z.string(),
    mend: z.string().describe('What would resolve it.'),
  })
  .describe('Something that does not go together.');

const capacity = z.strictObject({
  food: z.string(),
  foodName: z.string(),
  production: z.number().describe('Made or given a day when nobody eats it, mg C/d.'),
  eaters: z
    .array(
      z.strictObject({
        population: z.string(),
        name: z.string(),
        adults: z.number().min(0).describe('Full-grown adults it could keep alive.'),
        withYoung: z.number().min(0).describe('Adults of a population that holds its number on it.'),
        young: z.number().min(0).describe('Young of that population.'),
        breeds: z.boolean().describe('Whether they breed where it is all they have.'),
      }),
    )
    .readonly(),
});

const population = z.strictObject({
  id: z.string(),
  name: z.string(),
  species: z.string(),
  total: quantileSeries,
  stages: z.record(z.string(), quantileSeries),
  born: z.number().min(0).describe('Young released over the expected run.'),
  deaths: z
    .record(z.enum(DEATH_CAUSES), z.number().min(0))
    .describe('Deaths by cause over the expected run.'),
  slowed: z
    .array(
      z.strictObject({
        cause: z.enum(SLOWING_CAUSES),
        share: z
          .number()
          .min(0)
          .describe('Carbon of food not eaten and eggs not made, over that of ample food, in the run.'),
        most: z.number().min(0).describe('The same in the worst ten days.'),
        fromDay: z.number(),
        toDay: z.number().describe('Last of the days around these in which it takes at least half as much.'),
        sentence: z.string(),
      }),
    )
    .readonly()
    .describe('What of the water makes them eat less, grow slower and lay fewer eggs in the expected run.'),
});

const plant = z.strictObject({
  id: z.string(),
  name: z.string(),
  zone: z.string(),
  cover: quantileSeries.describe(
    'Cover of its ground; plants that feed from the water share that of their group.',
  ),
  heldBack: z
    .record(z.string(), z.number().min(0))
    .describe('By cause, what it lost over what good light alone would have let it grow; on land only.'),
});

const flow = z
  .strictObject({
    eater: z.string(),
    food: z.string().describe('A food, or population:<id> for prey.'),
    foodName: z.string(),
    weekly: numbers.describe('Carbon eaten, mg C/week, one value per week.'),
    mean: z.number().min(0).describe('Mean over the run, mg C/week.'),
  })
  .describe('Who eats what in the expected run.');

const rival = z
  .strictObject({
    food: z.string(),
    foodName: z.string(),
    loser: z.string(),
    taker: z.string(),
    dependence: z.number().min(0).max(1).describe("Part of the loser's meals when it had most of this food."),
    loserBefore: z.number().min(0).describe('Eaten by the loser in its best four weeks, mg C/week.'),
    loserAfter: z.number().min(0).describe('The same in the last four weeks.'),
    takerBefore: z.number().min(0),
    takerAfter: z.number().min(0),
    bestWeek: z.number().min(0),
    sentence: z.string(),
  })
  .describe('A food that one population took from another over the expected run.');

const addition = z.strictObject({
  species: z.string(),
  adults: z.number(),
  effects: z
    .array(
      z.strictObject({
        series: z.string(),
        without: spread,
        with: spread,
        difference: spread.describe('With less without, run by run.'),
        course: numbers.describe('Median difference day by day.'),
        courseLow: numbers.describe('Difference day by day that one run in ten stays below.'),
        courseHigh: numbers.describe('Difference day by day that one run in ten exceeds.'),
      }),
    )
    .readonly(),
});

const waterLeaving = z.strictObject({
  series: z.enum(['unionisedAmmonia', 'nitrite', 'oxygenLow', 'pH', 'KH']),
  side: z.enum(['low', 'high']),
  limit: z.number().describe('In the unit of the series.'),
  owner: z.string().describe('Who asks for it.'),
  day: z.number().describe('Of the trial, from 0.'),
});

const feeding = z.strictObject({
  feed: z.string(),
  feedName: z.string(),
  mass: z.number().min(0).describe('Each time, kg.'),
  everyDays: z.number(),
  onLand: z.boolean(),
  holds: z.boolean(),
  clean: z
    .boolean()
    .describe(
      'Whether ammonia, nitrite and oxygen stay in band, and pH and carbonate hardness as far as they do without the feed.',
    ),
  advised: z.boolean().describe('Whether those wanted live on with this dose.'),
  leaves: z
    .exactOptional(waterLeaving.extend({ mass: z.number().describe('That dose, kg.') }))
    .describe(
      'Where no dose holds, or none reaches it from the animals of the file: what is left first with the least dose that takes the water out of band.',
    ),
  leftUnfed: z
    .exactOptional(waterLeaving)
    .describe('Limit of pH or carbonate hardness that the water leaves without the feed too.'),
  hour: z.exactOptional(z.number().describe('Of the day at which it is given.')),
  populations: z
    .array(
      z.strictObject({
        id: z.string(),
        target: z.number(),
        adults: z.number().describe('In the last part of the trial that began with the target.'),
        atEnd: z.number().describe('On the last day of that trial.'),
        fromPlan: z.number().describe('The same from the animals the file begins with.'),
        reachedOn: z.exactOptional(
          z.number().describe('Day on which these reach four fifths of the target.'),
        ),
      }),
    )
    .readonly(),
  ammonia: z.number().describe('Highest un-ionised ammonia of the trial, mg N/L.'),
  nitrite: z.number().describe('Highest nitrite of the trial, mg N/L.'),
  oxygen: z.number().describe('Lowest oxygen of the trial, mg/L.'),
  trials: z.number().describe('Runs made in looking for the dose.'),
  chosenBy: z
    .enum(['half of the runs drawn', 'fewer of the runs drawn', 'expected run'])
    .describe(
      'Whether half of the runs drawn met the targets, as aimed at, or with any dose fewer, or none was drawn.',
    ),
  heldIn: z
    .strictObject({
      held: z.int().nonnegative(),
      runs: z.int().positive(),
      share: z.number().min(0).max(1),
      low: z.number().min(0).max(1),
      high: z.number().min(0).max(1),
    })
    .describe(
      'Fresh runs, without part in the choice, in which the animals of the file meet the targets: how many of how many, as a share with its 90 % interval after Wilson.',
    ),
  sentences: z.array(z.string()).readonly(),
});

const pest = z.strictObject({
  species: z.string(),
  name: z.string(),
  answers: z
    .array(
      z.strictObject({
        kind: z.enum(['nothing', 'less feed', 'drier ground', 'bait', 'traps', 'hunter']),
        name: z.string(),
        hunter: z
          .exactOptional(z.strictObject({ id: z.string(), adults: z.number() }))
          .describe('The hunter that is put in, and how many of it.'),
        finds: z
          .exactOptional(z.number().min(0).max(1))
          .describe('Part of those there that the bait or the traps find each week.'),
        pest: spread.describe('Animals on the last day.'),
        course: z.array(z.number()).readonly().describe('Median number of animals, one value a day.'),
        courseLow: z.array(z.number()).readonly().describe('One run in ten has fewer.'),
        courseHigh: z.array(z.number()).readonly().describe('One run in ten has more.'),
        runs: z.int().positive(),
        gone: z.number().min(0).max(1).describe('Part of the runs in which none are left.'),
        others: z
          .array(
            z.strictObject({
              id: z.string(),
              name: z.string(),
              end: spread,
              course: z.array(z.number()).readonly(),
            }),
          )
          .readonly(),
      }),
    )
    .readonly(),
});

/** The living community as one document, as `life --json` prints it. */
export const lifeDocumentSchema = z.strictObject({
  enclosure: z.strictObject({ id: z.string(), name: z.string(), startDate: z.string() }),
  run: z.strictObject({
    days: z.number(),
    members: z.number(),
    seed: z.number(),
    engineVersion: z.string(),
  }),
  conflicts: z.array(conflict).readonly(),
  capacity: z.array(capacity).readonly(),
  populations: z.array(population).readonly(),
  plants: z.array(plant).readonly(),
  flows: z.array(flow).readonly(),
  rivals: z.array(rival).readonly(),
  addition: z.exactOptional(addition),
  feeding: z.exactOptional(feeding),
  pest: z.exactOptional(pest),
});
