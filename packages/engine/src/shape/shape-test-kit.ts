import type { Plan, Zone } from '../plan/plan.ts';

/** An invented plan for tests of the sheet: a pool and a bank with drainage, 90 by 45 by 50 cm, water at 15 cm. */
export const CLIMATE_MEDIANS = {
  draught: 0.02,
  leakage: 0.1,
  evaporationFactor: 0.9,
  airResistance: 200,
  drynessResistance: 200,
  landStore: 10,
  wicking: 3,
  innerFilmCoefficient: 3,
  outerFilmCoefficient: 7.7,
  baseConductance: 1.5,
  groundCoupling: 5,
  lampHeatInside: 0.4,
  dripLimit: 0.06,
  fogThreshold: 0.001,
} as const;

const fixed = (median: number) => ({ kind: 'fixed', median, spread: 0, min: median, max: median }) as const;

const layer = (
  kind: Zone['layers'][number]['kind'],
  thickness: number,
  more: Partial<Zone['layers'][number]> = {},
) =>
  ({
    kind,
    material: kind,
    name: kind,
    thickness,
    porosity: 0.4,
    filmSurface: 500,
    bulkDensity: 1500,
    ...more,
  }) as const;

export const POOL: Zone = {
  id: 'pool',
  name: 'Pool',
  kind: 'pool',
  from: 0,
  to: 0.5,
  groundStart: 0.05,
  groundEnd: 0.05,
  layers: [layer('substrate', 0.05, { capillaryRise: 0.125, heldWater: 0.1 })],
};
export const BANK: Zone = {
  id: 'bank',
  name: 'Bank',
  kind: 'bank',
  from: 0.5,
  to: 0.9,
  groundStart: 0.25,
  groundEnd: 0.25,
  layers: [
    layer('drainage', 0.18, { capillaryRise: 0.02, heldWater: 0.1, bulkDensity: 800 }),
    layer('substrate', 0, { capillaryRise: 0.25, heldWater: 0.3, bulkDensity: 700 }),
  ],
};

const steady = (mean: number) => ({ mean, yearAmplitude: 0, peakDay: 200, dayAmplitude: 0 });

/**
 * Returns the invented plan with parts of it replaced (SI units).
 * @param change parts that differ
 * @source assumed
 */
export function planWith(change: Partial<Plan> = {}): Plan {
  return {
    id: 'test',
    name: 'Test box',
    startDate: '2026-03-01',
    box: {
      length: 0.9,
      width: 0.45,
      height: 0.5,
      glassThickness: 0.01,
      coverOpenFraction: 0.04,
      coverTransmission: 0.9,
    },
    zones: [POOL, BANK],
    water: { level: 0.15, fill: { dissolvedOrganicCarbon: 0 }, topOff: {} } as Plan['water'],
    start: { ammoniaOxidisers: 0, nitriteOxidisers: 0, attachedAlgae: 0, detritusCarbon: 0 } as Plan['start'],
    room: { temperature: steady(20), humidity: steady(0.5), carbonDioxide: 500, pressure: 101325 },
    devices: { lamps: [{ name: 'lamp', power: 25, photonFlux: 50, onAt: 9, hours: 11 }] },
    hardscape: [],
    plants: [],
    populations: [],
    routines: [],
    actions: [],
    bands: [],
    priors: {
      climate: Object.fromEntries(Object.entries(CLIMATE_MEDIANS).map(([key, value]) => [key, fixed(value)])),
    },
    notModelled: [],
    ...change,
  };
}
