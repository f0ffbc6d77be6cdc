import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { listed } from '../process/contract.ts';
import { changesByState, checkProcess } from '../process/process-test-kit.ts';
import { cationExchange } from './cation-exchange.ts';
import { heldInBalance } from './exchange-pair.ts';

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
/** Alkalinity a change brings to the water [eq/s]. */
function alkalinity(change: Readonly<Record<string, number>>): number {
  const of = (id: string): number => change[id] ?? 0;
  return 2 * of('calcium') + 2 * of('magnesium') + of('sodium') + of('potassium') + of('ammonium');
}

describe('the balance of a cation with hydrogen ions', () => {
  it('keeps the quotient of Gaines and Thomas and the shared sites', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(1, 2),
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        fc.double({ min: 1e-6, max: 1e6, noNaN: true }),
        (charge, shared, ratio) => {
          const cation = heldInBalance(charge, shared, ratio);
          const hydrogen = shared - cation;
          expect(cation).toBeLessThanOrEqual(shared);
          expect(Math.abs(cation - ratio * hydrogen ** charge)).toBeLessThan(1e-6 * (1 + ratio * 1e-6));
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

  it('rests where all quotients of the convention hold', () => {
    // beta: H 0.5, Ca 0.3, Na 0.2 at pH 5; K_H = 300, so Na = beta_Na K_H aH / beta_H and Ca by its own quotient
    const acidPull = 300 * 1e-5;
    const change = changesByState(process, PARAMETERS, {
      exchangeableAcid: 0.5,
      exchangeableCalcium: 0.15,
      exchangeableSodium: 0.2,
      exchangeAcidStrength: 300,
      looseExchanger: 1,
      hydrogenActivity: 1e-5,
      waterVolume: 1,
      sodium: 1000 * (0.2 / 0.5) * acidPull,
      calcium: 1000 * (0.3 / 0.25) * (acidPull ** 2 / 10 ** 0.8),
    });
    for (const rate of Object.values(change)) expect(Math.abs(rate) * 86400).toBeLessThan(1e-9);
  });

  it('gives bases up to acid water and not to water that only lacks them', () => {
    const bases = { exchangeableCalcium: 3e-4, exchangeableAcid: 7e-4, looseExchanger: 1e-3 };
    const water = { exchangeAcidStrength: 300, waterVolume: 1e-3, calcium: 1e-7 };
    const gained = (hydrogenActivity: number): number =>
      alkalinity(changesByState(process, PARAMETERS, { ...bases, ...water, hydrogenActivity }));
    expect(gained(1e-3)).toBeGreaterThan(0);
    expect(gained(1e-8)).toBeLessThan(1e-12);
  });
});
