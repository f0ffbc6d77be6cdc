import { expect, test } from 'vitest';
import { seriesByWeight, stripsFor } from './main-series.ts';
import { inventedOutlook, inventedPoint } from './testdata/invented-outlook.ts';

test('what limits comes first, then what turns, and no part of a population stands for itself', () => {
  const outlook = inventedOutlook({
    horizon: { limitedBy: [{ subject: 'KH', kind: 'falls below', owner: 'amphipods', share: 1 }] },
    turningPoints: [
      inventedPoint('nitrate', 'rises above', { probability: 0.3 }),
      inventedPoint('population:snails:juvenile', 'rises above', { probability: 0.9 }),
    ],
  });
  expect(seriesByWeight(outlook)).toEqual(['KH', 'nitrate', 'population:snails', 'pH']);
});

test('the strips hold an animal and the water, even where one of them has nothing to say', () => {
  const outlook = inventedOutlook({
    turningPoints: [inventedPoint('population:snails', 'first young')],
  });
  expect(stripsFor(outlook, 2)).toEqual(['population:snails', 'pH']);
  expect(stripsFor(inventedOutlook({}), 9)).toEqual(['population:snails', 'pH', 'KH', 'nitrate']);
});
