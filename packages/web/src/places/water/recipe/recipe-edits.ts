import {
  DISSOLVED_IDS,
  DISSOLVED_MASS,
  type DissolvedId,
  type Recipe,
  type RecipeRequest,
} from '@shoreglass/engine';
import type { Edit, Shelf } from '../../../worker/messages.ts';
import { gramsText, litresText } from './recipe-words.ts';

/** What the finished water is to be in the file. */
export type RecipeUse = 'fill' | 'top-off';

interface SavedRecipe {
  readonly recipe: Recipe;
  readonly waters: RecipeRequest['waters'];
  readonly shelf: Pick<Shelf, 'own'>;
  /** ISO date on which it was worked out. */
  readonly on: string;
  readonly use: RecipeUse;
}

/** Ions that are written even when there are none, so that the file infers nothing. */
const ALWAYS: readonly DissolvedId[] = ['calcium', 'magnesium', 'sodium', 'potassium', 'chloride', 'sulfate'];

/** The edits that put a recipe's water among the file's own and have it used; the id it is given. */
export function recipeEdits(saved: SavedRecipe): { readonly id: string; readonly edits: readonly Edit[] } {
  const { shelf, use } = saved;
  const id = freshId(shelf.own);
  const entry = waterEntry(id, saved);
  const added: Edit =
    shelf.own.length === 0
      ? { path: ['waters'], value: [entry] }
      : { path: ['waters', shelf.own.length], value: entry };
  return { id, edits: [added, { path: ['water', use], value: id }] };
}

function waterEntry(id: string, { recipe, waters, on }: SavedRecipe): Record<string, string> {
  const composition = recipe.water.composition;
  const ions = DISSOLVED_IDS.flatMap((ion): [string, string][] => {
    const milligrams = (composition[ion] ?? 0) * DISSOLVED_MASS[ion];
    if (milligrams < 5e-4 && !ALWAYS.includes(ion)) return [];
    return [
      [ion === 'dissolvedOrganicCarbon' ? 'organic-carbon' : ion, `${Number(milligrams.toFixed(3))} mg/L`],
    ];
  });
  return {
    id,
    name: `Mixed water, ${id.replace('mixed-', 'recipe ')}`,
    source: sourceLine(recipe, on),
    origin: originOf(recipe, waters),
    ...Object.fromEntries(ions),
  };
}

/** "Recipe of 2026-11-25: 36.0 L distilled; 4.10 g gypsum (CaSO4.2H2O) in 48.0 L" */
function sourceLine({ waters, salts, volume }: Recipe, on: string): string {
  const poured = waters.map((water) => `${litresText(water.volume)} ${water.name}`).join(', ');
  const weighed = salts
    .map(({ mass, name, formula }) => `${gramsText(mass)} ${name} (${formula})`)
    .join(', ');
  const line = `Recipe of ${on} for ${litresText(volume)}: ${[poured, weighed].filter(Boolean).join('; ')}`;
  return line.replaceAll('\u00a0', ' ').slice(0, 590);
}

/** Where the most telling part comes from: any tap makes it tap water, with its cautions. */
function originOf({ waters: parts }: Recipe, waters: RecipeRequest['waters']): string {
  const kinds = parts.map(({ id }) => waters.find((water) => water.id === id)?.kind);
  if (kinds.includes('tap')) return 'tap';
  return kinds.includes('rain') ? 'rain' : 'pure';
}

function freshId(own: readonly string[]): string {
  for (let number = 1; ; number++) if (!own.includes(`mixed-${number}`)) return `mixed-${number}`;
}
