import { expect, test } from 'vitest';
import { palette } from '../palette/palette.ts';
import { sharedRange, sharedRangeScene } from './shared-range.ts';

// Invented ranges.
const scuds = { owner: 'scuds', low: 6.5, high: 9 };
const shrimp = { owner: 'shrimp', low: 5.5, high: 7.5 };
const crabs = { owner: 'crabs', low: 7.8 };

test('the narrowest at either end is named', () => {
  expect(sharedRange([scuds, shrimp])).toEqual({
    low: 6.5,
    high: 7.5,
    lowOwner: 'scuds',
    highOwner: 'shrimp',
    apart: false,
  });
});

test('ranges that miss each other are apart, in any order', () => {
  expect(sharedRange([shrimp, crabs]).apart).toBe(true);
  expect(sharedRange([crabs, scuds, shrimp])).toMatchObject({
    apart: true,
    lowOwner: 'crabs',
    highOwner: 'shrimp',
  });
});

test('an open end stays open, and the drawing says so in words', () => {
  expect(sharedRange([crabs])).toEqual({ low: 7.8, lowOwner: 'crabs', apart: false });
  const scene = sharedRangeScene({
    name: 'pH',
    unit: '',
    ranges: [crabs],
    width: 300,
    palette: palette('day'),
    id: 'pH',
  });
  expect(scene.attributes['aria-label']).toBe('pH that suits all: at least 7.8, for crabs.');
});
