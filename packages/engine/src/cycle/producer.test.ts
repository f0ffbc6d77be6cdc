import { describe, expect, it } from 'vitest';
import { listed } from '../process/contract.ts';
import { changesByState, checkProcess, ratesByName } from '../process/process-test-kit.ts';
import { attachedAlgae } from './attached-algae.ts';
import { emersedPlants } from './emersed-plants.ts';
import { floatingPlants } from './floating-plants.ts';
import { ammoniumShare } from './producer.ts';
import { submergedPlants } from './submerged-plants.ts';
import { suspendedAlgae } from './suspended-algae.ts';

const DAY = 86400;
const ALGAE = {
  maximumGrowth: 0.7,
  growthTheta: 1.066,
  heatLimit: 45,
  lightHalf: 50,
  nitrogenHalf: 0.02,
  phosphorusHalf: 0.002,
  carbonHalf: 0.013,
  preferenceHalf: 0.025,
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
  algalGroundFilled: 0,
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
    const rates = ratesByName(algae, ALGAE, {
      ...PLENTY,
      attachedAlgae: 2,
      algalGroundFilled: 1,
      nitrate: 1e6,
    });
    expect(rates['growth of attached algae on nitrate']).toBe(0);
    expect(rates['respiration of attached algae']! * DAY).toBeCloseTo(0.1, 6);
  });

  it('respire carbon in the dark and keep its nitrogen and phosphorus for the next light', () => {
    const change = changesByState(algae, ALGAE, { ...PLENTY, lightOnAlgae: 0, attachedAlgae: 1, nitrate: 1 });
    expect(change.oxygen).toBeCloseTo(-change.dissolvedInorganicCarbon!, 15);
    expect(change.keptByAttachedAlgae! * DAY).toBeCloseTo(0.05, 6);
    expect(change.ammonium).toBeUndefined();
    // the loss alone leaves the algae: 16 N per 106 C
    expect(change.detritusNitrogen! / change.detritusCarbon!).toBeCloseTo(16 / 106, 12);
  });

  it('grow on what they kept before they take more, without nitrogen in the water too', () => {
    const rich = { ...PLENTY, attachedAlgae: 1, keptByAttachedAlgae: 0.06, nitrate: 1e6 };
    const rates = ratesByName(algae, ALGAE, rich);
    expect(rates['growth of attached algae on what it kept']! * DAY).toBeCloseTo(0.35, 4);
    expect(rates['growth of attached algae on nitrate']! * DAY).toBeCloseTo(0.35, 4);
    const poor = ratesByName(algae, ALGAE, { ...rich, nitrate: 0, phosphate: 0 });
    expect(poor['growth of attached algae on what it kept']! * DAY).toBeCloseTo(0.35, 4);
    expect(poor['growth of attached algae on nitrate']).toBe(0);
  });

  it('give back what they do not use within ten days, and all of it when they are gone', () => {
    const change = changesByState(algae, ALGAE, { ...PLENTY, lightOnAlgae: 0, keptByAttachedAlgae: 1 });
    expect(change.ammonium! * DAY).toBeCloseTo(0.1 * (16 / 106), 12);
    expect(change.phosphate! * DAY).toBeCloseTo(0.1 / 106, 12);
    expect(change.dissolvedInorganicCarbon).toBeUndefined();
  });
});

