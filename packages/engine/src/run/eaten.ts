import { EATEN_BY_FOOD } from '../cycle/grazing.ts';
import { type EatenByFood, nothingEaten, WATER_FOODS } from '../life/foods.ts';
import type { BookedReaction } from '../process/compose.ts';

/** Reads what animals ate in a day from the extents of the grazing reactions. */
export interface EatenReader {
  /** Marks the extents at the start of a day. */
  begin(extents: Float64Array): void;
  /** Amounts of the foods in the water eaten since then [mol], in the order of FOODS; the same arrays every day. */
  read(extents: Float64Array): EatenByFood;
}

interface FoodReactions {
  readonly carbon: number;
  readonly nitrogen: number;
  readonly phosphorus: number;
  /** Amounts per unit of extent. */
  readonly nitrogenShare: number;
  readonly phosphorusShare: number;
  /** What is eaten with it: its reaction and what a unit of it holds. */
  readonly alongside?: {
    readonly carbon: number;
    readonly nitrogenShare: number;
    readonly phosphorusShare: number;
  };
}

function reactionsOf(reactions: readonly BookedReaction[]): (FoodReactions | undefined)[] {
  return WATER_FOODS.map((food) => {
    const { process = 'grazing', carbon, nitrogen, phosphorus, composition, alongside } = EATEN_BY_FOOD[food];
    // A process that the plan can never start was left out, and with it this food.
    if (process !== 'grazing' && !reactions.some((reaction) => reaction.process === process))
      return undefined;
    const position = (name: string): number => {
      const at = reactions.findIndex((reaction) => reaction.process === process && reaction.name === name);
      if (at < 0) throw new Error(`no reaction of ${process} is named ${name}`);
      return at;
    };
    return {
      carbon: position(carbon),
      nitrogen: position(nitrogen ?? carbon),
      phosphorus: position(phosphorus ?? carbon),
      nitrogenShare: composition?.nitrogenPerCarbon ?? 1,
      phosphorusShare: composition?.phosphorusPerCarbon ?? 1,
      ...(alongside
        ? {
            alongside: {
              carbon: position(alongside.carbon),
              nitrogenShare: alongside.composition.nitrogenPerCarbon,
              phosphorusShare: alongside.composition.phosphorusPerCarbon,
            },
          }
        : {}),
    };
  });
}

/** Returns a reader for a system. @throws Error when a grazing reaction is missing. `derived`. */
export function createEatenReader(reactions: readonly BookedReaction[]): EatenReader {
  const foods = reactionsOf(reactions);
  const start = new Float64Array(reactions.length);
  const eaten = nothingEaten();
  return {
    begin(extents) {
      start.set(extents);
    },
    read(extents) {
      const moved = (reaction: number): number => extents[reaction]! - start[reaction]!;
      for (const [f, food] of foods.entries()) {
        if (!food) continue;
        eaten.carbon[f] = moved(food.carbon);
        eaten.nitrogen[f] = moved(food.nitrogen) * food.nitrogenShare;
        eaten.phosphorus[f] = moved(food.phosphorus) * food.phosphorusShare;
        const { alongside } = food;
        if (!alongside) continue;
        const more = moved(alongside.carbon);
        eaten.carbon[f] = eaten.carbon[f]! + more;
        eaten.nitrogen[f] = eaten.nitrogen[f]! + more * alongside.nitrogenShare;
        eaten.phosphorus[f] = eaten.phosphorus[f]! + more * alongside.phosphorusShare;
      }
      return eaten;
    },
  };
}
