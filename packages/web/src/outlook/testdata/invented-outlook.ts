import type {
  AheadDocument,
  HandsOffHorizon,
  QuantileSeries,
  SeriesId,
  TurningPoint,
} from '@shoreglass/engine';

/** Invented outlooks for tests; no engine made their numbers. */

export function inventedSeries(name: string, unit: string, band?: QuantileSeries['band']): QuantileSeries {
  const values = [1, 1];
  const days = [0, 1];
  const quantiles = { expected: values, q05: values, q25: values, q50: values, q75: values, q95: values };
  return { name, unit, days, ...quantiles, ...(band ? { band } : {}) };
}

export function inventedPoint(
  subject: SeriesId,
  kind: TurningPoint['kind'],
  more: Partial<TurningPoint> = {},
): TurningPoint {
  return {
    id: `${subject}-${kind}`,
    subject,
    kind,
    probability: 0.7,
    window: { early: 40, median: 50, late: 60 },
    band: { unit: '', owner: 'keeper', source: 'invented' },
    because: [],
    sentence: '',
    ...more,
  };
}

export function inventedOutlook(more: {
  readonly horizon?: Partial<HandsOffHorizon>;
  readonly members?: number;
  readonly turningPoints?: readonly TurningPoint[];
}): AheadDocument {
  const { horizon = {}, members = 200, turningPoints = [] } = more;
  return {
    enclosure: { id: 'beck', name: 'Beck', startDate: '2026-03-01' },
    run: { days: 300, members, seed: 1, engineVersion: '0.0.0' },
    series: {
      pH: inventedSeries('pH', ''),
      KH: inventedSeries('carbonate hardness', '°dKH', { low: 3, lowOwner: 'amphipods' }),
      nitrate: inventedSeries('nitrate', 'mg N/L'),
      'population:snails': inventedSeries('ramshorn snails', 'animals', { high: 300, highOwner: 'keeper' }),
      'population:snails:juvenile': inventedSeries('ramshorn snails, young', 'animals'),
    },
    turningPoints,
    handsOffHorizon: { q10: 44, q50: 61, q90: 83, unbroken: 0, limitedBy: [], ...horizon },
    closure: { nitrogen: 0, phosphorus: 0, carbon: 0, oxygen: 0, calcium: 0, alkalinity: 0, water: 0 },
    budgets: [],
    notModelled: [],
  };
}
