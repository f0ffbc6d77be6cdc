import type { LifeTable } from '../community/life-table.ts';
import { log } from '../numerics/elementary.ts';
import type { CountFindings } from './count-findings.ts';
import { animalsText, changeText, daysText } from './count-words.ts';
import { type Overshoot, overshootOf } from './delayed-growth.ts';

/** Counts beside what the species does by itself with ample food. */
export interface BesideSpecies {
  /** Growth rate of the species by itself [1/d]; left out where nobody is born. */
  readonly alone?: number;
  /** How numbers would come to the limit of the counts, young breeding late; left out where no limit shows. */
  readonly overshoot?: Overshoot;
  readonly sentences: readonly string[];
}

/** How many times as fast as by itself counts may grow before animals added, or more of them showing, is the likelier. */
const FASTER = 1.5;

/** Loss of grown animals by a life table: one over their mean remaining life [1/d]. */
function lossOf({ rows, firstYoung }: LifeTable): number | undefined {
  if (firstYoung === undefined) return undefined;
  const alive = rows[firstYoung]?.alive ?? 0;
  const days = rows.slice(firstYoung).reduce((sum, row) => sum + row.alive, 0);
  return alive > 0 && days > 0 ? alive / days : undefined;
}

function overshootOfCounts({ limit }: CountFindings, table: LifeTable): Overshoot | undefined {
  const { firstYoung: maturity } = table;
  const loss = lossOf(table);
  const alone = table.renewal?.growthRate ?? 0;
  if (!limit?.shown || maturity === undefined || !(maturity > 0) || loss === undefined) return undefined;
  // Counts that grow faster than the species can tell of something else than its births.
  if (limit.rate.value > FASTER * alone) return undefined;
  return overshootOf({ rate: limit.rate.value, limit: limit.limit.value, loss, maturity });
}

function paceText(rate: number, alone: number, temperature: number): string {
  const best = `with ample food at ${Number(temperature.toFixed(1))} °C numbers would grow by ${changeText(alone)} a day, double in ${daysText(log(2) / alone)}`;
  if (rate <= 0) return `By itself ${best}: something here holds them down or takes them.`;
  const share = rate / alone;
  if (share > FASTER)
    return `By itself ${best}, slower than counted: were animals added, or do more of them show than at first?`;
  if (share > 0.7) return `By itself ${best}: those counted grow about as fast as they can.`;
  return `By itself ${best}; those counted grow at ${Math.round(100 * share)} % of that: food, room, warmth or who eats them holds them back.`;
}

function overshootText({ most, fewest, swings }: Overshoot, limit: number, firstYoung: number): string {
  const delay = `Young breed after ${daysText(firstYoung)}. If crowding holds back newborns only, those born before it was crowded still grow up`;
  if (swings)
    return `${delay}, and numbers would not rest at ${animalsText(limit)} but swing between ${animalsText(fewest)} and ${animalsText(most)}.`;
  if (most > 1.1 * limit)
    return `${delay}, and numbers would rise to ${animalsText(most)} before they come back to ${animalsText(limit)}.`;
  return `${delay}, but numbers would come to ${animalsText(limit)} without overshooting.`;
}

/**
 * Counts beside the life table of their species: how fast it grows by itself, and whether young that breed late make
 * numbers overshoot the limit that shows.
 * @param report what the counts tell
 * @param table of the species by itself with ample food
 * @throws RangeError when the table holds no such animal
 * @source gurney-blythe-nisbet-1980 for the delay; the comparison is derived
 */
export function besideSpecies(report: CountFindings, table: LifeTable): BesideSpecies {
  const alone = table.renewal?.growthRate;
  const overshoot = overshootOfCounts(report, table);
  const limit = report.limit?.limit.value ?? 0;
  const rate = report.limit?.shown ? report.limit.rate.value : report.growth?.rate;
  return {
    ...(alone === undefined ? {} : { alone }),
    ...(overshoot ? { overshoot } : {}),
    sentences: [
      ...(alone !== undefined && alone > 0 && rate !== undefined && report.growth?.rateRange
        ? [paceText(rate, alone, table.temperature)]
        : []),
      ...(overshoot ? [overshootText(overshoot, limit, table.firstYoung ?? 0)] : []),
    ],
  };
}
