import { SLOWING_CAUSES, type SlowingCause } from '../life/sublethal.ts';
import { AMPLE_ENTRY, BLOCK_DAYS, type BookShape, POPULATION_ENTRIES } from '../run/block-book.ts';
import { capital } from './capital.ts';

/** What slowed a population over some blocks of a book: its ample food, and what each cause took of that and of eggs [mol C]. */
export interface Slowed {
  ample: number;
  readonly taken: Float64Array;
}

/** Nothing eaten, nothing taken. `derived`. */
export function nothingSlowed(): Slowed {
  return { ample: 0, taken: new Float64Array(SLOWING_CAUSES.length) };
}

/** Adds what slowed a population (by position) in a row of the book [mol C]. `derived`. */
export function addSlowed(into: Slowed, row: Float64Array, shape: BookShape, population: number): void {
  const at = shape.populationOffset + population * POPULATION_ENTRIES + AMPLE_ENTRY;
  into.ample += row[at]!;
  for (let cause = 0; cause < into.taken.length; cause += 1)
    into.taken[cause] = into.taken[cause]! + row[at + 1 + cause]!;
}

/** What a cause took of food and eggs over a stretch, over its ample food [1]. */
export interface SlowingShare {
  readonly cause: SlowingCause;
  readonly share: number;
}

/** Returns the cause that took most and its part of the ample food [1], or undefined where none took any. `derived`. */
export function worstSlowing({ ample, taken }: Slowed): SlowingShare | undefined {
  let worst = 0;
  for (let cause = 1; cause < taken.length; cause += 1) if (taken[cause]! > taken[worst]!) worst = cause;
  if (!(ample > 0 && taken[worst]! > 0)) return undefined;
  return { cause: SLOWING_CAUSES[worst]!, share: taken[worst]! / ample };
}

/** A cause that slowed a population over a run, and when it did so most. */
export interface SlowingSpell extends SlowingShare {
  /** Part taken in the worst ten days [0..1], and the days around them in which it took at least half as much. */
  readonly most: number;
  readonly fromDay: number;
  readonly toDay: number;
}

/** Parts from which a cause is worth telling: of the whole run, or of ten days. @source assumed */
const WORTH_TELLING = { run: 0.02, block: 0.1 } as const;

/**
 * Returns what slowed a population over a whole run, largest first [parts of its ample food], causes worth telling only.
 * @param rows of the book of one run, `shape.rowLength` long each
 * @source derived: sums over the blocks of the book
 */
export function slowingSpells(
  rows: Float64Array,
  shape: BookShape,
  population: number,
  days: number,
): SlowingSpell[] {
  const blocks: Slowed[] = [];
  const whole = nothingSlowed();
  for (let at = 0; at < rows.length; at += shape.rowLength) {
    const row = rows.subarray(at, at + shape.rowLength);
    const block = nothingSlowed();
    addSlowed(block, row, shape, population);
    addSlowed(whole, row, shape, population);
    blocks.push(block);
  }
  return SLOWING_CAUSES.map((cause, k) => {
    const shares = blocks.map(({ ample, taken }) => (ample > 0 ? taken[k]! / ample : 0));
    return { cause, share: whole.ample > 0 ? whole.taken[k]! / whole.ample : 0, ...spellOf(shares, days) };
  })
    .filter(({ share, most }) => share >= WORTH_TELLING.run || most >= WORTH_TELLING.block)
    .sort((a, b) => b.share - a.share);
}

/** The worst block and the days around it with at least half of its part. */
function spellOf(shares: readonly number[], days: number): Pick<SlowingSpell, 'most' | 'fromDay' | 'toDay'> {
  const most = Math.max(0, ...shares);
  const worst = shares.indexOf(most);
  let [first, last] = [worst, worst];
  while (first > 0 && shares[first - 1]! >= most / 2) first -= 1;
  while (last + 1 < shares.length && shares[last + 1]! >= most / 2) last += 1;
  return { most, fromDay: first * BLOCK_DAYS, toDay: Math.min(days, (last + 1) * BLOCK_DAYS) - 1 };
}

/** The causes as they stand behind what they do. */
const FOR: Readonly<Record<SlowingCause, string>> = {
  'lack of oxygen': 'for want of oxygen',
  ammonia: 'because of ammonia',
  nitrite: 'because of nitrite',
  nitrate: 'because of nitrate',
  copper: 'because of copper',
};

const percent = (part: number): string => `${Math.max(1, Math.round(100 * part))} %`;

/** Part of appetite lost from which growth is slow rather than somewhat slower [1]. @source assumed */
const SLOW = 0.15;

/** "grow slowly and lay few eggs for want of oxygen", or what they did, by how much was lost. `derived`. */
function slowedWords({ cause, share }: SlowingShare, tense: 'now' | 'before' = 'now'): string {
  const [grow, lay] = tense === 'now' ? ['grow', 'lay'] : ['grew', 'laid'];
  const how =
    share >= SLOW ? `${grow} slowly and ${lay} few eggs` : `${grow} somewhat slower and ${lay} fewer eggs`;
  return `${how} ${FOR[cause]}`;
}

/** The same as a sentence beside what happens to a population: of those that die out, what was before. `derived`. */
export function slowedSentence(slowed: SlowingShare, diesOut: boolean): string {
  return diesOut ? `Before, they ${slowedWords(slowed, 'before')}.` : `They ${slowedWords(slowed)}.`;
}

/** A sentence for people about a cause that slowed a population. `derived`. */
export function slowingSentence(name: string, spell: SlowingSpell): string {
  const { share, most, fromDay, toDay } = spell;
  const words = slowedWords({ ...spell, share: Math.max(share, most / 2) });
  const run = `${capital(name)} ${words}: over the run that costs them ${percent(share)} of what they could eat and lay`;
  return most > 1.25 * share
    ? `${run}, most from day ${fromDay} to ${toDay} (up to ${percent(most)}).`
    : `${run}.`;
}
