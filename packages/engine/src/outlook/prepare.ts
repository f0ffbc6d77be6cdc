import { checkTraits, STAGES, type TraitValues } from '../life/traits.ts';
import { createRandom, type Random } from '../numerics/random.ts';
import type { Plan, Population } from '../plan/plan.ts';
import { type RunSetting, settingOf } from '../run/setting.ts';
import type { Draw } from '../run/world.ts';
import { drawParameters, drawPrior, medianParameters } from './draw.ts';

export interface OutlookOptions {
  /** Length of the run [days], 1 to 1500. */
  readonly days: number;
  /** Runs in the ensemble, 2 to 2000. */
  readonly members: number;
  readonly seed: number;
}

export interface PreparedOutlook {
  readonly plan: Plan;
  readonly options: OutlookOptions;
  readonly setting: RunSetting;
}

function requireWhole(name: string, value: number, least: number, most: number): void {
  if (!Number.isInteger(value) || value < least || value > most) {
    throw new RangeError(`${name} must be a whole number from ${least} to ${most}, not ${value}`);
  }
}

/** Returns what an outlook shares among its runs. @throws RangeError for options out of range. `derived`. */
export function prepareOutlook(plan: Plan, options: OutlookOptions): PreparedOutlook {
  requireWhole('days', options.days, 1, 1500);
  requireWhole('members', options.members, 2, 2000);
  requireWhole('seed', options.seed, 0, 4294967295);
  return { plan, options, setting: settingOf(plan, options.days, STAGES) };
}

const MAX_TRAIT_REDRAWS = 100;

function drawTraits({ id, traits }: Population, random: Random): TraitValues {
  let problem: unknown;
  for (let attempt = 0; attempt < MAX_TRAIT_REDRAWS; attempt += 1) {
    const values = Object.fromEntries(
      Object.entries(traits.priors).map(([key, prior]) => [
        key,
        drawPrior(prior, random.split(`${id}.${key}.${attempt}`)),
      ]),
    );
    try {
      return checkTraits(id, values);
    } catch (error) {
      problem = error;
    }
  }
  throw problem;
}

function mediansOf(priors: Population['traits']['priors']): Record<string, number> {
  return Object.fromEntries(Object.entries(priors).map(([key, prior]) => [key, prior.median]));
}

/** The draw of the expected run: medians, and means in births and deaths. `derived`. */
export function expectedDraw(plan: Plan): Draw {
  const traits = Object.fromEntries(
    plan.populations.map(({ id, traits: { priors } }) => [id, checkTraits(id, mediansOf(priors))]),
  );
  return { parameters: medianParameters(plan.priors), traits, demography: 'expected' };
}

/**
 * The draw of member `number`: it depends on the seed and the number alone, so members may be computed anywhere, in
 * any order. Traits that contradict each other are drawn again.
 * @source derived
 */
export function memberDraw(plan: Plan, seed: number, number: number): Draw {
  const random = createRandom(seed, `member ${number}`);
  return {
    parameters: drawParameters(plan.priors, random.split('parameters')),
    traits: Object.fromEntries(
      plan.populations.map((population) => [population.id, drawTraits(population, random.split('traits'))]),
    ),
    demography: random.split('demography'),
  };
}
