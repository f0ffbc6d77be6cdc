import { describe, expect, it } from 'vitest';
import { compose } from '../process/compose.ts';
import { listedDerivation } from '../process/contract.ts';
import { checkDerivation, valuesWith } from '../process/process-test-kit.ts';
import { VARIABLE_INDEX } from '../variables/variables.ts';
import { meanTransmission, underwaterLight } from './underwater-light.ts';

const derivation = listedDerivation(underwaterLight);
const PARAMETERS = {
  backgroundAttenuation: 0.15,
  colourAttenuation: 0.22,
  suspendedAttenuation: 4.6,
  plantAttenuation: 0.57,
  floatingAttenuation: 0.9,
  emersedAttenuation: 0.29,
  algalAttenuation: 0.9,
  incidentShare: 1,
};
const POOL = { lightAtSurface: 100, waterDepth: 0.2, waterVolume: 0.04, waterArea: 0.2, submergedArea: 0.5 };

interface Light {
  readonly algae: number;
  readonly plants: number;
  readonly suspended: number;
  readonly floating: number;
  readonly emersed: number;
}

function light(entries: Parameters<typeof valuesWith>[0]): Light {
  const values = valuesWith({ ...POOL, ...entries });
  compose([], [derivation], { 'underwater-light': PARAMETERS }).derive(values);
  return {
    algae: values[VARIABLE_INDEX.lightOnAlgae]!,
    plants: values[VARIABLE_INDEX.lightOnPlants]!,
    suspended: values[VARIABLE_INDEX.lightOnSuspendedAlgae]!,
    floating: values[VARIABLE_INDEX.lightOnFloatingPlants]!,
    emersed: values[VARIABLE_INDEX.lightOnEmersedPlants]!,
  };
}

describe('light under water', () => {
  it('keeps the contract', () => checkDerivation(derivation));

  it('is the depth mean of the Beer-Lambert law', () => {
    // (1 - e^-1) / 1 = 0.63212
    expect(meanTransmission(1)).toBeCloseTo(0.63212, 5);
    expect(meanTransmission(0)).toBe(1);
    expect(meanTransmission(1e-8)).toBeCloseTo(1, 7);
  });

  it('loses to 10 mg/L of colour over 20 cm about a fifth of what clear water lets through', () => {
    // tau = (0.15 + 2.2) 0.2 = 0.47: (1 - e^-0.47)/0.47 = 0.7979; clear: tau = 0.03, 0.9851
    const coloured = light({ dissolvedOrganicCarbon: (10 / 12.011) * 0.04 });
    expect(coloured.algae).toBeCloseTo(79.79, 1);
    expect(light({}).algae).toBeCloseTo(98.51, 1);
  });

  it('is shared with the plants, and plants bear the film on their leaves', () => {
    const bare = light({ submergedPlants: 0.2 });
    const overgrown = light({ submergedPlants: 0.2, attachedAlgae: 0.5 });
    expect(bare.algae).toBeLessThan(light({}).algae);
    // film of 1 mol C/m2: e^-0.9 = 0.40657
    expect(overgrown.plants / bare.plants).toBeCloseTo(0.40657, 5);
  });

  it('is dark at night', () => {
    expect(light({ lightAtSurface: 0 })).toEqual({
      algae: 0,
      plants: 0,
      suspended: 0,
      floating: 0,
      emersed: 0,
    });
  });

  it('under a closed sheet of duckweed is about a twentieth', () => {
    // 100 g dry/m2 at 40 % carbon: 3.33 mol C/m2; e^-(0.9 * 3.33) = 0.0499; estimates for closed mats: 1 to 15 %
    const covered = light({ floatingPlants: 3.33 * 0.2 });
    expect(covered.suspended / light({}).suspended).toBeCloseTo(0.0499, 3);
    expect(covered.plants / light({}).plants).toBeCloseTo(0.0499, 3);
    expect(covered.floating).toBe(100);
  });

  it('is dimmed for all by green water', () => {
    // 0.1 mol C/m3 (1.2 mg C/L) over 20 cm: tau = (0.15 + 0.46) 0.2 = 0.122
    const green = light({ suspendedAlgae: 0.1 * 0.04 });
    expect(green.suspended / 100).toBeCloseTo((1 - Math.exp(-0.122)) / 0.122, 6);
    expect(green.algae).toBe(green.suspended);
    expect(green.plants).toBeLessThan(light({}).plants);
  });

  it('never rises by more of anything that grows', () => {
    const pools = ['suspendedAlgae', 'attachedAlgae', 'submergedPlants', 'floatingPlants'] as const;
    for (const pool of pools) {
      const [less, more] = [light({ [pool]: 0.1 }), light({ [pool]: 0.3 })];
      for (const on of ['algae', 'plants', 'suspended', 'floating'] as const)
        expect(more[on]).toBeLessThanOrEqual(less[on]);
    }
  });
});
