import { describe, expect, it } from 'vitest';
import { pumpHead } from '../hydraulics/pump.ts';
import { CLEAN, circuitPoint, FOULED, wayHead } from '../hydraulics/pump-circuit.ts';
import type { Habitat } from '../life/traits.ts';
import { surfaceLight } from '../light/surface-light.ts';
import type { Pump } from '../plan/devices.ts';
import { lampField } from './light-field.ts';
import { shapeSheet } from './shape-sheet-of.ts';
import { BANK, POOL, planWith } from './shape-test-kit.ts';
import { wetFront } from './zone-figures.ts';

const PUMP: Pump = {
  name: 'pump',
  power: 5,
  flow: 5e-5,
  fallHeight: 0.1,
  filmSurface: 0.2,
  curve: { shutOffHead: 0.8, freeFlow: 400e-3 / 3600, exponent: 2 },
  outlet: 0.4,
  hose: { length: 0.6, bore: 0.012, elbows: 2, valves: 0 },
  filter: { kind: 'foam', area: 0.008, thickness: 0.05, pores: 20 },
  lip: 0.05,
};
const withPump = (change: Partial<Pump> = {}, level = 0.15) => {
  const plan = planWith();
  return planWith({
    devices: { ...plan.devices, pump: { ...PUMP, ...change } },
    water: { ...plan.water, level },
  });
};

describe('geometry and masses', () => {
  const sheet = shapeSheet(planWith());
  it('are those of boxes worked out by hand', () => {
    // pool 50 x 45 cm, sand 5 cm; bank 40 x 45 cm; water 15 cm; pores 40 %
    expect(sheet.geometry.openVolume).toBeCloseTo(0.5 * 0.45 * 0.1, 12);
    expect(sheet.geometry.poreVolume).toBeCloseTo(0.4 * (0.5 * 0.45 * 0.05 + 0.4 * 0.45 * 0.15), 12);
    expect(sheet.geometry.wallArea).toBeCloseTo(0.45 * 0.1, 6);
    expect(sheet.geometry.soilVolume).toBeCloseTo(0.4 * 0.45 * 0.07, 9);
    expect(sheet.geometry.freeboard).toBeCloseTo(0.35, 12);
    const mass = (name: string) => sheet.masses.parts.find((part) => part.name === name)?.mass;
    expect(mass('water')).toBeCloseTo(998 * sheet.geometry.waterVolume, 9);
    // base 92 x 47, front and back 92 x 50, sides 45 x 50 cm, all 10 mm; cover 4 mm over 96 %
    const glass = 2500 * (0.01 * (0.92 * 0.47 + 2 * 0.92 * 0.5 + 2 * 0.45 * 0.5) + 0.004 * 0.96 * 0.405);
    expect(mass('glass')).toBeCloseTo(glass, 9);
    // dry 800 kg/m3 below the water, 10 % held water above it
    const drainage = 0.18 * (0.15 * 800 + 0.03 * (800 + 0.1 * 998));
    expect(mass('drainage, moist')).toBeCloseTo(drainage, 6);
    expect(sheet.masses.total).toBeCloseTo(
      sheet.masses.parts.reduce((sum, part) => sum + part.mass, 0),
      9,
    );
    expect(sheet.masses.floorPressure).toBeCloseTo((sheet.masses.total * 9.80665) / (0.92 * 0.47), 6);
  });
  it('add up over the zones', () => {
    const water = sheet.zones.reduce((sum, zone) => sum + zone.waterVolume, 0);
    expect(water).toBeCloseTo(sheet.geometry.openVolume, 9);
    expect(sheet.zones.reduce((sum, zone) => sum + zone.area, 0)).toBeCloseTo(0.405, 9);
    expect(sheet.geometry.field.ground).toHaveLength(
      sheet.geometry.field.columns * sheet.geometry.field.rows,
    );
  });
  it('tell wood that floats from wood that sinks', () => {
    const piece = {
      id: 'w',
      name: 'root',
      kind: 'wood',
      material: 'w',
      course: [
        [0.1, 0.1, 0.05],
        [0.3, 0.2, 0.05],
      ],
      contents: {},
    } as const;
    const uplift = (mass: number) =>
      shapeSheet(planWith({ hardscape: [{ ...piece, mass, volume: 1e-3 }] })).masses.uplift;
    expect(uplift(0.5)[0]?.force).toBeCloseTo((998 - 500) * 1e-3 * 9.80665, 9);
    expect(uplift(1.2)).toEqual([]);
  });
});

