import { LAND_PLANT_ENTRIES } from '../cycle/land-stand.ts';
import { FOOD_COUNT } from '../life/foods.ts';
import { DEATH_CAUSES } from '../life/living-population.ts';
import { SLOWING_CAUSES } from '../life/sublethal.ts';
import { CARE_TERMS, WATER_TERMS } from './terms.ts';

/** Days summed into one block of the book. */
export const BLOCK_DAYS = 10;

/**
 * What was moved by whom, summed over blocks of ten days. Per block, in one row:
 * extents of the reactions, changes of each state by each kind of care, the states at the block's end,
 * water moved by each water term [m3], the water volume at the block's end [m3], per population its births, its deaths by
 * cause, its ample food and what the water took of it [mol C], per population what it ate of each food and of each
 * population [mol C], and per planting on land what kept it back, by cause, and what it could have grown [mol C].
 */
export interface BookShape {
  readonly reactions: number;
  readonly states: number;
  readonly rowLength: number;
  readonly careOffset: number;
  readonly stateOffset: number;
  readonly waterOffset: number;
  readonly volumeOffset: number;
  readonly populationOffset: number;
  readonly mealOffset: number;
  readonly populations: number;
  readonly plantOffset: number;
}

/** Where among the entries of a population stands its assimilation at ample food [mol C]; what each cause took of it follows. */
export const AMPLE_ENTRY = 1 + DEATH_CAUSES.length;
/** Entries a population takes: young released, deaths by cause, ample food and what slowed it, by cause. */
export const POPULATION_ENTRIES = AMPLE_ENTRY + 1 + SLOWING_CAUSES.length;

/** Entries a population's meals take: foods in the order of FOODS, then populations. `derived`. */
export function mealEntries(populations: number): number {
  return FOOD_COUNT + populations;
}

/** Entries a planting on land takes: causes, and what it could have grown. */
export const PLANTING_ENTRIES = LAND_PLANT_ENTRIES;

/** The layout of a row [counts]. `derived`: plain concatenation in the order of the interface. */
export function bookShape(reactions: number, states: number, populations: number, plantings = 0): BookShape {
  const careOffset = reactions;
  const stateOffset = careOffset + CARE_TERMS.length * states;
  const waterOffset = stateOffset + states;
  const volumeOffset = waterOffset + WATER_TERMS.length;
  const populationOffset = volumeOffset + 1;
  const mealOffset = populationOffset + populations * POPULATION_ENTRIES;
  const plantOffset = mealOffset + populations * mealEntries(populations);
  return {
    reactions,
    states,
    careOffset,
    stateOffset,
    waterOffset,
    volumeOffset,
    populationOffset,
    mealOffset,
    populations,
    plantOffset,
    rowLength: plantOffset + plantings * PLANTING_ENTRIES,
  };
}

/** Number of blocks that cover `days`. `derived`. */
export function blockCount(days: number): number {
  return Math.ceil(days / BLOCK_DAYS);
}
