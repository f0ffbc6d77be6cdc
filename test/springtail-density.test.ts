import { loadBundledEnclosure, planOf } from '@shoreglass/contract';
import { expectedRun, geometryOf, prepareOutlook } from '@shoreglass/engine';
import { library } from '@shoreglass/library';
import { describe, expect, it } from 'vitest';

describe('springtails of the demo', () => {
  // Counts of all springtails in soils and litter at more than 200 sites: 100 to 670 000 on a square metre, most of them
  // 10 000 to 100 000 (Petersen and Luxton 1982, Oikos 39: 288-388, as quoted by Lavelle and Spain 2001, Soil Ecology).
  // A warm, moist box without mites and with one and a half times a forest's yearly leaf fall may lie above most of them.
  it('are as many on a square metre as soils hold, once the first bloom is over', () => {
    const plan = planOf(loadBundledEnclosure('beck-bank').document, library);
    const land = geometryOf(plan).landAreaAt(plan.water.level);
    const prepared = prepareOutlook(plan, { days: 300, members: 2, seed: 1 });
    const at = (prepared.setting.seriesIds as readonly string[]).indexOf('population:folsomia-candida');
    const late = expectedRun(prepared).series[at]!.subarray(150);
    const density = late.reduce((sum, count) => sum + count, 0) / late.length / land;
    expect(density).toBeGreaterThan(10_000);
    expect(density).toBeLessThan(670_000);
  });
});
