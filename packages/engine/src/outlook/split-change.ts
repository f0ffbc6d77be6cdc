import type { ChangeLimit } from '../plan/change-limit.ts';
import type { Plan } from '../plan/plan.ts';
import { DISSOLVED_IDS, type WaterComposition } from '../plan/water-composition.ts';
import { convert } from '../units/convert.ts';
import { blended } from '../water/mixing.ts';
import { recipeWater } from '../water/recipe/recipe-water.ts';
import { CHANGE_UNITS, changeLimits } from './animal-change-limits.ts';
import type { ChangeStep, FeltWater, HeldWater, SplitChange, WaterProposal } from './change-limits.ts';

/** Most of the water replaced at a time, so that nobody is left dry and the filter stays wet. @source assumed */
const MOST_AT_ONCE = 0.5;
/** Beyond this share the enclosure is as good as emptied. @source assumed */
const MOST_IN_ALL = 0.95;
/** Steps are whole hundredths of the work. */
const PARTS = 100;
const LONGEST = 365;

type Air = Plan['room'];

/**
 * What animals feel of a water that stands in balance with the room's air.
 * @throws RangeError when an amount is negative or the temperature outside 0 to 40 degC.
 * @source derived: see `recipeWater`
 */
export function feltWater(
  { composition, temperature }: HeldWater,
  { carbonDioxide, pressure }: Air,
): FeltWater {
  const water = recipeWater(composition, { temperature, air: { carbonDioxide, pressure } });
  return {
    pH: water.pH,
    KH: convert(water.KH, 'meq/L', '°dKH'),
    GH: convert(water.GH, 'mmol/L', '°dGH'),
    conductivity: water.conductivity,
    temperature,
  };
}

/** How much of a limit a change from one water to another uses up; above 1 it is too fast. `derived`. */
export function shareOfLimit(before: FeltWater, after: FeltWater, { quantity, perDay }: ChangeLimit): number {
  switch (quantity) {
    case 'conductivity':
      return Math.abs(after.conductivity - before.conductivity) / (perDay * before.conductivity);
    case 'waterTemperature':
      return Math.abs(after.temperature - before.temperature) / perDay;
    default:
      return Math.abs(after[quantity] - before[quantity]) / perDay;
  }
}

function hardest(
  before: FeltWater,
  after: FeltWater,
  limits: readonly ChangeLimit[],
): { limit: ChangeLimit; share: number } {
  const [first, ...rest] = limits.map((limit) => ({ limit, share: shareOfLimit(before, after, limit) }));
  return rest.reduce((most, each) => (each.share > most.share ? each : most), first!);
}

/** The pool when `done` of the work [0..1] is finished, since a change in parts ends where one in whole does. */
function poolAt(start: HeldWater, proposal: WaterProposal, done: number): HeldWater {
  if (proposal.kind === 'dose') {
    const composition = Object.fromEntries(
      DISSOLVED_IDS.map((id) => [id, start.composition[id] + done * (proposal.adds[id] ?? 0)]),
    ) as unknown as WaterComposition;
    return { composition, temperature: start.temperature };
  }
  const share = done * proposal.fraction;
  const { water } = proposal;
  return {
    composition: blended(water.composition, start.composition, share),
    temperature: share * water.temperature + (1 - share) * start.temperature,
  };
}

/** Share of the water to replace, or mass to dose, to get from one state of the work to another. */
function amountBetween(proposal: WaterProposal, from: number, to: number): number {
  if (proposal.kind === 'dose') return (to - from) * proposal.mass;
  return ((to - from) * proposal.fraction) / (1 - from * proposal.fraction);
}

function checkProposal(proposal: WaterProposal): void {
  if (proposal.kind === 'dose') {
    if (!(proposal.mass > 0))
      throw new RangeError(`a dose of ${proposal.mass} kg cannot be split: give more than 0`);
  } else if (!(proposal.fraction > 0 && proposal.fraction <= MOST_IN_ALL)) {
    throw new RangeError(
      `a water change replaces more than 0 and at most ${100 * MOST_IN_ALL} % of the water, not ${100 * proposal.fraction} %; for more, move the animals out first`,
    );
  }
}

/**
 * Spreads a water change or a dose over days, each step as large as the narrowest limits allow and no water change
 * above half the water: found by bisection on whole hundredths of the work, each step judged by the pool's pH,
 * carbonate hardness, conductivity and temperature in balance with the room's air.
 * @param plan its animals give the limits, its room the air
 * @param start water of the pool before the work
 * @returns steps a day apart, the first on day 0; amounts as share of the water, or kg
 * @throws RangeError for a proposal out of range, or one of which even a hundredth a day is too fast
 * @source derived
 */
export function splitChange(
  plan: Pick<Plan, 'room' | 'changeLimits' | 'populations'>,
  start: HeldWater,
  proposal: WaterProposal,
): SplitChange {
  checkProposal(proposal);
  const limits = changeLimits(plan);
  const felt = (done: number): FeltWater => feltWater(poolAt(start, proposal, done / PARTS), plan.room);
  const steps: ChangeStep[] = [];
  const before = felt(0);
  const decided = new Map<ChangeLimit, number>();
  let done = 0;
  let now = before;
  while (done < PARTS) {
    const to = furthest(done, (end) => fits(now, felt(end), limits) && within(proposal, done, end));
    if (to < PARTS) {
      const { limit } = hardest(now, felt(to + 1), limits);
      decided.set(limit, (decided.get(limit) ?? 0) + 1);
    }
    if (to === done || steps.length >= LONGEST)
      throw new RangeError(tooFast(proposal, hardest(now, felt(done + 1), limits).limit));
    now = felt(to);
    steps.push({ day: steps.length, amount: amountBetween(proposal, done / PARTS, to / PARTS), after: now });
    done = to;
  }
  const [decidedBy] = [...decided.keys()].sort((a, b) => decided.get(b)! - decided.get(a)!);
  const split = { steps, limits, before, ...(decidedBy && { decidedBy }) };
  return { ...split, sentence: splitSentence(split) };
}

const fits = (from: FeltWater, to: FeltWater, limits: readonly ChangeLimit[]): boolean =>
  hardest(from, to, limits).share <= 1;

const within = (proposal: WaterProposal, from: number, to: number): boolean =>
  proposal.kind === 'dose' || amountBetween(proposal, from / PARTS, to / PARTS) <= MOST_AT_ONCE;

/** The last hundredth up to which all fits; it fits less the further one goes. */
function furthest(from: number, allowed: (to: number) => boolean): number {
  let low = from;
  let high = PARTS + 1;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (allowed(middle)) low = middle;
    else high = middle;
  }
  return low;
}

function limitText({ quantity, perDay, owner }: ChangeLimit): string {
  const most =
    quantity === 'conductivity'
      ? `${Math.round(100 * perDay)} % of the conductivity`
      : `${perDay} ${CHANGE_UNITS[quantity]}`;
  return `${most} a day for ${owner}`;
}

function tooFast(proposal: WaterProposal, limit: ChangeLimit): string {
  const what = proposal.kind === 'dose' ? `of ${proposal.name}` : 'of this water change';
  return `even a hundredth ${what} a day changes the water faster than ${limitText(limit)}: choose a water or a dose closer to what is there`;
}

function splitSentence({ steps, decidedBy }: Omit<SplitChange, 'sentence'>): string {
  if (steps.length === 1) return 'All of it may be done in one day.';
  const why = decidedBy ? `: the limit is ${limitText(decidedBy)}` : '';
  return `Spread it over ${steps.length} days${why}.`;
}
