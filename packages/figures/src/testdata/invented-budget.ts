import type { Budget } from '@shoreglass/engine';

const WIGGLE = [1, 0.7, 1.2, 0.9, 1.4, 1.1, 0.8, 1];

function course(mean: number, count = 30): number[] {
  return Array.from({ length: count }, (_, index) => mean * (WIGGLE[index % WIGGLE.length] ?? 1));
}

/** An alkalinity budget for tests and trials; no engine made its numbers. */
export const INVENTED_BUDGET: Budget = {
  id: 'alkalinity',
  name: 'alkalinity',
  unit: 'meq',
  about: 'Invented.',
  periods: Array.from({ length: 30 }, (_, index) => ({ from: index * 10, to: (index + 1) * 10 })),
  terms: [
    { term: 'ammonia oxidation', amounts: course(-4.1) },
    { term: 'carbonate dissolving', amounts: course(3.2) },
    { term: 'wood', amounts: course(-1.8) },
    { term: 'submerged plants', amounts: course(0.9) },
    { term: 'leaf litter', amounts: course(-0.7) },
    { term: 'top-off', amounts: course(0.4) },
    { term: 'attached algae', amounts: course(0.3) },
    { term: 'animals', amounts: course(0.25) },
    { term: 'detritus', amounts: course(0.2) },
    { term: 'uneaten feed', amounts: course(0.02) },
    { term: 'coloured organic carbon', amounts: course(-0.01) },
  ],
  stock: Array.from({ length: 31 }, (_, index) => 90 - index),
};
