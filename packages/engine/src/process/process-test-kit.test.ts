import { describe, expect, it } from 'vitest';
import { type AnyDerivation, listed, listedDerivation, type Process } from './contract.ts';
import { checkDerivation, checkProcess } from './process-test-kit.ts';

interface Rate {
  readonly rate: number;
}
const sound: Process<Rate> = {
  id: 'leaching',
  parameters: { rate: { unit: '1/s', min: 0, max: 1, meaning: 'rate' } },
  reads: ['woodLeachable'],
  changes: ['woodLeachable', 'dissolvedOrganicCarbon'],
  prepare({ rate }, setting) {
    const wood = setting.index('woodLeachable');
    return {
      reactions: [{ name: 'leaching', stoichiometry: { woodLeachable: -1, dissolvedOrganicCarbon: 1 } }],
      evaluate(values, rates, offset) {
        rates[offset] = rate * values[wood]!;
      },
    };
  },
};
const reaction = { name: 'leaching', stoichiometry: { woodLeachable: -1, dissolvedOrganicCarbon: 1 } };

function broken(change: Partial<Process<Rate>>): () => void {
  return () => checkProcess(listed({ ...sound, ...change }));
}

describe('process test kit', () => {
  it('lets a sound process pass', () => {
    expect(broken({})).not.toThrow();
  });

  it('finds a read that was not declared', () => {
    expect(
      broken({
        prepare: (parameters, setting) => {
          setting.index('oxygen');
          return sound.prepare(parameters, setting);
        },
      }),
    ).toThrow(/oxygen without declaring/);
  });

  it('finds a change that was declared but never made', () => {
    expect(broken({ changes: [...sound.changes, 'calcium'] })).toThrow(/calcium/);
  });

  it('finds a lost element', () => {
    expect(
      broken({
        prepare: () => ({
          reactions: [
            { name: 'leaching', stoichiometry: { woodLeachable: -1, dissolvedOrganicCarbon: 0.9 } },
          ],
          evaluate: () => undefined,
        }),
      }),
    ).toThrow(/does not conserve carbon/);
  });

  it('finds a rate that goes on when the pool is empty', () => {
    expect(
      broken({
        prepare: () => ({
          reactions: [reaction],
          evaluate: (_values, rates, offset) => {
            rates[offset] = 1;
          },
        }),
      }),
    ).toThrow(/used up/);
  });

  it('finds a negative rate and a NaN', () => {
    for (const bad of [-1, Number.NaN]) {
      expect(
        broken({
          prepare: () => ({
            reactions: [reaction],
            evaluate: (_values, rates, offset) => {
              rates[offset] = bad;
            },
          }),
        }),
      ).toThrow(/rate of leaching is/);
    }
  });

  it('finds a rate that does not grow with the enclosure', () => {
    expect(
      broken({
        prepare: ({ rate }, setting) => {
          const wood = setting.index('woodLeachable');
          return {
            reactions: [reaction],
            evaluate: (values, rates, offset) => {
              rates[offset] = rate * Math.sqrt(values[wood]!);
            },
          };
        },
      }),
    ).toThrow(/twice the enclosure/);
  });

  it('finds a process that remembers more than it should', () => {
    let calls = 0;
    expect(
      broken({
        prepare: (_parameters, setting) => {
          const wood = setting.index('woodLeachable');
          return {
            reactions: [reaction],
            evaluate: (values, rates, offset) => {
              calls += 1;
              rates[offset] = calls * values[wood]!;
            },
          };
        },
      }),
    ).toThrow(/second time/);
  });

  it('finds a derivation that writes elsewhere or returns no number', () => {
    const light = (
      write: (values: Float64Array, index: (id: 'lightOnAlgae') => number) => void,
    ): AnyDerivation =>
      listedDerivation({
        id: 'light',
        parameters: {},
        reads: ['lightAtSurface'],
        provides: ['lightOnAlgae'],
        prepare: (_parameters, setting) => ({ derive: (values) => write(values, setting.index) }),
      });
    expect(() => checkDerivation(light((values, index) => values.fill(1, index('lightOnAlgae'))))).toThrow();
    expect(() =>
      checkDerivation(
        light((values, index) => {
          values[index('lightOnAlgae')] = Number.POSITIVE_INFINITY;
        }),
      ),
    ).toThrow(/Infinity/);
    expect(() =>
      checkDerivation(
        light((values, index) => {
          values[index('lightOnAlgae')] = 1;
        }),
      ),
    ).not.toThrow();
  });
});
