import { describe, expect, it } from 'vitest';
import { listed } from '../process/contract.ts';
import { changesByState, checkProcess } from '../process/process-test-kit.ts';
import { carcassBreakdown } from './carcass-breakdown.ts';
import { shellBuilding } from './shell-building.ts';

const DAY = 86400;

describe('breakdown of dead animals', () => {
  const process = listed(carcassBreakdown);
  it('keeps the contract', () => checkProcess(process));

  it('gives all its nitrogen to ammonium and detritus', () => {
    const change = changesByState(
      process,
      { rate: 0.2, oxidisedShare: 0.6, theta: 1.08, oxygenHalf: 0.2 },
      { oxygen: 1e9, waterVolume: 1, waterTemperature: 20, carcassCarbon: 1, carcassNitrogen: 0.2 },
    );
    expect(change.carcassCarbon! * DAY).toBeCloseTo(-0.2, 6);
    expect(change.ammonium! * DAY).toBeCloseTo(0.024, 9);
    expect(change.detritusNitrogen! * DAY).toBeCloseTo(0.016, 9);
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
  });

  it('waits in water without calcium', () => {
    expect(changesByState(process, parameters, { shellTarget: 1, bicarbonate: 1, waterVolume: 1 })).toEqual(
      {},
    );
  });
});
