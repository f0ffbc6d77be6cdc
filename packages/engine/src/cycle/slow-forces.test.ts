import { describe, expect, it } from 'vitest';
import { listed } from '../process/contract.ts';
import { changesByState, checkProcess } from '../process/process-test-kit.ts';
import { carcassBreakdown, carcassPace } from './carcass-breakdown.ts';
import { shellBuilding } from './shell-building.ts';
import { squareRootResponse } from './temperature-response.ts';

const DAY = 86400;

describe('breakdown of dead animals', () => {
  const process = listed(carcassBreakdown);
  it('keeps the contract', () => checkProcess(process));

  it('gives all its nitrogen to ammonium and detritus', () => {
    const change = changesByState(
      process,
      { rate: 0.2, oxidisedShare: 0.6, coldest: -10, oxygenHalf: 0.2 },
      {
        oxygen: 1e9,
        waterVolume: 1,
        waterTemperature: 20,
        carcassPace: 1,
        carcassCarbon: 1,
        carcassNitrogen: 0.2,
      },
    );
    expect(change.carcassCarbon! * DAY).toBeCloseTo(-0.2, 6);
    expect(change.ammonium! * DAY).toBeCloseTo(0.024, 9);
    expect(change.detritusNitrogen! * DAY).toBeCloseTo(0.016, 9);
  });

  it('goes by the warmth that the spoilage of fish answers to', () => {
    // relative rate of spoilage (1 + 0.1 T)^2 of fish from temperate waters, T in °C: 1 at 0, 4 at 10
    const rate = squareRootResponse(-10, 0);
    expect(rate(0)).toBe(1);
    expect(rate(10)).toBeCloseTo(4, 12);
    expect(rate(4.2)).toBeCloseTo(1.42 ** 2, 12);
    expect(rate(-12)).toBe(0);
  });

  it('takes longer for large bodies', () => {
    const gram = (0.25 * 0.45) / 12.011;
    expect(carcassPace(0.01 * gram)).toBe(1);
    expect(carcassPace(64 * gram)).toBeCloseTo(0.5, 12);
    // whole lake trout of a kilogram or two in water of 4 °C against ground ones near the shore of a mountain lake in
    // summer (10 to 14 °C, assumed): k 0.0075 and 0.0679 a day (Glassic et al. 2023, abstract), nine times
    const warmth = squareRootResponse(-10, 20);
    const times = warmth(12) / (warmth(4) * carcassPace(1500 * gram));
    expect(times).toBeGreaterThan(0.7 * (0.0679 / 0.0075));
    expect(times).toBeLessThan(1.4 * (0.0679 / 0.0075));
  });
});

describe('building of shells', () => {
  const process = listed(shellBuilding);
  const parameters = { time: 1, calciumHalf: 0.3 };
  it('keeps the contract', () => checkProcess(process));

  it('takes two of alkalinity for each calcium and gives calcite back', () => {
    const water = { calcium: 1e3, dissolvedInorganicCarbon: 1, bicarbonate: 1e3, waterVolume: 1 };
    const grown = changesByState(process, parameters, { ...water, shellTarget: 1 });
    expect(grown.calcium! * DAY).toBeCloseTo(-1, 2);
    expect(grown.dissolvedInorganicCarbon).toBe(grown.calcium!);
    const lost = changesByState(process, parameters, { ...water, shellCarbonate: 1 });
    expect(lost.carbonateSolid! * DAY).toBeCloseTo(1, 12);
    const ofSnails = changesByState(process, parameters, {
      ...water,
      shellCarbonate: 1,
      shellAragonite: 0.75,
    });
    expect(ofSnails.carbonateSolid! * DAY).toBeCloseTo(0.25, 12);
    expect(ofSnails.aragoniteSolid! * DAY).toBeCloseTo(0.75, 12);
  });

  it('waits in water without calcium', () => {
    expect(changesByState(process, parameters, { shellTarget: 1, bicarbonate: 1, waterVolume: 1 })).toEqual(
      {},
    );
  });
});
