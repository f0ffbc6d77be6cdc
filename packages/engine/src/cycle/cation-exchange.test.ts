import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { listed } from '../process/contract.ts';
import { changesByState, checkProcess } from '../process/process-test-kit.ts';
import { cationExchange } from './cation-exchange.ts';
import { exchangeFractions } from './exchange-equilibrium.ts';

const HOLDS = { calciumHold: 0.8, magnesiumHold: 0.6, potassiumHold: 0.7, ammoniumHold: 0.6 };
const PARAMETERS = { grainRate: 1, bedVelocity: 3, looseFlow: 300, ...HOLDS };
const process = listed(cationExchange);
/** Moss washed with acid, one gram in a litre of water of pH 5.5. */
const MOSS = {
  exchangeableAcid: 1.35e-3,
  looseExchanger: 1.35e-3,
  exchangeAcidStrength: 300,
  hydrogenActivity: 3e-6,
  waterVolume: 1e-3,
};
const K = { calcium: 6.3, magnesium: 4, potassium: 5, ammonium: 4, sodium: 1, hydrogen: 300 };
const NONE = { calcium: 0, magnesium: 0, potassium: 0, ammonium: 0, sodium: 0 };

/** Alkalinity a change brings to the water [eq/s]. */
function alkalinity(change: Readonly<Record<string, number>>): number {
  const of = (id: string): number => change[id] ?? 0;
  return 2 * of('calcium') + 2 * of('magnesium') + of('sodium') + of('potassium') + of('ammonium');
}

describe('the balance of an exchanger with a water', () => {
  it('keeps the quotients of Gaines and Thomas and fills every site', () => {
    const amount = fc.double({ min: 1e-7, max: 0.05, noNaN: true });
    fc.assert(
      fc.property(
        amount,
        amount,
        amount,
        fc.double({ min: 1e-9, max: 1e-3, noNaN: true }),
        (calcium, sodium, potassium, hydrogen) => {
          const beta = exchangeFractions(K, { ...NONE, calcium, sodium, potassium, hydrogen });
          expect(beta.calcium + beta.sodium + beta.potassium + beta.hydrogen).toBeCloseTo(1, 9);
          const calciumOverSodium = (beta.calcium * sodium ** 2) / (beta.sodium ** 2 * calcium);
          expect(Math.abs(calciumOverSodium / K.calcium - 1)).toBeLessThan(1e-9);
          const hydrogenOverSodium = (beta.hydrogen * sodium) / (beta.sodium * hydrogen);
          expect(Math.abs(hydrogenOverSodium / K.hydrogen - 1)).toBeLessThan(1e-9);
        },
      ),
      { numRuns: 200, seed: 20240301 },
    );
  });
});

describe('exchange of cations', () => {
  it('keeps the contract', () => checkProcess(process));

  it('does nothing to pure water over acid moss', () => {
    expect(changesByState(process, PARAMETERS, MOSS)).toEqual({});
  });

  it('takes alkalinity from salt water, most with calcium and least with potassium', () => {
    // order read in 'The pH-lowering ability of Sphagnum magellanicum', J. Bryology 1992, abstract: K < Mg < Ca
    const lost = (salt: string): number =>
      -alkalinity(changesByState(process, PARAMETERS, { ...MOSS, [salt]: 1e-3 }));
    expect(lost('potassium')).toBeGreaterThan(0);
    expect(lost('magnesium')).toBeGreaterThan(lost('potassium'));
    expect(lost('calcium')).toBeGreaterThan(lost('magnesium'));
  });

  it('keeps the sites: what is bound or given up is paid with hydrogen ions', () => {
    const change = changesByState(process, PARAMETERS, {
      ...MOSS,
      calcium: 1e-3,
      sodium: 2e-3,
      exchangeableSodium: 4e-4,
      exchangeableMagnesium: 2e-4,
    });
    const of = (id: string): number => change[id] ?? 0;
    const sites =
      2 * of('exchangeableCalcium') +
      2 * of('exchangeableMagnesium') +
      of('exchangeableSodium') +
      of('exchangeableAcid');
    expect(Math.abs(sites)).toBeLessThan(1e-12 * Math.abs(of('exchangeableAcid')));
    expect(alkalinity(change)).toBeCloseTo(of('exchangeableAcid'), 15);
  });

  it('rests where the exchanger holds what the water leaves it', () => {
    const water = { ...NONE, calcium: 1e-3, sodium: 2e-3, hydrogen: 1e-5 };
    const k = { ...K, calcium: 10 ** 0.8, magnesium: 10 ** 0.6, potassium: 10 ** 0.7, ammonium: 10 ** 0.6 };
    const beta = exchangeFractions(k, water);
    const change = changesByState(process, PARAMETERS, {
      ...MOSS,
      hydrogenActivity: 1e-5,
      calcium: 1e-3,
      sodium: 2e-3,
      exchangeableCalcium: 0.5 * beta.calcium,
      exchangeableSodium: beta.sodium,
      exchangeableAcid: beta.hydrogen,
      looseExchanger: 1,
    });
    for (const rate of Object.values(change)) expect(Math.abs(rate) * 86400).toBeLessThan(1e-9);
  });
});
