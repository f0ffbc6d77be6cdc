import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nitrified, withHydrochloricAcid, withSodiumHydroxide } from './dosing.ts';
import { alkalinityOf } from './hardness.ts';
import { blended, evaporated, toppedOff } from './mixing.ts';

const TAP = { calcium: 2, magnesium: 0.5, sodium: 1, chloride: 1, sulfate: 0.5 };
const share = fc.double({ min: 0, max: 0.99, noNaN: true });

describe('mixing', () => {
  it('blends by share', () => {
    expect(blended(TAP, {}, 0.25)).toMatchObject({ calcium: 0.5, magnesium: 0.125, phosphate: 0 });
    expect(blended(TAP, { calcium: 1 }, 0)).toMatchObject({ calcium: 1, magnesium: 0 });
  });
  it('concentrates alkalinity as everything else', () => {
    fc.assert(
      fc.property(share, (f) => {
        expect(alkalinityOf(evaporated(TAP, f)) * (1 - f)).toBeCloseTo(alkalinityOf(TAP), 9);
      }),
    );
  });
  it('gives back the first water when vapour is replaced by pure water', () => {
    fc.assert(
      fc.property(share, (f) => {
        expect(toppedOff(TAP, {}, f)).toMatchObject(TAP);
        expect(toppedOff(TAP, TAP, f).calcium).toBeCloseTo(2 * (1 + f), 12);
      }),
    );
  });
  it('refuses shares that are none', () => {
    expect(() => blended(TAP, {}, 1.1)).toThrow(RangeError);
    expect(() => evaporated(TAP, 1)).toThrow(RangeError);
    expect(() => toppedOff(TAP, {}, Number.NaN)).toThrow(RangeError);
  });
});

describe('dosing', () => {
  it('moves alkalinity by the charge of the dose', () => {
    const before = alkalinityOf(TAP);
    expect(alkalinityOf(withHydrochloricAcid(TAP, 0.3))).toBeCloseTo(before - 0.3, 12);
    expect(alkalinityOf(withSodiumHydroxide(TAP, 0.3))).toBeCloseTo(before + 0.3, 12);
  });
  // Textbook: nitrification of 1 mg N uses 7.14 mg of alkalinity as CaCO3, 0.1428 meq.
  it('takes two of alkalinity per nitrogen oxidised', () => {
    const water = { ...TAP, ammonium: 1 / 14.007 };
    const after = nitrified(water, 1 / 14.007);
    expect(alkalinityOf(water) - alkalinityOf(after)).toBeCloseTo(0.1428, 4);
    expect(after.nitrate).toBeCloseTo(1 / 14.007, 12);
    expect(() => nitrified(TAP, 0.1)).toThrow('cannot be oxidised');
  });
});
