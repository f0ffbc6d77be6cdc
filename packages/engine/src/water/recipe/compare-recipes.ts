import { readSalt } from '../salts.ts';
import { requestProblems } from './check-request.ts';
import { contributionTo } from './contribution.ts';
import { EVEN } from './fit-doses.ts';
import type { Recipe, RecipeChoice } from './recipe.ts';
import { LEAST_CALCIUM } from './recipe-remarks.ts';
import type { RecipeRequest } from './request.ts';
import { solveRecipe } from './solve-recipe.ts';

/** Price on salts that makes a recipe use the waters' own minerals first. */
const SPARING = { salts: 0.05, sodium: 0.06, potassium: 0.08 };

const lacksCalcium = ({ water }: Recipe) => water.composition.calcium < LEAST_CALCIUM * water.GH;
const metCount = ({ targets }: Recipe) => targets.filter(({ met }) => met).length;

/** Leaves out one salt after the other, the one least missed first, as long as as many targets are met. */
function fewestSalts(request: RecipeRequest, start: Recipe): Recipe {
  let best = start;
  for (;;) {
    const used = request.salts.filter(({ id }) => best.salts.some((dose) => dose.id === id));
    const leaner = used
      .map((dropped) => solveRecipe({ ...request, salts: used.filter((salt) => salt !== dropped) }))
      .filter((recipe) => metCount(recipe) >= metCount(start))
      .filter((recipe) => lacksCalcium(start) || !lacksCalcium(recipe))
      .sort((a, b) => a.misfit - b.misfit)[0];
    if (!leaner) return best;
    best = leaner;
  }
}

/** The request with its purest water alone. */
function purestOnly(request: RecipeRequest): RecipeRequest {
  const [purest] = [...request.waters].sort(
    (a, b) => contributionTo('conductivity', a.composition) - contributionTo('conductivity', b.composition),
  );
  return { ...request, waters: purest ? [purest] : [] };
}

function withoutSodium(request: RecipeRequest): RecipeRequest {
  return { ...request, salts: request.salts.filter(({ formula }) => !('sodium' in readSalt(formula).ions)) };
}

function alike(a: Recipe, b: Recipe): boolean {
  const near = (x: number, y: number) => Math.abs(x - y) <= 0.02 * Math.max(x, y, 1e-9);
  const waters =
    a.waters.length === b.waters.length &&
    a.waters.every(({ id, share }) => {
      const other = b.waters.find((each) => each.id === id);
      return other !== undefined && near(share, other.share);
    });
  return (
    waters &&
    a.salts.length === b.salts.length &&
    a.salts.every(({ id, mass }) => {
      const other = b.salts.find((each) => each.id === id);
      return other !== undefined && near(mass, other.mass);
    })
  );
}

/** The ways that can be tried, each solved when asked for. */
function ways(
  request: RecipeRequest,
  closest: Recipe,
): (Omit<RecipeChoice, 'recipe'> & { solve: () => Recipe | undefined })[] {
  const solved = (changed: RecipeRequest, like = EVEN) =>
    requestProblems(changed).length > 0 ? undefined : solveRecipe(changed, like);
  return [
    { id: 'closest', name: 'closest', about: 'Comes nearest to all targets.', solve: () => closest },
    {
      id: 'fewest-salts',
      name: 'fewest salts',
      about: 'Meets as many targets with as few packs to buy and weigh.',
      solve: () => fewestSalts(request, closest),
    },
    {
      id: 'no-sodium',
      name: 'no sodium added',
      about: 'Plants take up potassium; sodium only builds up with every top-off of this kind.',
      solve: () => solved(withoutSodium(request)),
    },
    {
      id: 'least-weighing',
      name: 'least weighing',
      about: "Uses the waters' own minerals first; follows every change of the tap or the rain.",
      solve: () => (request.waters.length > 1 ? solved(request, SPARING) : undefined),
    },
    {
      id: 'purest-water',
      name: 'purest water and salts',
      about: 'The same every time, whatever the supplier changes; most to weigh.',
      solve: () => solved(purestOnly(request)),
    },
  ];
}

/**
 * Several ways to make a water, the closest first; a way that comes out like an earlier one is left out.
 * @throws RangeError when the request cannot be, as `solveRecipe`.
 * @source derived: the same problem with salts or waters left out, or with a price on salts
 */
export function compareRecipes(request: RecipeRequest): RecipeChoice[] {
  const closest = solveRecipe(request);
  const choices: RecipeChoice[] = [];
  for (const { id, name, about, solve } of ways(request, closest)) {
    const recipe = solve();
    // To do without sodium may be worth a missed target; the other ways are then no ways.
    if (recipe && id !== 'no-sodium' && metCount(recipe) < metCount(closest)) continue;
    if (recipe && !choices.some((other) => alike(other.recipe, recipe)))
      choices.push({ id, name, about, recipe });
  }
  return choices;
}
