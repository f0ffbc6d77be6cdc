import { describe, expect, it } from 'vitest';
import { LIBRARY_MEDIANS } from './library-medians-test-kit.ts';
import { type Entries, fillTank, passDay, TAP_WATER, type Tank } from './tank-test-kit.ts';

const RIPE: Entries = {
  ammoniaOxidisers: 5e-4,
  nitriteOxidisers: 2e-4,
  attachedAlgae: 1e-3,
  biofilm: 2e-4,
  detritusCarbon: 0.02,
  detritusNitrogen: 0.002,
  detritusPhosphorus: 1e-4,
};
/** 10 mg N/L and 1 mg P/L. */
const FERTILE: Entries = { ...TAP_WATER, nitrate: 0.7, phosphate: 0.032, sodium: 1.2 };

interface Keeping {
  readonly light?: number;
  readonly days?: number;
  readonly contents?: Entries;
  readonly water?: Entries;
  readonly setting?: Entries;
  readonly each?: (tank: Tank, day: number) => void;
}

function keep({ light = 60, days = 60, contents, water, setting, each }: Keeping): Tank {
  const tank = fillTank({
    parameters: LIBRARY_MEDIANS,
    water: { ...FERTILE, ...water },
    contents: { ...RIPE, ...contents },
    ...(setting ? { setting } : {}),
  });
  for (let day = 1; day <= days; day += 1) {
    passDay(tank, light, 11);
    each?.(tank, day);
  }
  return tank;
}

const EVERYTHING: Entries = {
  submergedPlants: 0.1,
  floatingPlants: 0.05,
  emersedPlants: 0.3,
  suspendedAlgae: 1e-4,
};

describe('producers and denitrification together', () => {
  it('close every element to 1e-10 and stay positive', () => {
    const tank = keep({ contents: EVERYTHING, setting: { wetPlantGround: 0.1 }, light: 120, days: 120 });
    expect(tank.closure()).toBeLessThan(1e-10);
    for (const value of tank.values) expect(value).toBeGreaterThanOrEqual(0);
  });

  it('leave less nitrate the more plants there are, algae kept out', () => {
    // with algae in, plants that shade them may leave more
    for (const pool of ['submergedPlants', 'floatingPlants', 'emersedPlants'] as const) {
      const nitrate = [0, 0.05, 0.2].map((amount) =>
        keep({
          contents: { [pool]: amount, attachedAlgae: 0 },
          setting: { wetPlantGround: 0.1 },
          days: 30,
        }).holds('nitrate'),
      );
      expect([pool, nitrate[1]! < nitrate[0]! && nitrate[2]! < nitrate[1]!]).toEqual([pool, true]);
    }
  });

  it('lose nitrate to nitrogen gas over muddy ground, and get alkalinity back for it', () => {
    const mud = { detritusCarbon: 0.5, detritusNitrogen: 0.02, detritusPhosphorus: 0.001 };
    const [bare, deep] = [0, 0.2].map((wetSubstrate) =>
      keep({ light: 0, contents: mud, setting: { wetSubstrate }, days: 30 }),
    );
    expect(deep!.holds('nitrate')).toBeLessThan(0.9 * bare!.holds('nitrate'));
    const lost = deep!.extent('denitrification');
    expect(lost).toBeGreaterThan(0);
    expect(deep!.closure()).toBeLessThan(1e-10);
  });

  it('fix no less carbon in more light', () => {
    const fixed = [20, 60, 180, 500].map((light) => {
      const tank = keep({ light, days: 5, contents: EVERYTHING, setting: { wetPlantGround: 0.1 } });
      return tank.system.reactions
        .filter(({ name }) => name.startsWith('growth of') && !name.includes('film'))
        .reduce((sum, { name }) => sum + tank.extent(name), 0);
    });
    expect(fixed).toEqual([...fixed].sort((a, b) => a - b));
  });

  it('shade: under a mat of floating plants less of everything grows', () => {
    const open = keep({ days: 60, light: 120 });
    const covered = keep({ days: 60, light: 120, contents: { floatingPlants: 0.8 } });
    for (const id of ['attachedAlgae', 'suspendedAlgae'] as const)
      expect(covered.holds(id)).toBeLessThan(0.5 * open.holds(id));
  });
});

