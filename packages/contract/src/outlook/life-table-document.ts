import { z } from 'zod';

const part = z.number().min(0).max(1);
const middle = z.object({ q10: z.number(), q50: z.number(), q90: z.number() });

/** What `shoreglass life --animal --json` prints: the engine's LifeTable and its LifeSpread. */
export const lifeTableSchema = z.object({
  species: z.string(),
  temperature: z.number().describe('Of water and air [°C].'),
  rows: z
    .array(
      z.object({
        age: z.number().describe('Since release from egg or pouch [d].'),
        alive: part.describe('Part of the newborns alive.'),
        young: z.number().describe('Released so far by a female that lives so long.'),
        length: z.number().optional().describe('Of the living [mm].'),
      }),
    )
    .describe('Every day from 0 on.'),
  maturity: z.number().optional().describe('Age at puberty [d].'),
  firstYoung: z.number().optional().describe('Age at which the first young are released [d].'),
  clutch: z.number().describe('Eggs of a female in a brood interval.'),
  renewal: z
    .object({
      netReproduction: z.number().describe('Young per newborn in a whole life, R0.'),
      growthRate: z.number().describe('By the Euler-Lotka equation [1/d].'),
      generationTime: z.number().describe('ln R0 over the growth rate [d].'),
      cohortTime: z.number().describe('Mean age of mothers over the births of a cohort [d].'),
    })
    .optional()
    .describe('Left out when nobody is born.'),
  doubling: z.number().optional().describe('Days in which numbers double; left out when they do not grow.'),
  medianAge: z.number().optional().describe('By which half have died [d].'),
  structure: z
    .object({
      growth: z.number().describe('Of numbers in a day.'),
      stable: z.array(part).describe('Parts of a settled population: young, adults.'),
      worth: z.array(z.number()).describe('What one of each is worth to later numbers, the young 1.'),
      elasticity: z.array(z.array(z.number())).describe('Relative change of growth by that of each element.'),
      damping: z.number().optional(),
    })
    .optional()
    .describe('Left out when nobody is born.'),
  spread: z
    .object({
      draws: z.number(),
      breeding: part.describe('Part of the draws in which anybody is born.'),
      growing: part.describe('Part of the draws in which numbers grow.'),
      firstYoung: middle.optional().describe('[d]'),
      doubling: middle.optional().describe('[d]'),
      clutch: middle,
    })
    .describe('Over draws of what is believed of the traits: four of five lie from q10 to q90.'),
  lineDiesOut: part.describe('Chance that the line of one female newborn dies out.'),
});
