import { describe, expect, it } from 'vitest';
import { listed } from '../process/contract.ts';
import { changesByState, checkProcess, ratesByName } from '../process/process-test-kit.ts';
import { netElement } from '../process/stoichiometry.ts';
import { COMPOSITIONS } from '../variables/compositions.ts';
import { plantRemains } from './plant-remains.ts';
import { lossToRemains } from './producer.ts';

const DAY = 86400;
const EGERIA = { rate: 0.028, theta: 1.124 };
const process = listed(plantRemains);

/** Days until half is gone. */
function half(waterTemperature: number): number {
  const rate = ratesByName(process, EGERIA, { plantRemains: 1, remainsPace: 1, waterTemperature })[
    'detritus from dead plants'
  ]!;
  return Math.log(2) / (rate * DAY);
}

describe('dead water plants', () => {
  it('keep the contract', () => checkProcess(process));

  it('are half gone after 36 days at 17 °C and 11 days at 27 °C', () => {
    // Egeria najas, Braz. J. Biol. 65 (2005): 0.014 and 0.045 of the start a day along a line
    expect(half(17)).toBeGreaterThan(0.9 * (0.5 / 0.014));
    expect(half(17)).toBeLessThan(1.1 * (0.5 / 0.014));
    expect(half(27)).toBeGreaterThan(0.9 * (0.5 / 0.045));
    expect(half(27)).toBeLessThan(1.1 * (0.5 / 0.045));
  });

  it('become detritus of what they are made of', () => {
    const change = changesByState(process, EGERIA, { plantRemains: 1, remainsPace: 1, waterTemperature: 20 });
    expect(change.detritusNitrogen! / change.detritusCarbon!).toBeCloseTo(20 / 436, 12);
    expect(change.detritusPhosphorus! / change.detritusCarbon!).toBeCloseTo(1 / 436, 12);
  });

  it('leach what richer plants held beyond that', () => {
    for (const [pool, composition] of [
      ['floatingPlants', COMPOSITIONS.floatingPlants],
      ['emersedPlants', COMPOSITIONS.emersedPlants],
      ['submergedPlants', COMPOSITIONS.submergedPlants],
    ] as const) {
      const loss = lossToRemains(pool, composition);
      for (const element of ['carbon', 'nitrogen', 'phosphorus', 'oxygen'] as const)
        expect(netElement(loss, element), `${pool} ${element}`).toBeCloseTo(0, 12);
    }
  });
});
