import { expect, it } from 'vitest';
import { remember } from '../../../app/kept.ts';
import { NO_COUNTS, recallCounts, rememberCounts } from './counts-store.ts';

it('keeps counts by enclosure and species, and passes over what is none', () => {
  const counts = { text: '2026-03-01 12', below: '5', within: '30' };
  rememberCounts('bank', 'shrimp', counts);
  expect(recallCounts('bank', 'shrimp')).toEqual(counts);
  expect(recallCounts('bank', 'snail')).toEqual(NO_COUNTS);
  remember('counts.bank.snail', '{"text": 3');
  expect(recallCounts('bank', 'snail')).toEqual(NO_COUNTS);
  remember('counts.bank.snail', '{"text": 3, "below": "", "within": ""}');
  expect(recallCounts('bank', 'snail')).toEqual(NO_COUNTS);
  remember('counts.bank.snail', 'null');
  expect(recallCounts('bank', 'snail')).toEqual(NO_COUNTS);
});
