import { convert, feltWater, type Plan } from '@shoreglass/engine';
import { describe, expect, it } from 'vitest';
import { loadBundledEnclosure } from '../enclosure/bundled.ts';
import { type MeasuredStart, startFromReadings } from './start-from-readings.ts';

const { plan } = loadBundledEnclosure('beck-bank');

function started(text: string): MeasuredStart {
  const start = startFromReadings(plan, text);
  if ('wrong' in start) throw new Error(start.wrong);
  return start;
}
const felt = ({ water, room }: Plan) => feltWater({ composition: water.fill, temperature: 20 }, room);

describe('a start from readings', () => {
  it('has the hardness and carbonate hardness read, in whatever unit', () => {
    for (const text of [
      'KH 4 °dKH, GH 7 °dGH',
      'KH = 71.4 ppm; GH: 125 ppm CaCO3',
      'GH 12.46 °fH, KH 1.427 meq/L',
    ]) {
      const water = felt(started(text).plan);
      expect(water.KH).toBeCloseTo(4, 1);
      expect(water.GH).toBeCloseTo(7, 1);
    }
  });
  it('keeps the calcium share of the plan, and says so', () => {
    const { plan: after, inferred } = started('GH 7 °dGH');
    const share = ({ calcium, magnesium }: Plan['water']['fill']) => calcium / (calcium + magnesium);
    expect(share(after.water.fill)).toBeCloseTo(share(plan.water.fill), 12);
    expect(inferred.join(' ')).toMatch(/shared between calcium and magnesium/);
    expect(inferred.join(' ')).toMatch(/Carbonate hardness was not measured/);
    expect(felt(after).KH).toBeCloseTo(felt(plan).KH, 9);
  });
  it('meets the conductivity with table salt without moving hardness or alkalinity', () => {
    const { plan: after, inferred } = started('KH 4 °dKH, GH 7 °dGH, EC 450 µS/cm');
    const water = felt(after);
    expect(water.conductivity).toBeCloseTo(450, 3);
    expect(water.KH).toBeCloseTo(4, 2);
    expect(inferred.join(' ')).toMatch(/table salt/);
  });
  it('says when a conductivity cannot be with such a hardness', () => {
    const { inferred } = started('KH 10 °dKH, GH 16 °dGH, EC 150 µS/cm');
    expect(inferred.join(' ')).toMatch(/more than the 150 measured: one of them is off/);
  });
  it('reads nitrate as the ion and as nitrogen alike, and explains what becomes of a pH', () => {
    const ion = started('NO3 44.3 mg/L').plan.water.fill.nitrate;
    expect(started('nitrate 10 mg N/L').plan.water.fill.nitrate).toBeCloseTo(ion, 2);
    expect(convert(ion, 'mmol/L', 'mol/m³')).toBeCloseTo(0.714, 2);
    expect(started('pH 6.8').inferred.join(' ')).toMatch(/pH 6\.8 was not used: .* carbon dioxide/);
  });
  it.each([
    ['KH 4', /unit/],
    ['chalk 4 °dKH', /'chalk 4 °dKH' does not begin/],
    ['KH 4 °dKH, KH 5 °dKH', /given twice/],
    ['pH 20', /not a number from 3 to 11/],
    ['GH 7 µS/cm', /µS\/cm/],
    ['', /does not begin/],
  ])('%s: says what is wrong and the mend', (text, wrong) => {
    const start = startFromReadings(plan, text);
    expect('wrong' in start && start.wrong).toMatch(wrong);
    expect('mend' in start && start.mend.length).toBeGreaterThan(10);
  });
});
