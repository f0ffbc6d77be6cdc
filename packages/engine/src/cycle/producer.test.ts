import { describe, expect, it } from 'vitest';
import { listed } from '../process/contract.ts';
import { changesByState, checkProcess, ratesByName } from '../process/process-test-kit.ts';
import { attachedAlgae } from './attached-algae.ts';
import { ammoniumShare } from './producer.ts';
import { submergedPlants } from './submerged-plants.ts';

const DAY = 86400;
const ALGAE = {
  maximumGrowth: 0.7,
  growthTheta: 1.066,
  lightHalf: 50,
  nitrogenHalf: 0.02,
  phosphorusHalf: 0.002,
  carbonHalf: 0.013,
  preferenceHalf: 0.025,
  fullStock: 1,
  respirationRate: 0.05,
  lossRate: 0.02,
  lossTheta: 1.05,
  oxygenHalf: 0.2,
};
const PLENTY = {
  lightOnAlgae: 1e9,
  phosphate: 1e6,
  oxygen: 1e6,
  dissolvedInorganicCarbon: 1e6,
  submergedArea: 1e6,
  waterVolume: 1,
  waterTemperature: 20,
};
const algae = listed(attachedAlgae);

describe('attached algae', () => {
  it('keeps the contract', () => checkProcess(algae));

  it('grow at the highest rate when nothing is scarce', () => {
    const rates = ratesByName(algae, ALGAE, { ...PLENTY, attachedAlgae: 1, nitrate: 1e6 });
    expect(rates['growth of attached algae on nitrate']! * DAY).toBeCloseTo(0.7, 4);
    expect(rates['growth of attached algae on ammonium']).toBe(0);
  });

  it('release 138 O2 per 106 C on nitrate', () => {
    // Redfield, Ketchum & Richards 1963: 106 CO2 + 16 HNO3 + H3PO4 + 122 H2O gives 138 O2
    const { reactions } = attachedAlgae.prepare(ALGAE, { index: () => 0 });
    const [onAmmonium, onNitrate] = reactions;
    expect(onNitrate!.stoichiometry.oxygen! * 106).toBeCloseTo(138, 10);
    expect(onAmmonium!.stoichiometry.oxygen! * 106).toBeCloseTo(106, 10);
  });

  it('halve at the half saturation of phosphate, the scarcest nutrient deciding alone', () => {
    const half = ratesByName(algae, ALGAE, {
      ...PLENTY,
      attachedAlgae: 1,
      nitrate: 0.02 / 14.007,
      phosphate: 0.002 / 30.974,
    });
    expect(half['growth of attached algae on nitrate']! * DAY).toBeCloseTo(0.35, 4);
  });

  it('stop growing where their ground is full, but go on breathing', () => {
    const rates = ratesByName(algae, ALGAE, { ...PLENTY, attachedAlgae: 2, submergedArea: 1, nitrate: 1e6 });
    expect(rates['growth of attached algae on nitrate']).toBe(0);
    expect(rates['respiration of attached algae']! * DAY).toBeCloseTo(0.1, 6);
  });

  it('return in the dark what they are made of', () => {
    const change = changesByState(algae, ALGAE, { ...PLENTY, lightOnAlgae: 0, attachedAlgae: 1, nitrate: 1 });
    expect(change.ammonium! / change.dissolvedInorganicCarbon!).toBeCloseTo(16 / 106, 10);
    expect(change.oxygen).toBeCloseTo(-change.dissolvedInorganicCarbon!, 15);
  });
});

describe('submerged plants', () => {
  const process = listed(submergedPlants);
  it('keeps the contract', () => checkProcess(process));

  it('are held to carbon dioxide, not to all inorganic carbon', () => {
    const parameters = { ...ALGAE, maximumGrowth: 0.2, carbonHalf: 0.04, respirationRate: 0.01 };
    const rate = (carbonDioxide: number): number =>
      ratesByName(process, parameters, {
        ...PLENTY,
        lightOnPlants: 1e9,
        waterArea: 1e6,
        submergedPlants: 1,
        nitrate: 1e6,
        carbonDioxide,
      })['growth of submerged plants on nitrate']!;
    expect(rate(0.04) / rate(1e5)).toBeCloseTo(0.5, 4);
    expect(rate(0)).toBe(0);
  });
});

describe('choice of ammonium', () => {
  it('takes 0.7 of the nitrogen as ammonium when both stand at 1 mg/L and the constant is 0.3 mg/L', () => {
    // by hand: (1/1.3)^2 + 0.5 * 0.3/1.3 = 0.592 + 0.115 = 0.707
    expect(ammoniumShare(1, 1, 0.3)).toBeCloseTo(0.5917 + 0.1154, 3);
  });

  it('takes only what is there', () => {
    expect(ammoniumShare(0, 1, 0.3)).toBe(0);
    expect(ammoniumShare(1, 0, 0.3)).toBe(1);
  });
});