describe('drainage', () => {
  it('lifts water from layer to layer until one is too coarse', () => {
    // drainage to 18 cm lifts 2 cm above 15 cm: 17 cm, short of the soil
    expect(wetFront(BANK, 0.15)).toBeCloseTo(0.17, 12);
    expect(shapeSheet(planWith()).zones[1]?.drainage).toBe('drains');
    // the soil's own rise counts from the water, once it is reached
    expect(wetFront(BANK, 0.17)).toBeCloseTo(0.42, 12);
    const wet = shapeSheet(planWith({ water: { ...planWith().water, level: 0.17 } }));
    expect(wet.zones[1]?.drainage).toBe('soggy');
    expect(wet.remarks.find(({ place }) => place === 'zones.bank.layers')?.message).toContain('stays soggy');
  });
});

describe('ways out of the water', () => {
  it('weigh less where only animals of the water are planned', () => {
    const living = (habitat: Habitat) => {
      const traits = { priors: {} as never, mating: 'two sexes', brood: 'carried', habitat } as const;
      const one = { id: 'a', species: 'Inventa', name: 'invented', traits, founders: [], zone: 'pool' };
      const { remarks } = shapeSheet(planWith({ populations: [one] }));
      return remarks.find(({ message }) => message.startsWith('nothing leads out of the water'))?.severity;
    };
    expect(living('water')).toBe('note');
    expect(living('amphibious')).toBe('warning');
    expect(living('land')).toBe('warning');
  });

  it('are missing between upright walls, and there with a slope', () => {
    const walls = shapeSheet(planWith());
    expect(walls.geometry.escapes).toMatchObject({ climbable: 0, hasWayOut: false });
    expect(walls.geometry.escapes.shoreline).toBeCloseTo(0.45, 6);
    expect(walls.remarks.some(({ message }) => message.startsWith('nothing leads out of the water'))).toBe(
      true,
    );
    const slope = {
      ...POOL,
      id: 'margin',
      name: 'Margin',
      kind: 'margin',
      from: 0.4,
      to: 0.9,
      groundStart: 0.05,
      groundEnd: 0.25,
    } as const;
    const shore = shapeSheet(planWith({ zones: [{ ...POOL, to: 0.4 }, slope] }));
    expect(shore.geometry.escapes.climbable).toBeCloseTo(0.45, 6);
  });
});

