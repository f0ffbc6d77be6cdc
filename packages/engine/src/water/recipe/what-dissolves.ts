import { mixModel, row } from './mix-model.ts';
import { nameList } from './name-list.ts';
import type { SaltDose } from './recipe.ts';
import type { RecipeQuantity, RecipeRequest } from './request.ts';
import { shortName } from './short-name.ts';

const litres = (volume: number): string => `${(1000 * volume).toFixed(1)} L`;

/** Where salts are stirred in [m3]: what is mixed new, else what stays, else all of it. `derived`. */
export function roomToDissolve({ volume, kept }: RecipeRequest): number {
  const mixed = kept ? Math.max(0, volume - kept.volume) : volume;
  return mixed > 0 ? mixed : (kept?.volume ?? volume);
}

/**
 * Doses that need more water than there is, by solubility in pure water; none of carbonates, which dissolve as carbon
 * dioxide lets them and have a remark of their own.
 * @param salts doses of a recipe for the request
 * @source derived: least water of each dose [m3] over the water it is stirred into
 */
export function tooMuchToDissolve(request: RecipeRequest, salts: readonly SaltDose[]): SaltDose[] {
  const room = roomToDissolve(request);
  return salts.filter(
    ({ id, leastWater }) =>
      leastWater > room &&
      request.salts.some((salt) => salt.id === id && salt.dissolving !== 'with carbon dioxide'),
  );
}

/**
 * Why a quantity is not reached although the amounts would do: one sentence, or none where all that brings it dissolves.
 * @param salts doses of the recipe
 * @source derived: as `tooMuchToDissolve`
 */
export function whyUndissolved(
  request: RecipeRequest,
  quantity: RecipeQuantity,
  salts: readonly SaltDose[],
): string[] {
  const brings = row(mixModel(request), quantity).salts;
  const stuck = tooMuchToDissolve(request, salts).filter(
    ({ id }) => brings[request.salts.findIndex((salt) => salt.id === id)]! > 1e-9,
  );
  if (stuck.length === 0) return [];
  const needs = stuck.map(({ name, leastWater }) => `${shortName(name)} (${litres(leastWater)})`);
  return [
    `What it takes does not dissolve in ${litres(roomToDissolve(request))}: ${nameList(needs)} ${stuck.length > 1 ? 'need' : 'needs'} more water; ask for less, or take a salt that dissolves better.`,
  ];
}
