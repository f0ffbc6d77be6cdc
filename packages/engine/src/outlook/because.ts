import { EATEN_BY_FOOD, type GrazedFood } from '../cycle/grazing.ts';
import { LAND_PLANT_CAUSES } from '../cycle/land-stand.ts';
import { DEATH_CAUSES } from '../life/living-population.ts';
import type { ReactionSystem } from '../process/compose.ts';
import { BLOCK_DAYS, type BookShape, PLANTING_ENTRIES, POPULATION_ENTRIES } from '../run/block-book.ts';
import { CARE_TERMS, WATER_TERMS } from '../run/terms.ts';
import { STATE_IDS } from '../variables/variables.ts';
import { addSlowed, type Slowed } from './slowing.ts';
import type { Subject } from './subject.ts';
import { termName } from './term-names.ts';

export interface Share {
  readonly term: string;
  readonly share: number;
}

/** Blocks looked at before a crossing: 30 days. */
const WINDOW_BLOCKS = 3;
const SMALLEST_SHARE = 0.05;
const MOST_TERMS = 4;

function add(totals: Map<string, number>, term: string, amount: number): void {
  totals.set(term, (totals.get(term) ?? 0) + amount);
}

function addReactions(
  totals: Map<string, number>,
  row: Float64Array,
  subject: Subject,
  system: ReactionSystem,
): void {
  const { start, index, coefficient, reactions } = system;
  for (const [r, reaction] of reactions.entries()) {
    let perExtent = 0;
    for (let e = start[r]!; e < start[r + 1]!; e += 1)
      perExtent += subject.weights[index[e]!]! * coefficient[e]!;
    if (perExtent !== 0) add(totals, termName(reaction.process), perExtent * row[r]!);
  }
}

/** Measure of the subject per m3 at the block's end. */
function concentration(row: Float64Array, subject: Subject, shape: BookShape): number {
  let amount = 0;
  for (let i = 0; i < STATE_IDS.length; i += 1) amount += subject.weights[i]! * row[shape.stateOffset + i]!;
  return amount / row[shape.volumeOffset]!;
}

function addCareAndWater(
  totals: Map<string, number>,
  row: Float64Array,
  subject: Subject,
  shape: BookShape,
): void {
  for (const [k, term] of CARE_TERMS.entries()) {
    let amount = 0;
    const offset = shape.careOffset + k * shape.states;
    for (let i = 0; i < shape.states; i += 1) amount += subject.weights[i]! * row[offset + i]!;
    if (amount !== 0) add(totals, term, amount);
  }
  if (!subject.concentrated) return;
  const level = concentration(row, subject, shape);
  for (const [w, term] of WATER_TERMS.entries()) {
    const volume = row[shape.waterOffset + w]!;
    if (volume !== 0) add(totals, term, -level * volume);
  }
}

/**
 * Adds what each term contributed to a subject over the 30 days up to `day` of one run [amount of the subject].
 * Water brought in dilutes and water lost concentrates: a volume dV adds -c dV to the amount per unchanged volume.
 * @source derived
 */
export function addContributions(
  totals: Map<string, number>,
  run: BookedRun,
  subject: Subject,
  day: number,
): void {
  forWindow(run, day, (row) => {
    addReactions(totals, row, subject, run.system);
    addCareAndWater(totals, row, subject, run.shape);
  });
}

/** Adds the water that came and went over the 30 days up to `day`, by how [m3, positive into the pool]. `derived`. */
export function addWaterMoved(totals: Map<string, number>, run: BookedRun, day: number): void {
  forWindow(run, day, (row) => {
    for (const [w, term] of WATER_TERMS.entries()) add(totals, term, row[run.shape.waterOffset + w]!);
  });
}

/** One member's book with what is needed to read it. */
export interface BookedRun {
  readonly rows: Float64Array;
  readonly shape: BookShape;
  readonly system: ReactionSystem;
}

/** Adds the deaths of a population (by position) by cause over the 30 days up to `day` [animals, negative]. `derived`. */
export function addDeaths(
  totals: Map<string, number>,
  run: BookedRun,
  population: number,
  day: number,
): void {
  forWindow(run, day, (row) => {
    const at = run.shape.populationOffset + population * POPULATION_ENTRIES + 1;
    for (const [cause, name] of DEATH_CAUSES.entries()) add(totals, name, -row[at + cause]!);
  });
}

/** Adds what slowed a population (by position) over the 30 days up to `day` [mol C]. `derived`. */
export function addSlowing(into: Slowed, run: BookedRun, population: number, day: number): void {
  forWindow(run, day, (row) => addSlowed(into, row, run.shape, population));
}

/** Adds what kept a planting on land (by position) back over the 30 days up to `day` [mol C, negative]. `derived`. */
export function addHeldBack(
  totals: Map<string, number>,
  run: BookedRun,
  planting: number,
  day: number,
): void {
  forWindow(run, day, (row) => {
    const at = run.shape.plantOffset + planting * PLANTING_ENTRIES;
    for (const [cause, name] of LAND_PLANT_CAUSES.entries()) add(totals, name, -row[at + cause]!);
  });
}

/** Foods that go by another name than their own. */
const FOOD_NAMES: Readonly<Partial<Record<GrazedFood, string>>> = {
  algae: 'attached algae',
  plants: 'submerged plants',
  litter: 'leaf litter',
  'dead plants': 'dead water plants',
};

/** Adds what all animals ate over the 30 days up to `day`, by food [mol C, positive]. `derived`. */
export function addFood(totals: Map<string, number>, run: BookedRun, day: number): void {
  forWindow(run, day, (row) => {
    for (const [food, { carbon }] of Object.entries(EATEN_BY_FOOD)) {
      const reaction = run.system.reactions.findIndex(({ name }) => name === carbon);
      if (reaction < 0) continue;
      add(totals, FOOD_NAMES[food as GrazedFood] ?? food, row[reaction] ?? 0);
    }
  });
}

/** Visits the rows of the book of the 30 days up to `day` of one run. `derived`. */
export function forWindow(run: BookedRun, day: number, visit: (row: Float64Array) => void): void {
  const last = Math.floor(day / BLOCK_DAYS);
  for (let block = Math.max(0, last - WINDOW_BLOCKS + 1); block <= last; block += 1) {
    const row = run.rows.subarray(block * run.shape.rowLength, (block + 1) * run.shape.rowLength);
    if (row.length < run.shape.rowLength) return;
    visit(row);
  }
}

/** Returns the terms that push up (direction 1) or down (-1), largest first, as shares of all that push so. `derived`. */
export function largestShares(totals: ReadonlyMap<string, number>, direction: 1 | -1): Share[] {
  const pushing = [...totals].filter(([, amount]) => amount * direction > 0);
  const sum = pushing.reduce((total, [, amount]) => total + Math.abs(amount), 0);
  return pushing
    .map(([term, amount]) => ({ term, share: Math.abs(amount) / sum }))
    .filter(({ share }) => share >= SMALLEST_SHARE)
    .sort((a, b) => b.share - a.share || (a.term < b.term ? -1 : 1))
    .slice(0, MOST_TERMS);
}
