import { describe, expect, it } from 'vitest';
import { LIBRARY_MEDIANS } from './library-medians-test-kit.ts';
import { type Entries, fillTank, TAP_WATER } from './tank-test-kit.ts';

const MILLIGRAM = 1 / 14.007;
/** What a new filter begins with; see `settled` in the guide. */
const TRACE = { ammoniaOxidisers: 1e-7, nitriteOxidisers: 2.5e-8, attachedAlgae: 1e-3 };

interface Start {
  readonly water?: Entries;
  readonly contents?: Entries;
  readonly setting?: Entries;
}

/**
 * Days until a start without animals, given 1 mg N/L of ammonium whenever it is used up, oxidises a dose to nitrate
 * within a day; 200 when it never does. The water is buffered for all the acid that makes.
 */
function daysUntilRipe({ water = {}, contents = {}, setting = {} }: Start = {}): number {
  const tank = fillTank({
    parameters: LIBRARY_MEDIANS,
    water: { ...TAP_WATER, sodium: 5, phosphate: 0.01, ammonium: MILLIGRAM, ...water },
    contents: { ...TRACE, ...contents },
    setting,
  });
  const low = 0.25 * MILLIGRAM;
  let isDosed = false;
  for (let day = 1; day <= 200; day += 1) {
    tank.pass(24);
    const isClear = tank.holds('ammonium') < low;
    if (isDosed && isClear && tank.holds('nitrite') < low) return day;
    isDosed = isClear;
    if (isClear) tank.add({ ammonium: MILLIGRAM * 0.04, chloride: MILLIGRAM * 0.04 });
  }
  return 200;
}

describe('start-up of a new enclosure', () => {
  const usual = daysUntilRipe();

  it('takes roughly four to six weeks before it oxidises ammonia and nitrite fully', () => {
    // common practice, no source; 21 to 50 days are told of
    expect(usual).toBeGreaterThanOrEqual(21);
    expect(usual).toBeLessThanOrEqual(50);
  });

  it('is faster with a share of ripe filter', () => {
    const seeded = daysUntilRipe({ contents: { ammoniaOxidisers: 2e-4, nitriteOxidisers: 5e-5 } });
    // common practice, no source: 0.2 to 0.7 of the time
    expect(seeded / usual).toBeGreaterThan(0.1);
    expect(seeded / usual).toBeLessThan(0.7);
  });

  it('is slower in the cold', () => {
    expect(daysUntilRipe({ setting: { waterTemperature: 14 } })).toBeGreaterThan(1.4 * usual);
  });

  it('stalls in water without alkalinity, which turns acid', () => {
    const soft = { calcium: 0.05, magnesium: 0.02, sodium: 0.05, chloride: 0.1, sulfate: 0.04 };
    expect(daysUntilRipe({ water: soft })).toBeGreaterThan(2 * usual);
  });

  it('stalls without surface to grow on', () => {
    const bare = { submergedArea: 0.01, darkFilmSurface: 0 };
    expect(daysUntilRipe({ setting: bare })).toBeGreaterThan(1.5 * usual);
  });

  it('is held up by too much ammonia in alkaline water, which keeps back the nitrite oxidisers', () => {
    const strong = { ammonium: 40 * MILLIGRAM, chloride: 0.5 + 40 * MILLIGRAM, sodium: 8 };
    expect(daysUntilRipe({ water: strong })).toBeGreaterThan(usual);
  });

  it('leaves next to no ammonia and nitrite once it is ripe, be it fed every day', () => {
    const tank = fillTank({
      parameters: LIBRARY_MEDIANS,
      water: { ...TAP_WATER, sodium: 5, phosphate: 0.01, ammonium: 0 },
      contents: { ...TRACE, ammoniaOxidisers: 2e-4, nitriteOxidisers: 5e-5 },
    });
    for (let day = 1; day <= 60; day += 1) {
      tank.add({ ammonium: MILLIGRAM * 0.01, chloride: MILLIGRAM * 0.01 });
      tank.pass(24);
    }
    // common practice, no source: drop tests, whose first steps are 0.05 mg/L of the ion, show none of either
    expect(tank.holds('ammonium')).toBeLessThan(0.05 / 18.04);
    expect(tank.holds('nitrite')).toBeLessThan((0.05 * 14.007) / 46.006 / 14.007);
  });
});
