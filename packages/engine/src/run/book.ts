import { FOOD_COUNT } from '../life/foods.ts';
import {
  AMPLE_ENTRY,
  BLOCK_DAYS,
  type BookShape,
  blockCount,
  bookShape,
  mealEntries,
  POPULATION_ENTRIES,
} from './block-book.ts';
import { CARE_TERMS, type CareTerm, WATER_TERMS, type WaterTerm } from './terms.ts';
import { STATE_COUNT, type World } from './world.ts';

/** Books what was moved by whom; see BookShape for the layout of `rows`. */
export interface Book {
  readonly shape: BookShape;
  readonly rows: Float64Array;
  /** The extents of the reactions in the block under way, for the integrator to add to. */
  extents(): Float64Array;
  /** Runs a change of the pools and books its effect on every state under a kind of care. */
  care(world: World, term: CareTerm, change: () => void): void;
  water(term: WaterTerm, volume: number): void;
  endDay(day: number, world: World): void;
}

/** Adds the births and deaths of a day, and what slowed each population. */
function bookAnimals({ life }: World, entries: Float64Array): void {
  for (let p = 0; p < life.populations.length; p += 1) {
    const { born, deaths, ampleCarbon, slowed } = life.day(p);
    const at = p * POPULATION_ENTRIES;
    entries[at] = entries[at]! + born;
    for (let cause = 0; cause < deaths.length; cause += 1) {
      entries[at + 1 + cause] = entries[at + 1 + cause]! + deaths[cause]!;
    }
    const ample = at + AMPLE_ENTRY;
    entries[ample] = entries[ample]! + ampleCarbon;
    for (let cause = 0; cause < slowed.length; cause += 1)
      entries[ample + 1 + cause] = entries[ample + 1 + cause]! + slowed[cause]!;
  }
}

/** Adds what each population ate today, by food and by population. */
function bookMeals({ life }: World, entries: Float64Array): void {
  const count = life.populations.length;
  const length = mealEntries(count);
  for (let p = 0; p < count; p += 1) {
    const { eatenByFood } = life.day(p);
    for (let k = 0; k < FOOD_COUNT; k += 1)
      entries[p * length + k] = entries[p * length + k]! + eatenByFood[k]!;
    for (let q = 0; q < count; q += 1) {
      const at = p * length + FOOD_COUNT + q;
      entries[at] = entries[at]! + life.caught(p, q);
    }
  }
}

/** Adds what kept each planting on land back, and clears it. */
function bookPlants({ landPlants }: World, entries: Float64Array): void {
  if (!landPlants) return;
  const { heldBack } = landPlants;
  for (let k = 0; k < heldBack.length; k += 1) entries[k] = entries[k]! + heldBack[k]!;
  landPlants.clearHeldBack();
}

/** Returns an empty book for a run of `days` days. `derived`. */
export function createBook(days: number, reactions: number, populations: number, plantings = 0): Book {
  const shape = bookShape(reactions, STATE_COUNT, populations, plantings);
  const rows = new Float64Array(blockCount(days) * shape.rowLength);
  const before = new Float64Array(STATE_COUNT);
  let row = rows.subarray(0, shape.rowLength);
  let extents = row.subarray(0, reactions);
  const openBlock = (block: number): void => {
    row = rows.subarray(block * shape.rowLength, (block + 1) * shape.rowLength);
    extents = row.subarray(0, reactions);
  };
  return {
    shape,
    rows,
    extents: () => extents,
    care({ values }, term, change) {
      before.set(values.subarray(0, STATE_COUNT));
      change();
      const offset = shape.careOffset + CARE_TERMS.indexOf(term) * STATE_COUNT;
      for (let i = 0; i < STATE_COUNT; i += 1) row[offset + i] = row[offset + i]! + values[i]! - before[i]!;
    },
    water(term, volume) {
      const at = shape.waterOffset + WATER_TERMS.indexOf(term);
      row[at] = row[at]! + volume;
    },
    endDay(day, world) {
      bookAnimals(world, row.subarray(shape.populationOffset));
      bookMeals(world, row.subarray(shape.mealOffset));
      bookPlants(world, row.subarray(shape.plantOffset));
      if ((day + 1) % BLOCK_DAYS !== 0 && day + 1 !== days) return;
      for (let i = 0; i < STATE_COUNT; i += 1) row[shape.stateOffset + i] = world.values[i]!;
      row[shape.volumeOffset] = world.volume;
      if (day + 1 < days) openBlock(Math.floor((day + 1) / BLOCK_DAYS));
    },
  };
}