describe('flow', () => {
  it('is where pump and way agree, less when fouled, none beyond its head', () => {
    const plan = withPump();
    const { flow, head } = circuitPoint(PUMP, 0.15, CLEAN);
    expect(head).toBeCloseTo(wayHead(PUMP, 0.15, flow, CLEAN), 9);
    expect(head).toBeCloseTo(pumpHead(PUMP.curve!, flow), 9);
    expect(circuitPoint(PUMP, 0.15, FOULED).flow).toBeLessThan(flow);
    const sheet = shapeSheet(plan);
    expect(sheet.flow?.clean.turnover).toBeCloseTo((flow * 3600) / sheet.geometry.waterVolume, 9);
    const unreachable = shapeSheet(withPump({ outlet: 0.97 }));
    expect(unreachable.flow?.clean.flow).toBe(0);
    expect(unreachable.remarks.find(({ place }) => place === 'devices.pump.outlet')?.message).toBe(
      'pump cannot reach its outlet: it lifts water 80 cm at most, and the outlet lies 82 cm above the water',
    );
  });
  it('loses in the hose what Blasius says of smooth pipes, and stands on the lip at the critical depth', () => {
    const { clean, hoseSpeed = 0, sheet } = shapeSheet(withPump()).flow!;
    // White, Fluid Mechanics, eq. 6.39: f = 0.316 Re^-1/4 for 4000 < Re < 1e5; water of 20 degC, 1.004e-6 m2/s.
    const reynolds = (hoseSpeed * 0.012) / 1.004e-6;
    expect(reynolds).toBeGreaterThan(4000);
    const blasius = ((0.316 / reynolds ** 0.25) * (0.6 / 0.012) * hoseSpeed ** 2) / (2 * 9.80665);
    expect(Math.abs(clean.hoseLoss / blasius - 1)).toBeLessThan(0.06);
    // White, eq. 10.30: the depth at a free overfall of a wide channel, (q^2/g)^(1/3).
    expect(sheet?.depth).toBeCloseTo(((clean.flow / 0.05) ** 2 / 9.80665) ** (1 / 3), 4);
  });
  it('falls as the outlet rises, the hose narrows and the filter shrinks', () => {
    const flowOf = (change: Partial<Pump>) => circuitPoint({ ...PUMP, ...change }, 0.15, CLEAN).flow;
    for (let i = 0; i < 8; i++) {
      expect(flowOf({ outlet: 0.2 + 0.06 * (i + 1) })).toBeLessThan(flowOf({ outlet: 0.2 + 0.06 * i }));
      const hose = (bore: number) => ({ hose: { ...PUMP.hose!, bore } });
      expect(flowOf(hose(0.006 + 0.002 * i))).toBeLessThan(flowOf(hose(0.008 + 0.002 * i)));
    }
    expect(flowOf({ filter: { ...PUMP.filter!, area: 0.001 } })).toBeLessThan(flowOf({}));
  });
  it('gives back what stands in the hose when the pump stops', () => {
    const { stop } = shapeSheet(withPump()).flow!;
    const inHose = ((Math.PI * 0.012 ** 2) / 4) * 0.6;
    expect(stop.drainBack).toBeCloseTo(inHose, 12);
    // 50 x 45 cm of open water and 40 % of 40 x 45 cm of ground take it up
    expect(stop.rise).toBeCloseTo(inHose / (0.225 + 0.4 * 0.18), 9);
    const brimful = shapeSheet(withPump({}, 0.4995));
    expect(brimful.remarks.some(({ message }) => message.startsWith('when the pump stops'))).toBe(true);
  });
});

