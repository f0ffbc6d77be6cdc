import { describe, expect, test } from 'vitest';
import { VARIABLE_INDEX as V, VARIABLE_IDS } from '../variables/variables.ts';
import { compose } from './compose.ts';
import type { AnyDerivation, AnyProcess } from './contract.ts';
import { balanced, netElement } from './stoichiometry.ts';

const decay = (given: Partial<AnyProcess> = {}): AnyProcess => ({
  id: 'decay',
  parameters: { rate: { unit: '1/s', min: 0, max: 1, meaning: 'rate of decay' } },
  reads: ['detritusCarbon'],
  changes: ['detritusCarbon', 'dissolvedInorganicCarbon', 'oxygen'],
  prepare({ rate = 0 }, setting) {
    const at = setting.index('detritusCarbon');
    return {
      reactions: [
        {
          name: 'decay of detritus',
          stoichiometry: { detritusCarbon: -1, dissolvedInorganicCarbon: 1, oxygen: -1 },
        },
      ],
      evaluate(values, rates, offset) {
        rates[offset] = rate * (values[at] ?? 0);
      },
    };
  },
  ...given,
});

const provider = (
  id: string,
  reads: AnyDerivation['reads'],
  provides: AnyDerivation['provides'],
): AnyDerivation => ({
  id,
  parameters: {},
  reads,
  provides,
  prepare: (_, setting) => ({
    derive(values) {
      for (const name of provides) values[setting.index(name)] = 1;
    },
  }),
});

const TABLE = { decay: { rate: 0.5 } };

describe('composition', () => {
  test('evaluates the rates of all processes', () => {
    const system = compose([decay()], [], TABLE);
    const values = new Float64Array(VARIABLE_IDS.length);
    values[V.detritusCarbon] = 4;
    const rates = new Float64Array(1);
    system.evaluate(values, rates);
    expect(rates[0]).toBe(2);
    expect([...system.index]).toEqual([V.detritusCarbon, V.dissolvedInorganicCarbon, V.oxygen]);
  });
  test('refuses a reaction that does not conserve an element', () => {
    const wrong = decay({
      prepare: () => ({
        reactions: [{ name: 'loss', stoichiometry: { detritusCarbon: -1 } }],
        evaluate: () => undefined,
      }),
    });
    expect(() => compose([wrong], [], TABLE)).toThrow(/does not conserve carbon/);
  });
  test('refuses the use or change of what was not declared', () => {
    expect(() => compose([decay({ reads: [], changes: ['oxygen'] })], [], TABLE)).toThrow(
      /without declaring/,
    );
  });
  test('refuses missing and impossible parameters, with unit and range', () => {
    expect(() => compose([decay()], [], {})).toThrow('parameter decay.rate [1/s] is missing');
    expect(() => compose([decay()], [], { decay: { rate: 3 } })).toThrow(
      'decay.rate = 3 1/s is outside 0 to 1',
    );
  });
  test('refuses doubled processes and doubled providers', () => {
    expect(() => compose([decay(), decay()], [], TABLE)).toThrow(/listed twice/);
    expect(() => compose([], [provider('a', [], ['pH']), provider('b', [], ['pH'])], {})).toThrow(
      /both a and b/,
    );
  });
  test('refuses missing links and rings', () => {
    expect(() => compose([], [provider('a', ['pH'], ['alkalinity'])], {})).toThrow(/which nothing provides/);
    const ring = [provider('a', ['pH'], ['alkalinity']), provider('b', ['alkalinity'], ['pH'])];
    expect(() => compose([], ring, {})).toThrow(/ring of derivations/);
  });
  test('a process that reads what nothing provides is refused', () => {
    expect(() => compose([decay({ reads: ['detritusCarbon', 'pH'] })], [], TABLE)).toThrow(/reads pH/);
  });
});

describe('balancing a stoichiometry', () => {
  // Redfield 1958: 106 CO2 + 16 HNO3 + H3PO4 -> algae + 138 O2.
  test('algae growing on nitrate give off 138/106 O2 per carbon', () => {
    const growth = balanced(
      { attachedAlgae: 1 },
      { nitrogen: 'nitrate', phosphorus: 'phosphate', carbon: 'dissolvedInorganicCarbon', oxygen: 'oxygen' },
    );
    expect(growth.oxygen).toBeCloseTo(138 / 106, 12);
    expect(netElement(growth, 'charge')).toBeCloseTo(17 / 106, 12);
  });
  test('a closing pool must hold the element', () => {
    expect(() => balanced({ attachedAlgae: 1 }, { nitrogen: 'oxygen' })).toThrow(/holds no nitrogen/);
  });
});
