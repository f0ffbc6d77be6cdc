import { log10 } from '../../numerics/elementary.ts';
import { CARBON_OPEN, STATE, STEER, TOTAL } from './layout.ts';
import { moveCations, sweep } from './sweep.ts';
import { conservativeAlkalinity, startFromTotals, type Workspace } from './workspace.ts';

const QUICK_PASSES = 80;
/** Steps are halved after this many passes: strong pairing can make full ones overshoot for ever. */
const BOLD_PASSES = 12;
/** Moves below this shrink by a steady ratio, until rounding is all that is left of them. */
const SMALL = 1e-2;
const ROUNDING = 1e-13;
/** Lets species err a hundred times more than pH. */
const SPECIES_WEIGHT = 0.01;
const PATIENT_PASSES = 20_000;
const LONGEST_STEP = 1;

/**
 * Solves for pH at the workspace's totals, temperature and carbon rule; species and state are left in the workspace.
 * Newton steps on pH go alongside the passes over ion pairs and ionic strength. Where that does not settle, pH is
 * bracketed and found by Newton steps inside the bracket, halved when they leave it or are slow.
 * @returns number of passes, negative when the patient search met its limit
 * @source derived: the alkalinity of a water of fixed totals rises with pH, so that one root exists
 */
export function solvePH(w: Workspace): number {
  const alkalinity = conservativeAlkalinity(w.totals);
  if (!w.warm) {
    startFromTotals(w);
    w.state[STATE.pH] = firstGuess(w, alkalinity);
    w.warm = true;
  }
  const quick = solveQuickly(w, alkalinity);
  return quick > 0 ? quick : solveBracketed(w, alkalinity);
}

/** A pH from alkalinity and carbon alone; near enough for the first step. */
function firstGuess({ carbonRule, totals }: Workspace, alkalinity: number): number {
  const carbon = totals[TOTAL.carbon]!;
  if (alkalinity <= 1e-6) return alkalinity < -1e-6 ? Math.min(6, -log10(-alkalinity)) : 6;
  if (carbonRule === CARBON_OPEN) return carbon > 0 ? 6.35 + log10(alkalinity / carbon) : 7.5;
  return carbon > alkalinity ? 6.35 + log10(alkalinity / (carbon - alkalinity)) : 9.5;
}

function solveQuickly(w: Workspace, alkalinity: number): number {
  const { state, steer } = w;
  let before = Number.POSITIVE_INFINITY;
  let lastRatio = 1;
  for (let pass = 1; pass <= QUICK_PASSES; pass++) {
    sweep(w, alkalinity);
    const step = steer[STEER.residual]! / (Math.LN10 * steer[STEER.slope]!);
    const share = pass > BOLD_PASSES ? 0.5 : 1;
    const pH = state[STATE.pH]! + share * Math.max(-LONGEST_STEP, Math.min(LONGEST_STEP, step));
    if (!(pH > -3 && pH < 17)) return 0;
    const change = Math.LN10 * (pH - state[STATE.pH]!);
    if (pass <= BOLD_PASSES) moveCations(w, change);
    state[STATE.pH] = pH;
    const moved = Math.max(Math.abs(step), steer[STEER.change]!);
    const ratio = moved / before;
    if (moved < ROUNDING || remaining(moved, Math.max(ratio, lastRatio)) < w.tolerance) return pass;
    lastRatio = before < SMALL ? ratio : 1;
    before = moved;
  }
  return 0;
}

/**
 * What is still to come when moves go on shrinking by a ratio: the rest of a geometric series. Species are those of
 * before the last move, so that itself has to be small.
 */
function remaining(moved: number, ratio: number): number {
  return ratio < 1 ? Math.max((moved * ratio) / (1 - ratio), moved * SPECIES_WEIGHT) : 1;
}

/**
 * Passes over the equilibria at the pH of the workspace until they settle, from nothing paired downwards.
 * @returns number of passes, negative when the limit was met
 * @source derived: fixed-point iteration
 */
export function settleAtPH(w: Workspace, alkalinity: number): number {
  startFromTotals(w);
  let before = Number.POSITIVE_INFINITY;
  for (let pass = 1; pass <= PATIENT_PASSES; pass++) {
    sweep(w, alkalinity);
    const moved = w.steer[STEER.change]!;
    if (moved < ROUNDING || (pass > 3 && remaining(moved, moved / before) < ROUNDING)) return pass;
    before = moved;
  }
  return -PATIENT_PASSES;
}

function solveBracketed(w: Workspace, alkalinity: number): number {
  const { state, steer } = w;
  let passes = 0;
  let settled = true;
  const missingAt = (pH: number): number => {
    state[STATE.pH] = pH;
    const used = settleAtPH(w, alkalinity);
    passes += Math.abs(used);
    settled = used > 0;
    return steer[STEER.residual]!;
  };
  let low = -2;
  let high = 16;
  while (low > -12 && missingAt(low) < 0) low -= 2;
  while (high < 26 && missingAt(high) > 0) high += 2;
  let pH = 0.5 * (low + high);
  for (let i = 0; i < 200; i++) {
    const missing = missingAt(pH);
    if (missing > 0) low = pH;
    else high = pH;
    const width = high - low;
    const newton = pH + missing / (Math.LN10 * steer[STEER.slope]!);
    const next = i % 4 !== 3 && newton > low && newton < high ? newton : 0.5 * (low + high);
    if (width < ROUNDING || Math.abs(next - pH) < ROUNDING / 10) break;
    pH = next;
  }
  return settled ? passes : -passes;
}
