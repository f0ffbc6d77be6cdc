import { log10 } from '../../numerics/elementary.ts';
import { CARBON_OPEN, STATE, STEER, TOTAL } from './layout.ts';
import { sweep } from './sweep.ts';
import { conservativeAlkalinity, startFromTotals, type Workspace } from './workspace.ts';

/** A solution stands when no further pass would move pH or a concentration by more than this (pH, relative). */
const TOLERANCE = 1e-11;
const QUICK_PASSES = 40;
const PATIENT_PASSES = 2000;
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
  let before = 1;
  for (let pass = 1; pass <= QUICK_PASSES; pass++) {
    sweep(w, alkalinity);
    const step = steer[STEER.residual]! / (Math.LN10 * steer[STEER.slope]!);
    const pH = state[STATE.pH]! + Math.max(-LONGEST_STEP, Math.min(LONGEST_STEP, step));
    if (!(pH > -3 && pH < 17)) return 0;
    state[STATE.pH] = pH;
    const moved = Math.max(Math.abs(step), steer[STEER.change]!);
    if (remaining(moved, before) < TOLERANCE) return pass;
    before = moved;
  }
  return 0;
}

/** What is still to come when moves shrink by the same ratio: the rest of a geometric series. */
function remaining(moved: number, before: number): number {
  return moved < 0.5 * before ? (moved * moved) / (before - moved) : moved;
}

/**
 * Passes over the equilibria at the pH of the workspace until they settle, from nothing paired downwards.
 * @returns number of passes, negative when the limit was met
 */
export function settleAtPH(w: Workspace, alkalinity: number): number {
  startFromTotals(w);
  for (let pass = 1; pass <= PATIENT_PASSES; pass++) {
    sweep(w, alkalinity);
    if (w.steer[STEER.change]! < TOLERANCE) return pass;
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
    if (width < TOLERANCE || Math.abs(next - pH) < TOLERANCE / 10) break;
    pH = next;
  }
  return settled ? passes : -passes;
}
