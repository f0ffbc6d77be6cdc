import { DISSOLVED_IDS, type WaterComposition } from '../../plan/water-composition.ts';
import { readSalt } from '../salts.ts';
import { contributionTo } from './contribution.ts';
import type { RecipeQuantity, RecipeRequest, RecipeSalt } from './request.ts';

/** Amounts of a mix: shares of the mixed water [0..1, sum 1] and salts in the finished water [mol/m3]. */
export interface Doses {
  readonly shares: Float64Array;
  readonly salts: Float64Array;
}

/**
 * Amount of a salt's formula in what is weighed [mol/m3].
 * @param concentration of the salt as weighed [kg/m3]
 * @source derived: molar mass and purity
 */
export function moles(concentration: number, salt: RecipeSalt): number {
  return (concentration * 1000 * (salt.purity ?? 1)) / readSalt(salt.formula).molarMass;
}

/**
 * What is weighed of a salt to bring an amount of its formula [kg/m3].
 * @param amount [mol/m3]
 * @source derived: molar mass and purity
 */
export function weighed(amount: number, salt: RecipeSalt): number {
  return (amount * readSalt(salt.formula).molarMass) / (1000 * (salt.purity ?? 1));
}

/** The request as columns: what a whole share of each water and a mol of each salt bring to the finished water. */
export interface MixModel {
  /** Part of the finished water that is mixed new [0..1]. */
  readonly fresh: number;
  readonly kept: Partial<WaterComposition>;
  readonly waters: readonly Partial<WaterComposition>[];
  readonly salts: readonly Partial<WaterComposition>[];
}

/** A request as columns: see `MixModel`. `derived`. */
export function mixModel({ volume, kept, waters, salts }: RecipeRequest): MixModel {
  return {
    fresh: kept ? 1 - kept.volume / volume : 1,
    kept: kept?.composition ?? {},
    waters: waters.map(({ composition }) => composition),
    salts: salts.map(({ formula }) => readSalt(formula).ions),
  };
}

/**
 * The finished water [mol/m3]: c = (1 - f) kept + f sum of shares + sum of salts.
 * @source derived: mass balance, volumes taken as additive and salts as taking up no room
 */
export function finished({ fresh, kept, waters, salts }: MixModel, doses: Doses): WaterComposition {
  return Object.fromEntries(
    DISSOLVED_IDS.map((id) => {
      let sum = (1 - fresh) * (kept[id] ?? 0);
      waters.forEach((water, k) => {
        sum += fresh * doses.shares[k]! * (water[id] ?? 0);
      });
      salts.forEach((salt, k) => {
        sum += doses.salts[k]! * (salt[id] ?? 0);
      });
      return [id, sum];
    }),
  ) as unknown as WaterComposition;
}

/**
 * What is mixed new by itself [mol/m3], all salts in it: c = sum of shares + sum of salts / f.
 * @source derived: mass balance, as `finished`
 */
export function mixedNew(model: MixModel, doses: Doses): WaterComposition {
  return finished(
    { ...model, fresh: 1, kept: {} },
    { shares: doses.shares, salts: doses.salts.map((amount) => amount / model.fresh) },
  );
}

/** What each unknown brings to a quantity, waters first, and what is there without any. */
export function row(model: MixModel, quantity: RecipeQuantity) {
  return {
    fixed: (1 - model.fresh) * contributionTo(quantity, model.kept),
    waters: model.waters.map((water) => model.fresh * contributionTo(quantity, water)),
    salts: model.salts.map((salt) => contributionTo(quantity, salt)),
  };
}