describe('light', () => {
  it('of lamps over the whole cover agrees, averaged over the water plane, with the view factor of the run', () => {
    const plan = planWith();
    const field = lampField(
      { ...plan.devices.lamps[0]!, panel: { x: 0.45, y: 0.225, z: 0.5, length: 0.9, breadth: 0.45 } },
      { ...plan.box, height: 0.5 },
    );
    let sum = 0;
    for (let i = 0; i < 36; i++)
      for (let j = 0; j < 18; j++) sum += field.at(((i + 0.5) * 0.9) / 36, ((j + 0.5) * 0.45) / 18, 0.15);
    const direct = surfaceLight({ ...plan, box: { ...plan.box, height: 0.5001 } });
    expect(sum / (36 * 18) / direct).toBeGreaterThan(0.97);
    expect(sum / (36 * 18) / direct).toBeLessThan(1.03);
  });
  it('fades with depth and under floating plants, and tells who gets too little', () => {
    const plant = {
      id: 'p',
      name: 'weed',
      group: 'submerged',
      zone: 'pool',
      cover: 0.2,
      fullCoverBiomass: 1,
      light: { least: 500, good: 900 },
    } as const;
    const cover = {
      ...plant,
      id: 'f',
      name: 'duckweed',
      group: 'floating',
      cover: 0.8,
      light: { least: 5, good: 20 },
    } as const;
    const open = shapeSheet(planWith({ plants: [plant] })).light;
    const shaded = shapeSheet(planWith({ plants: [plant, cover] })).light;
    expect(open.plants[0]?.verdict).toBe('too dark');
    expect(shaded.zones[0]!.mean / open.zones[0]!.mean).toBeCloseTo(1 - 0.9 * 0.8, 6);
    expect([...open.byDepth].sort((a, b) => b - a)).toEqual(open.byDepth);
    expect(open.zones[1]!.daily / open.zones[1]!.mean).toBeCloseTo((11 * 3600) / 1e6, 12);
  });
  it('judges a light by its day: half the hours count as half the strength, and it says so', () => {
    const { devices } = planWith();
    const lit = (hours: number, light?: { least: number; good: number }) => {
      const lamps = devices.lamps.map((lamp) => ({ ...lamp, hours }));
      const weed = {
        id: 'p',
        name: 'weed',
        group: 'submerged',
        zone: 'pool',
        cover: 0.2,
        fullCoverBiomass: 1,
      } as const;
      const plant = { ...weed, ...(light ? { light } : {}) };
      return shapeSheet(planWith({ devices: { ...devices, lamps }, plants: [plant] })).light;
    };
    const strength = lit(11).plants[0]!.light;
    const needs = { least: 0.6 * strength, good: 0.9 * strength };
    expect([11, 8, 5.5].map((hours) => lit(hours, needs).plants[0]?.verdict)).toEqual([
      'thrives',
      'lasts',
      'too dark',
    ]);
    expect(lit(11).assumption).not.toContain('judged');
    expect(lit(5.5).assumption).toContain('5.5 h of a light are judged as 0.50 of its strength');
  });
  it('names lamps that hang in the mist', () => {
    const { devices } = planWith();
    const panel = { x: 0.45, y: 0.2, z: 0.45, length: 0.6, breadth: 0.05 };
    const mister = { name: 'mister', dailyMass: 0.1, at: [9] };
    const sheet = (protection?: string) =>
      shapeSheet(
        planWith({
          devices: {
            lamps: [{ ...devices.lamps[0]!, panel, ...(protection ? { protection } : {}) }],
            mister,
          },
        }),
      ).remarks.filter(({ place }) => place === 'devices.lamps.0.panel');
    expect(sheet()[0]?.message).toContain('5 cm below the rim, inside the mist');
    expect(sheet('IP44')).toHaveLength(1);
    expect(sheet('IP67')).toEqual([]);
  });
});

describe('trade facts, common practice without source', () => {
  it('leaves silicone about a week and foam 24 hours', () => {
    const foam = {
      kind: 'foam',
      material: 'foam',
      name: 'foam',
      thickness: 0,
      porosity: 0.05,
      filmSurface: 50,
      bulkDensity: 27,
    } as const;
    const { structure } = shapeSheet(planWith({ zones: [POOL, { ...BANK, layers: [foam] }] }));
    expect(structure.silicone.beforeFilling / 86400).toBe(7);
    expect(structure.silicone.throughCure).toBeLessThan(structure.silicone.beforeFilling);
    expect(structure.foam?.cure).toBe(86400);
    expect(structure.foam?.volume).toBeCloseTo(0.4 * 0.45 * 0.25, 9);
  });
  it('reaches for about 12 mm of glass in a rimless box 90 cm long and 60 cm high', () => {
    const { box } = planWith();
    const { structure } = shapeSheet(planWith({ box: { ...box, height: 0.6, glassThickness: 0.008 } }));
    expect(structure.panes[0]?.stock).toBeGreaterThanOrEqual(0.012);
    expect(structure.panes[0]?.stock).toBeLessThanOrEqual(0.015);
    expect(structure.panes[0]!.fillTo!).toBeLessThan(0.6);
    expect(structure.advice.join(' ')).not.toMatch(/\bsafe\b/);
  });
});

it('weighs the slab over a cave as its stone', () => {
  const cave = { ...POOL, roof: { bottom: 0.2, top: 0.24, density: 2700 } };
  const { masses } = shapeSheet(planWith({ zones: [cave, BANK] }));
  // 50 by 45 by 4 cm of stone at 2700 kg/m3.
  const slab = masses.parts.find(({ name }) => name === 'slabs over caves');
  expect(slab?.mass).toBeCloseTo(0.5 * 0.45 * 0.04 * 2700, 6);
});
