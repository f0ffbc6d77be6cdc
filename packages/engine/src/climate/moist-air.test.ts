import fc from 'fast-check';
import psychrolib from 'psychrolib';
import { beforeAll, describe, expect, it } from 'vitest';
import {
  humidityRatio,
  humidityRatioFromWetBulb,
  moistAirDensity,
  moistAirEnthalpy,
  moistAirVolume,
  standardPressure,
  vapourPressure,
  wetBulb,
} from './moist-air.ts';
import { dewPoint, saturationSlope, saturationVapourPressure } from './saturation.ts';
import { saturationCurve } from './saturation-curve.ts';

const degrees = fc.double({ min: 1, max: 60, noNaN: true });
const humidity = fc.double({ min: 0.1, max: 0.999, noNaN: true });
const pascals = fc.double({ min: 70000, max: 105000, noNaN: true });

/** PsychroLib 1.1.1, an independent implementation of the same handbook chapter. */
describe('against PsychroLib', () => {
  beforeAll(() => psychrolib.SetUnitSystem(psychrolib.SI));
  const relative = (ours: number, theirs: number, tolerance: number) =>
    expect(Math.abs(ours / theirs - 1)).toBeLessThan(tolerance);

  it('saturation vapour pressure, humidity ratio, enthalpy, volume and density', () => {
    fc.assert(
      fc.property(degrees, humidity, pascals, (t, rh, p) => {
        const saturated = saturationVapourPressure(t);
        const ratio = humidityRatio(rh * saturated, p);
        relative(saturated, psychrolib.GetSatVapPres(t), 1e-6);
        relative(ratio, psychrolib.GetHumRatioFromRelHum(t, rh, p), 1e-5);
        relative(moistAirEnthalpy(t, ratio), psychrolib.GetMoistAirEnthalpy(t, ratio), 1e-9);
        relative(moistAirVolume(t, ratio, p), psychrolib.GetMoistAirVolume(t, ratio, p), 1e-6);
        relative(moistAirDensity(t, ratio, p), psychrolib.GetMoistAirDensity(t, ratio, p), 1e-6);
      }),
    );
  });

  it('dew point and wet bulb, within its iteration tolerance of 0.001 K', () => {
    fc.assert(
      fc.property(degrees, humidity, pascals, (t, rh, p) => {
        const vapour = rh * saturationVapourPressure(t);
        fc.pre(vapour > 700);
        expect(Math.abs(dewPoint(vapour) - psychrolib.GetTDewPointFromRelHum(t, rh))).toBeLessThan(0.005);
        const ours = wetBulb(t, humidityRatio(vapour, p), p);
        expect(Math.abs(ours - psychrolib.GetTWetBulbFromRelHum(t, rh, p))).toBeLessThan(0.01);
      }),
    );
  });

  it('standard atmosphere', () => {
    for (const z of [0, 500, 2000, 4000])
      relative(standardPressure(z), psychrolib.GetStandardAtmPressure(z), 1e-4);
  });
});

describe('properties', () => {
  it('vapour pressure and humidity ratio give each other back', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 20000, noNaN: true }), pascals, (vapour, p) => {
        expect(vapourPressure(humidityRatio(vapour, p), p) / vapour).toBeCloseTo(1, 12);
      }),
    );
  });
  it('dew point and wet bulb give back the vapour they came from', () => {
    fc.assert(
      fc.property(degrees, humidity, pascals, (t, rh, p) => {
        const vapour = rh * saturationVapourPressure(t);
        expect(saturationVapourPressure(dewPoint(vapour)) / vapour).toBeCloseTo(1, 10);
        const ratio = humidityRatio(vapour, p);
        expect(humidityRatioFromWetBulb(t, wetBulb(t, ratio, p), p) / ratio).toBeCloseTo(1, 5);
      }),
    );
  });
  it('the slope is the derivative, by central difference', () => {
    for (const t of [0, 10, 25, 45]) {
      const difference = (saturationVapourPressure(t + 1e-4) - saturationVapourPressure(t - 1e-4)) / 2e-4;
      expect(saturationSlope(t) / difference).toBeCloseTo(1, 6);
    }
  });
  it('the tabulated tangent touches the curve', () => {
    const curve = saturationCurve(101325);
    const tangent = new Float64Array(2);
    fc.assert(
      fc.property(fc.double({ min: -19.9, max: 79.9, noNaN: true }), (t) => {
        curve.tangent(t, tangent, 0);
        const saturated = saturationVapourPressure(t);
        expect((tangent[0]! + tangent[1]! * t) / humidityRatio(saturated, 101325)).toBeCloseTo(1, 6);
        const slope = (0.621945 * 101325 * saturationSlope(t)) / (101325 - saturated) ** 2;
        expect(tangent[1]! / slope).toBeCloseTo(1, 4);
      }),
    );
  });
  it('refuse what cannot be', () => {
    expect(() => humidityRatio(101325, 101325)).toThrow(RangeError);
    expect(() => dewPoint(0)).toThrow(RangeError);
    expect(() => saturationCurve(101325).tangent(90, new Float64Array(2), 0)).toThrow(RangeError);
    expect(() => saturationCurve(1000)).toThrow(RangeError);
  });
});