/** An unplanted tank at a bright window, still, its surfaces just cleaned, fertile, without ripe filter. */
const WINDOW: Keeping = {
  light: 400,
  contents: { attachedAlgae: 1e-4, suspendedAlgae: 1e-4 },
  setting: { surfaceRenewal: 0, submergedArea: 0.3, wetSubstrate: 0 },
};

describe('green water', () => {
  it('comes at a bright window and not under a dim lamp', () => {
    // common practice, no source: direct sun or more than about 10 mol/m2/d over phosphate-rich water
    const bright = keep({ ...WINDOW, days: 17 }).holds('suspendedAlgae') * 12.011;
    const dim = keep({ ...WINDOW, light: 40, days: 17 }).holds('suspendedAlgae') * 12.011;
    expect(bright).toBeGreaterThan(2.5);
    expect(dim).toBeLessThan(0.2);
  });

  it('ends by itself once carbon and nutrients run short and the surfaces have grown over', () => {
    const stock: number[] = [];
    keep({ ...WINDOW, days: 35, each: (tank) => stock.push(tank.holds('suspendedAlgae')) });
    const peak = Math.max(...stock);
    expect(stock.indexOf(peak)).toBeLessThan(25);
    expect(stock.at(-1)!).toBeLessThan(0.2 * peak);
  });

  it('is kept down by plants that take light and nutrients', () => {
    const alone = keep({ ...WINDOW, days: 17 }).holds('suspendedAlgae');
    const planted = keep({ ...WINDOW, days: 17, contents: { ...WINDOW.contents, submergedPlants: 1 } });
    expect(planted.holds('suspendedAlgae')).toBeLessThan(0.5 * alone);
  });

  it('swings oxygen through the day: lowest before dawn, highest late in the light, and acidity with it', () => {
    const tank = keep({ ...WINDOW, days: 14 });
    const hours: { oxygen: number; carbon: number }[] = [];
    passDay(tank, 400, 11, () =>
      hours.push({ oxygen: tank.holds('oxygen') * 31.998, carbon: tank.holds('dissolvedInorganicCarbon') }),
    );
    const oxygen = hours.map((hour) => hour.oxygen);
    const lowest = oxygen.indexOf(Math.min(...oxygen));
    const highest = oxygen.indexOf(Math.max(...oxygen));
    expect(lowest).toBeGreaterThanOrEqual(4);
    expect(lowest).toBeLessThanOrEqual(8);
    expect(highest).toBeGreaterThanOrEqual(13);
    expect(highest).toBeLessThanOrEqual(18);
    expect(Math.max(...oxygen) - Math.min(...oxygen)).toBeGreaterThan(3);
    expect(hours[highest]!.carbon).toBeLessThan(hours[lowest]!.carbon);
  });

  it('collapses when the light fails, and the dip before dawn deepens while it rots', () => {
    const tank = keep({ ...WINDOW, days: 17 });
    let before = Number.POSITIVE_INFINITY;
    passDay(tank, 400, 11, () => {
      before = Math.min(before, tank.holds('oxygen'));
    });
    const stock = tank.holds('suspendedAlgae');
    let after = Number.POSITIVE_INFINITY;
    for (let day = 0; day < 7; day += 1)
      passDay(tank, 10, 11, () => {
        after = Math.min(after, tank.holds('oxygen'));
      });
    expect(tank.holds('suspendedAlgae')).toBeLessThan(0.2 * stock);
    expect(after).toBeLessThan(0.7 * before);
    expect(tank.closure()).toBeLessThan(1e-10);
  });
});
