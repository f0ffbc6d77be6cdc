import { FOOD_COUNT, FOOD_SPECS, PREY } from '../life/foods.ts';
import type { Plan } from '../plan/plan.ts';
import { BLOCK_DAYS, type BookShape, mealEntries } from '../run/block-book.ts';
import { MOLAR_MASS } from '../water/molar-masses.ts';

/** What one population eats of one food or of one other population, week by week. */
export interface FoodFlow {
  /** Population id of the eater. */
  readonly eater: string;
  /** Food of FOODS, or `population:<id>` for prey. */
  readonly food: string;
  /** As a keeper reads it. */
  readonly foodName: string;
  /** Carbon eaten a week [mg C/week], one value per week of the run. */
  readonly weekly: readonly number[];
  /** Mean over the run [mg C/week]. */
  readonly mean: number;
}

/** A run's book and the plan it ran. */
export interface FlowSource {
  readonly plan: Pick<Plan, 'populations'>;
  readonly shape: BookShape;
  readonly rows: Float64Array;
  readonly days: number;
}

const MILLIGRAMS = 1000 * MOLAR_MASS.carbon;

/** Spreads amounts booked in blocks of ten days evenly over weeks [unit of the blocks]. */
function weeksOf(blocks: readonly number[], days: number): number[] {
  const weeks = Array.from({ length: Math.ceil(days / 7) }, () => 0);
  for (let day = 0; day < days; day += 1) {
    const block = Math.floor(day / BLOCK_DAYS);
    const length = Math.min(BLOCK_DAYS, days - block * BLOCK_DAYS);
    const week = Math.floor(day / 7);
    weeks[week] = weeks[week]! + (blocks[block] ?? 0) / length;
  }
  return weeks;
}

/**
 * Who eats what, week by week, from the book of a run [mg C/week]; flows that never ran are left out. The last week
 * may be short and is brought to seven days.
 * @source derived: carbon eaten as booked by the life module, blocks of ten days spread evenly
 */
export function foodFlows({ plan, shape, rows, days }: FlowSource): FoodFlow[] {
  const { populations } = plan;
  const length = mealEntries(populations.length);
  const blocks = Math.floor(rows.length / shape.rowLength);
  const flows: FoodFlow[] = [];
  for (const [p, eater] of populations.entries()) {
    for (let entry = 0; entry < length; entry += 1) {
      if (entry === PREY) continue;
      const at = shape.mealOffset + p * length + entry;
      const booked = Array.from(
        { length: blocks },
        (_, block) => rows[block * shape.rowLength + at]! * MILLIGRAMS,
      );
      const total = booked.reduce((sum, amount) => sum + amount, 0);
      if (!(total > 0)) continue;
      const prey = entry >= FOOD_COUNT ? populations[entry - FOOD_COUNT]! : undefined;
      const weekly = weeksOf(booked, days);
      const last = weekly.length - 1;
      const rest = days - 7 * last;
      weekly[last] = (weekly[last]! * 7) / rest;
      flows.push({
        eater: eater.id,
        food: prey ? `population:${prey.id}` : FOOD_SPECS[entry]!.food,
        foodName: prey ? prey.name : FOOD_SPECS[entry]!.name,
        weekly,
        mean: (total * 7) / days,
      });
    }
  }
  return flows;
}
