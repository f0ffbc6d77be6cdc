import { requestProblems } from './check-request.ts';
import { EVEN, type Fit, fitDoses, type Preference } from './fit-doses.ts';
import { spoonMeasure, waterParts } from './measures.ts';
import { finished, mixedNew, mixModel, moles, weighed } from './mix-model.ts';
import { mixingSteps } from './mixing-steps.ts';
import type { Recipe, RecipeWater, SaltDose, TargetResult } from './recipe.ts';
import { recipeRemarks } from './recipe-remarks.ts';
import { quantityIn, recipeWater } from './recipe-water.ts';
import type { RecipeRequest } from './request.ts';
import { whyUndissolved } from './what-dissolves.ts';
import { whyMissed } from './why-missed.ts';

/** A share or a salt [g/L] below which a recipe is better without it, if it fits as well. */
const TRIFLE = { share: 0.01, salt: 4e-4 };
/** What leaving trifles out may cost in misfit [1]. */
const WORTH = 0.02;

/** The request without waters and salts of which only a trifle is used. */
function withoutTrifles(request: RecipeRequest, { doses }: Fit): RecipeRequest {
  const waters = request.waters.filter(
    ({ least = 0 }, k) => least > 0 || doses.shares[k]! === 0 || doses.shares[k]! >= TRIFLE.share,
  );
  const salts = request.salts.filter((salt, k) => {
    const amount = doses.salts[k]!;
    return amount === 0 || weighed(amount, salt) >= TRIFLE.salt;
  });
  return { ...request, waters, salts };
}

function settled(request: RecipeRequest, like: Preference): { request: RecipeRequest; fit: Fit } {
  const fit = fitDoses(request, like);
  const plain = withoutTrifles(request, fit);
  const same = plain.waters.length === request.waters.length && plain.salts.length === request.salts.length;
  if (same || requestProblems(plain).length > 0) return { request, fit };
  const refit = fitDoses(plain, like);
  return refit.misfit <= fit.misfit + WORTH ? { request: plain, fit: refit } : { request, fit };
}

function saltDoses({ salts, volume }: RecipeRequest, { doses }: Fit): SaltDose[] {
  return salts.flatMap((salt, k) => {
    const amount = doses.salts[k]!;
    if (!(amount > 0)) return [];
    const concentration = weighed(amount, salt);
    const mass = concentration * volume;
    const spoons = spoonMeasure(mass, salt.bulkDensity);
    const { id, name, formula } = salt;
    const leastWater = mass / salt.solubility;
    return [{ id, name, formula, mass, concentration, leastWater, ...(spoons ? { spoons } : {}) }];
  });
}

/** The water with each salt as its spoons hold it; weighed where there are none. */
function waterBySpoon(request: RecipeRequest, { doses }: Fit, salts: readonly SaltDose[]): RecipeWater {
  const bySpoon = Float64Array.from(request.salts, (salt) => {
    const dose = salts.find(({ id }) => id === salt.id);
    return dose ? moles((dose.spoons?.mass ?? dose.mass) / request.volume, salt) : 0;
  });
  return recipeWater(finished(mixModel(request), { shares: doses.shares, salts: bySpoon }), request);
}

/**
 * How to make a water that comes nearest to what is asked: litres of each water, grams and level spoons of each
 * salt, the steps, the water in full, and why what is missed cannot be reached. Also for a top-off or a change: see
 * `kept`, what is there already and stays.
 * @param like small prices that choose among recipes that fit alike
 * @throws RangeError naming place and mend when the request cannot be; `requestProblems` finds these first.
 * @source lawson-hanson-1974 for the least squares; derived: mass and charge balance, see `fitDoses`, `recipeWater`
 */
export function solveRecipe(asked: RecipeRequest, like: Preference = EVEN): Recipe {
  const [wrong] = requestProblems(asked);
  if (wrong) throw new RangeError(`${wrong.path.join('.')}: ${wrong.message}. ${wrong.mend}`);
  const { request, fit } = settled(asked, like);
  const mixed = request.kept ? Math.max(0, request.volume - request.kept.volume) : request.volume;
  const salts = saltDoses(request, fit);
  const bySpoon = waterBySpoon(request, fit, salts);
  const targets = asked.targets.map((target): TargetResult => {
    const { quantity } = target;
    const value = quantityIn(fit.water, quantity);
    const missed = whyMissed(asked, target, value);
    const why = missed.length > 0 ? missed : whyUndissolved(request, quantity, salts);
    const { weight: _, ...limits } = target;
    return { ...limits, value, valueBySpoon: quantityIn(bySpoon, quantity), met: why.length === 0, why };
  });
  const made = {
    volume: request.volume,
    mixed,
    waters: waterParts(request.waters, fit.doses.shares, mixed),
    salts,
    water: fit.water,
    ...(mixed > 0 ? { mixWater: recipeWater(mixedNew(mixModel(request), fit.doses), request) } : {}),
    waterBySpoon: bySpoon,
    targets,
    misfit: fit.misfit,
  };
  return { ...made, steps: mixingSteps(request, made), remarks: recipeRemarks(request, made) };
}
