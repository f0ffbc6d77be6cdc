import type { Action } from '../plan/care.ts';
import type { ChangeLimit } from '../plan/change-limit.ts';
import type { Plan } from '../plan/plan.ts';
import { changeLimits } from './animal-change-limits.ts';
import { bufferPiece } from './buffer-piece.ts';
import type { BufferOption, BufferQuestion } from './buffer-question.ts';
import type { Part } from './buffer-search.ts';
import type { PlanChange, TrialOrder, TrialRun } from './trial.ts';

const WATCHED = ['pH', 'KH', 'conductivity'] as const;
/** Days at the start looked at, and most portions tried. @source assumed */
const LONGEST = 40;
const MOST_PORTIONS = 16;

/** First day on which any animal lives here; infinite where none ever does. */
function firstInhabited({ populations, actions }: Plan): number {
  if (populations.some(({ founders }) => founders.some(({ count }) => count > 0))) return 0;
  return Math.min(
    Number.POSITIVE_INFINITY,
    ...actions.map((action) => (action.kind === 'add animals' ? action.day : Number.POSITIVE_INFINITY)),
  );
}

/** How often the fastest daily step that the buffer makes from a day on exceeds the limits: above 1 it is too fast. */
function haste(
  kept: TrialRun,
  bare: TrialRun,
  { limits, from }: { readonly limits: readonly ChangeLimit[]; readonly from: number },
): number {
  let worst = 0;
  for (const [s, id] of WATCHED.entries()) {
    const limit = limits.find(({ quantity }) => quantity === id);
    if (!limit) continue;
    const own = kept.series[s]!;
    const other = bare.series[s]!;
    for (let day = from; day < own.length; day += 1) {
      const before = day > 0 ? own[day - 1]! - other[day - 1]! : 0;
      const step = Math.abs(own[day]! - other[day]! - before);
      const most = id === 'conductivity' ? limit.perDay * other[day]! : limit.perDay;
      worst = Math.max(worst, step / most);
    }
  }
  return worst;
}

/** The mass in equal portions on following days; the first goes in as a piece, the others as work done. */
function inPortions(
  { mass, grain }: Pick<BufferOption, 'mass' | 'grain'>,
  count: number,
  offer: BufferQuestion['offers'][number],
): PlanChange {
  const piece = bufferPiece(offer, mass / count, grain);
  const minerals = [
    { mineral: 'calcite', amount: piece.contents.carbonateSolid ?? 0 },
    { mineral: 'aragonite', amount: piece.contents.aragoniteSolid ?? 0 },
  ] as const;
  const present = minerals.filter(({ amount }) => amount > 0);
  const laterDays = Array.from({ length: count - 1 }, (_, i) => i + 1);
  return {
    pieces: [piece],
    actions: laterDays.flatMap((day) =>
      present.map((each): Action => ({ kind: 'add carbonate', ...each, grain, day })),
    ),
  };
}

/**
 * Portions of a buffer, a day apart, such that in the expected run no day's change of pH, KH or conductivity that it
 * makes exceeds what the animals' limits allow; each number of portions tried is run. Days before the first animal
 * lives here do not count.
 * @source derived
 */
export function* portioned(
  option: Pick<BufferOption, 'mass' | 'grain' | 'material'>,
  { plan, question }: { readonly plan: Plan; readonly question: BufferQuestion },
): Part<Pick<BufferOption, 'portions' | 'gentle'>> {
  const offer = question.offers.find(({ material }) => material === option.material)!;
  const felt = { limits: changeLimits(plan), from: firstInhabited(plan) };
  const days = Math.min(question.days, LONGEST);
  const order = (change: PlanChange): TrialOrder => ({
    change,
    days,
    seed: question.seed,
    members: ['expected'],
    series: WATCHED,
  });
  let count = 1;
  const [[bare] = [], [whole] = []] = yield [order({}), order(inPortions(option, 1, offer))];
  let fastest = haste(whole!, bare!, felt);
  while (fastest > 1 && count < MOST_PORTIONS) {
    count = Math.min(MOST_PORTIONS, Math.max(count + 1, Math.ceil(count * fastest)));
    const [[kept] = []] = yield [order(inPortions(option, count, offer))];
    fastest = haste(kept!, bare!, felt);
  }
  const portions = Array.from({ length: count }, (_, day) => ({ day, mass: option.mass / count }));
  return { portions, gentle: fastest <= 1 };
}
