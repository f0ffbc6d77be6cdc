import { describe, expect, it } from 'vitest';
import type { Devices } from '../plan/devices.ts';
import type { Plan } from '../plan/plan.ts';
import { climateCase, climateYear, hourlyYear, rareDays } from './climate-year.ts';
import { coverFor } from './cover-for.ts';
import { planWith } from './shape-test-kit.ts';

const boxed = (change: Partial<Plan['box']>, more: Partial<Plan> = {}) =>
  planWith({ ...more, box: { ...planWith().box, ...change } });
const equipped = (devices: Partial<Devices>) => planWith({ devices: { ...planWith().devices, ...devices } });
const mean = (values: Float64Array) => values.reduce((sum, one) => sum + one, 0) / values.length;
const yearOf = (plan: Plan) => hourlyYear(climateCase(plan));

describe('a year of the box', () => {
  it('closes heat and water to 1e-9 with every device', () => {
    const devices: Partial<Devices> = {
      heater: { power: 25, setpoint: 23 },
      mister: { name: 'mister', dailyMass: 0.1, at: [9, 19] },
      fogger: { name: 'fogger', power: 20, rate: 5e-5, from: 'pool', at: [8, 20], hours: 0.5 },
      fans: [
        { name: 'in', power: 1, flow: 1e-3, moves: 'inside', onAt: 0, hours: 24 },
        { name: 'out', power: 1, flow: 5e-4, moves: 'room', onAt: 10, hours: 6, above: 0.9 },
      ],
      mats: [
        { name: 'mat', power: 10, under: 'land', setpoint: 24, onAt: 0, hours: 24 },
        { name: 'base', power: 8, under: 'all', onAt: 6, hours: 4 },
      ],
    };
    for (const plan of [
      planWith(),
      equipped(devices),
      boxed({ secondPane: { gap: 0.01, thickness: 0.004 } }),
    ]) {
      const { closure } = yearOf(plan);
      expect(Math.abs(closure.water)).toBeLessThan(1e-9);
      expect(Math.abs(closure.heat)).toBeLessThan(1e-9);
    }
    const reservoir = equipped({ fogger: { ...devices.fogger!, from: 'reservoir' } });
    expect(Math.abs(yearOf(reservoir).closure.water)).toBeLessThan(1e-9);
  });
  it('is saturated when sealed and the room when wide open', () => {
    const dark = { devices: { lamps: [] } };
    const sealed = planWith({ ...dark, box: { ...planWith().box, coverOpenFraction: 0 } });
    const leakless = {
      ...climateCase(sealed),
      parameters: { ...climateCase(sealed).parameters, leakage: 0 },
    };
    expect(mean(hourlyYear(leakless).humidity)).toBeGreaterThan(0.995);
    const open = boxed({ coverOpenFraction: 1 }, dark);
    const draughty = { ...climateCase(open), parameters: { ...climateCase(open).parameters, draught: 1 } };
    expect(Math.abs(mean(hourlyYear(draughty).humidity) - 0.5)).toBeLessThan(0.03);
    expect(Math.abs(mean(hourlyYear(draughty).air) - 20)).toBeLessThan(0.3);
  });
  it('grows drier and clearer the wider the cover is open', () => {
    const years = [0, 0.01, 0.03, 0.08, 0.2, 0.6].map((open) =>
      rareDays(yearOf(boxed({ coverOpenFraction: open }))),
    );
    for (const [i, year] of years.entries()) {
      const before = years[i - 1];
      if (!before) continue;
      expect(year.humidity).toBeLessThan(before.humidity);
      expect(year.fog).toBeLessThanOrEqual(before.fog);
    }
  });
  it('keeps a planted box at 80 to 95 % with a clear front under a part-covered top (common practice, no source)', () => {
    for (const open of [0.03, 0.04, 0.05]) {
      const { year } = climateYear(boxed({ coverOpenFraction: open }));
      expect(year.humidity.mean).toBeGreaterThan(0.8);
      expect(year.humidity.mean).toBeLessThan(0.95);
      expect(year.foggyDay).toBe(0);
    }
    expect(climateYear(boxed({ coverOpenFraction: 0 })).year.fog).toBeGreaterThan(12);
  });
  it('has its mean day and months from the same hours', () => {
    const { months, days, year } = climateYear(planWith());
    expect(months.map(({ month }) => month)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
    for (const [i, month] of months.entries()) {
      const day = days[i]!.air;
      expect(day.reduce((sum, one) => sum + one, 0) / 24).toBeCloseTo(month.air.mean, 9);
      expect(month.dewPoint.mean).toBeLessThanOrEqual(month.air.mean);
    }
    expect(year.topOff).toBeCloseTo(year.lost, 5);
  });
});

describe('devices', () => {
  it('answer the way they must', () => {
    const plain = yearOf(planWith());
    const humidity = (plan: Plan) => mean(yearOf(plan).humidity);
    const mesh = { openShare: 0.36, hole: 0.5e-3 };
    expect(humidity(boxed({ coverMesh: mesh }))).toBeGreaterThan(mean(plain.humidity));
    const vents = [{ name: 'slot', pane: 'front', height: 0.2, length: 0.4, opening: 0.01 }] as const;
    expect(humidity(boxed({ vents }))).toBeLessThan(mean(plain.humidity));
    const fan = { name: 'fan', power: 1, flow: 1e-3, moves: 'room', onAt: 0, hours: 24 } as const;
    expect(humidity(equipped({ fans: [fan] }))).toBeLessThan(mean(plain.humidity));
    const fogger = {
      name: 'fogger',
      power: 20,
      rate: 5e-5,
      from: 'reservoir',
      at: [8, 14, 20],
      hours: 1,
    } as const;
    const fogged = yearOf(equipped({ fogger }));
    expect(mean(fogged.humidity)).toBeGreaterThan(mean(plain.humidity));
    expect(mean(fogged.air)).toBeLessThan(mean(plain.air));
    const mat = { name: 'mat', power: 15, under: 'land', onAt: 0, hours: 24 } as const;
    expect(mean(yearOf(equipped({ mats: [mat] })).air)).toBeGreaterThan(mean(plain.air));
    const cold = { ...mat, setpoint: 15 };
    expect(mean(yearOf(equipped({ mats: [cold] })).air)).toBeCloseTo(mean(plain.air), 9);
  });
  it('a fan with a humidistat holds the humidity it is set to', () => {
    const fan = { name: 'fan', power: 1, flow: 4e-3, moves: 'room', onAt: 0, hours: 24, above: 0.8 } as const;
    const plan = boxed({ coverOpenFraction: 0.01 }, { devices: { ...planWith().devices, fans: [fan] } });
    expect(Math.abs(mean(yearOf(plan).humidity) - 0.8)).toBeLessThan(0.03);
  });
  it('a second pane and stirred air warm the front glass', () => {
    const warm: Devices = { ...planWith().devices, heater: { power: 60, setpoint: 25 } };
    const front = (change: Partial<Plan['box']>, devices = warm) =>
      mean(yearOf(boxed(change, { devices })).frontGlass);
    const secondPane = { gap: 0.01, thickness: 0.004 };
    const fan = { name: 'fan', power: 0, flow: 20 / 3600, moves: 'inside', onAt: 0, hours: 24 } as const;
    expect(front({ secondPane })).toBeGreaterThan(front({}) + 0.3);
    expect(front({}, { ...warm, fans: [fan] })).toBeGreaterThan(front({}) + 0.01);
    const fog = (change: Partial<Plan['box']>) =>
      rareDays(yearOf(boxed({ coverOpenFraction: 0.025, ...change }, { devices: warm }))).fog;
    expect(fog({})).toBeGreaterThan(12);
    expect(fog({ secondPane })).toBeLessThan(fog({}));
  });
});

describe('the cover', () => {
  it('keeps the goal at both ends of the range it names', { timeout: 60_000 }, () => {
    const goal = { humidity: 0.8, fog: 2 };
    const { asDrawn, sentence } = coverFor(planWith(), goal);
    expect(asDrawn.range).toBeDefined();
    for (const open of [asDrawn.range!.from, asDrawn.range!.to]) {
      const { humidity, fog } = rareDays(yearOf(boxed({ coverOpenFraction: open })));
      // The search looks at every third day.
      expect(humidity).toBeGreaterThanOrEqual(goal.humidity - 0.005);
      expect(fog).toBeLessThanOrEqual(goal.fog);
    }
    expect(rareDays(yearOf(boxed({ coverOpenFraction: asDrawn.range!.to * 1.1 }))).humidity).toBeLessThan(
      goal.humidity,
    );
    expect(sentence).toContain('open the cover between');
  });
  it('says so when both cannot be had, and computes what would help', { timeout: 60_000 }, () => {
    const warm = planWith({ devices: { ...planWith().devices, heater: { power: 60, setpoint: 25 } } });
    const { asDrawn, alternatives, sentence } = coverFor(warm, { humidity: 0.97, fog: 0.5 });
    expect(asDrawn.range).toBeUndefined();
    expect(sentence).toContain('both cannot be had with this box');
    expect(alternatives.length).toBeGreaterThan(5);
    for (const { open, humidity } of alternatives) expect(open === 0 || humidity >= 0.97).toBe(true);
    expect(() => coverFor(planWith(), { humidity: 1.2, fog: 1 })).toThrow(RangeError);
  });
});
