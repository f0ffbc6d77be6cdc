import { solveRecipe } from '@shoreglass/engine';
import { expect, test } from 'vitest';
import { mixRequest } from '../run/mix-request.ts';
import { pouringLines } from './pouring.ts';

function poured(keep?: string): string[] {
  const options = { for: 'beck-bank', json: false, ...(keep === undefined ? {} : { keep }) };
  const { request, plan } = mixRequest(options);
  return plan ? pouringLines(plan, request, solveRecipe(request), 200) : ['no plan'];
}

test('what is mixed new is poured over days, no day more than one degree of hardness', () => {
  const days = poured('20 L').filter((line) => /day +\d/.test(line));
  expect(days.length).toBeGreaterThan(1);
  const hardness = days.map((line) => Number(/KH ([\d.]+)/.exec(line)?.[1]));
  // half hard tap, half rain to begin with: 6.4 °dKH; 1 °dKH a day is common practice, no source
  for (const [day, KH] of hardness.entries())
    expect((hardness[day - 1] ?? 6.4) - KH).toBeLessThanOrEqual(1.05);
});

test('nothing is poured where nothing stays', () => {
  expect(poured()).toEqual([]);
});