describe('submerged plants', () => {
  const process = listed(submergedPlants);
  it('keeps the contract', () => checkProcess(process));

  it('are held to carbon dioxide, not to all inorganic carbon', () => {
    const parameters = {
      ...ALGAE,
      fullStock: 1,
      maximumGrowth: 0.2,
      carbonHalf: 0.04,
      respirationRate: 0.01,
      bicarbonateAffinity: 0.1,
      bicarbonateLight: 80,
    };
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

describe('submerged plants that use bicarbonate', () => {
  const process = listed(submergedPlants);
  const parameters = {
    ...ALGAE,
    fullStock: 1,
    maximumGrowth: 0.2,
    carbonHalf: 0.04,
    respirationRate: 0.01,
    bicarbonateAffinity: 0.1,
    bicarbonateLight: 80,
  };
  const growth = (entries: Readonly<Record<string, number>>): number =>
    ratesByName(process, parameters, {
      ...PLENTY,
      lightOnPlants: 80,
      waterArea: 1e6,
      submergedPlants: 1,
      nitrate: 1e6,
      // water of 6 °dKH open to the air: 14 µmol/L of carbon dioxide, 2.1 mmol/L of bicarbonate
      carbonDioxide: 0.014,
      bicarbonate: 2.1,
      ...entries,
    })['growth of submerged plants on nitrate']!;

  it('grow in hard water where others are short of carbon dioxide, and alike in acid water', () => {
    // 0.014 and 0.014 + 0.1 x 1/2 x 2.1 = 0.119 mmol/L, half-saturation 0.04
    const gain = 0.119 / 0.159 / (0.014 / 0.054);
    expect(growth({ bicarbonateUsers: 1 }) / growth({ bicarbonateUsers: 0 })).toBeCloseTo(gain, 6);
    const acid = { carbonDioxide: 0.5, bicarbonate: 0.05 };
    expect(growth({ ...acid, bicarbonateUsers: 1 }) / growth({ ...acid, bicarbonateUsers: 0 })).toBeLessThan(
      1.001,
    );
  });

  it('stand for as many as there are of them', () => {
    const [none, half, all] = [0, 0.5, 1].map((users) => growth({ bicarbonateUsers: users }));
    expect(half).toBeCloseTo((none! + all!) / 2, 12);
  });

  it('gain little of it in dim light, which the uptake takes', () => {
    // Jones 2005 (abstract): little use expected below 80 µmol/m2/s
    const gain = (lightOnPlants: number): number =>
      growth({ lightOnPlants, bicarbonateUsers: 1 }) / growth({ lightOnPlants, bicarbonateUsers: 0 });
    expect(gain(5)).toBeLessThan(1.7);
    expect(gain(200)).toBeGreaterThan(2.5);
  });

  it('take no more than there is', () => {
    expect(growth({ bicarbonateUsers: 1, dissolvedInorganicCarbon: 0 })).toBe(0);
  });
});

const FLOATING = {
  maximumGrowth: 0.36,
  growthTheta: 1.06,
  heatLimit: 45,
  lightHalf: 80,
  nitrogenHalf: 1,
  phosphorusHalf: 0.1,
  preferenceHalf: 0.3,
  fullStock: 6,
  respirationRate: 0.02,
  lossRate: 0.015,
  lossTheta: 1.06,
};
const ON_THE_WATER = {
  floatingPlants: 1,
  waterArea: 1,
  lightOnFloatingPlants: 1e9,
  nitrate: 1e6,
  phosphate: 1e6,
  waterVolume: 1,
  waterTemperature: 20,
};

describe('floating plants', () => {
  const process = listed(floatingPlants);
  it('keep the contract', () => checkProcess(process));

  it('touch nothing of the water but nitrogen and phosphorus', () => {
    const change = changesByState(process, { ...FLOATING, lossRate: 0.0005 }, ON_THE_WATER);
    expect(change.dissolvedInorganicCarbon).toBeUndefined();
    expect(change.oxygen).toBeUndefined();
    expect(change.nitrate!).toBeLessThan(0);
    expect(change.phosphate!).toBeLessThan(0);
  });

  it('stop growing at the mat of 180 g dry/m² of the literature', () => {
    // Driever et al. 2005, quoted in a handbook; 6 mol C/m2 at 40 % carbon
    const rate = (stock: number): number =>
      ratesByName(process, FLOATING, { ...ON_THE_WATER, floatingPlants: stock })[
        'growth of floating plants on nitrate'
      ]!;
    expect(rate((180 * 0.4) / 12.011 + 0.01)).toBe(0);
    expect(rate(3)).toBeGreaterThan(0);
  });
});

describe('plants rooted in wet ground', () => {
  const process = listed(emersedPlants);
  it('keep the contract', () => checkProcess(process));

  it('do nothing without wet ground', () => {
    const rates = ratesByName(
      process,
      { ...FLOATING, maximumGrowth: 0.08 },
      {
        ...ON_THE_WATER,
        emersedPlants: 1,
        lightOnEmersedPlants: 100,
      },
    );
    expect(rates['growth of plants rooted in wet ground on nitrate']).toBe(0);
  });
});

const SUSPENDED = { ...ALGAE, maximumGrowth: 2, lightHalf: 80, settlingVelocity: 0.08, washOff: 0.002 };

describe('suspended algae', () => {
  const process = listed(suspendedAlgae);
  it('keep the contract', () => checkProcess(process));

  it('settle as fast as they sink through the depth', () => {
    // 0.08 m/d through 0.2 m: 0.4 per day
    const rates = ratesByName(process, SUSPENDED, { ...PLENTY, suspendedAlgae: 1, waterDepth: 0.2 });
    expect(rates['settling of suspended algae']! * DAY).toBeCloseTo(0.4, 10);
  });

  it('begin from what is washed off the surfaces', () => {
    const change = changesByState(process, SUSPENDED, { ...PLENTY, attachedAlgae: 1, waterDepth: 0.2 });
    expect(change.suspendedAlgae! * DAY).toBeCloseTo(0.002, 12);
    expect(change.attachedAlgae).toBe(-change.suspendedAlgae!);
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
