import { exp, log } from '../numerics/elementary.ts';
import type { Random } from '../numerics/random.ts';
import type { Prior, PriorTable } from '../plan/prior.ts';
import type { ParameterTable } from '../process/compose.ts';

const MAX_REDRAWS = 200;

function rawDraw(prior: Prior, random: Random): number {
  switch (prior.kind) {
    case 'fixed':
      return prior.median;
    case 'normal':
      return prior.median + prior.spread * random.normal();
    case 'lognormal':
      return prior.median * exp(log(prior.spread) * random.normal());
    case 'uniform':
      return prior.min + (prior.max - prior.min) * random.uniform();
  }
}

/**
 * One draw from a prior, in the prior's own unit. Redraws until inside `min` to `max`.
 * @throws RangeError when 200 draws all fall outside, which means the prior contradicts its own range.
 * `derived`: rejection sampling of the truncated distribution.
 */
export function drawPrior(prior: Prior, random: Random): number {
  for (let attempt = 0; attempt < MAX_REDRAWS; attempt += 1) {
    const value = rawDraw(prior, random);
    if (value >= prior.min && value <= prior.max) return value;
  }
  throw new RangeError(
    `prior with median ${prior.median} and spread ${prior.spread} hardly ever falls inside ${prior.min} to ${prior.max}`,
  );
}

/** The median of every parameter, for the expected run. `derived`. */
export function medianParameters(priors: PriorTable): ParameterTable {
  return mapPriors(priors, (prior) => prior.median);
}

/**
 * One draw of every parameter. Each parameter has a stream of its own, named after it, so that adding or
 * removing one leaves the draws of all others as they were: two plans compared share their random numbers.
 */
export function drawParameters(priors: PriorTable, random: Random): ParameterTable {
  return mapPriors(priors, (prior, name) => drawPrior(prior, random.split(name)));
}

function mapPriors(priors: PriorTable, value: (prior: Prior, name: string) => number): ParameterTable {
  const table: Record<string, Record<string, number>> = {};
  for (const [owner, parameters] of Object.entries(priors)) {
    const row: Record<string, number> = {};
    for (const [key, prior] of Object.entries(parameters)) row[key] = value(prior, `${owner}.${key}`);
    table[owner] = row;
  }
  return table;
}
