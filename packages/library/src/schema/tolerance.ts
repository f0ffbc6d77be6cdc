import { type Dimension, type FixedSeriesId, SERIES } from '@shoreglass/engine';
import { z } from 'zod';
import { anyQuantity, quantity } from './quantity.ts';

/** Quantities whose unit the table of units does not convert, and the text it must be. */
const PLAIN_UNITS: Partial<Record<FixedSeriesId, string>> = { pH: 'pH' };

const DIMENSIONS: Partial<Record<FixedSeriesId, readonly [Dimension, number, number]>> = {
  pH: ['acidity', 3, 11],
  KH: ['charge concentration', 0, 30],
  GH: ['amount concentration', 0, 80],
  conductivity: ['conductivity', 0, 60_000],
  totalAmmonia: ['nitrogen concentration', 0, 50],
  unionisedAmmonia: ['nitrogen concentration', 0, 10],
  nitrite: ['nitrogen concentration', 0, 50],
  nitrate: ['nitrogen concentration', 0, 100],
  oxygen: ['mass concentration', 0, 0.02],
  oxygenLow: ['mass concentration', 0, 0.02],
  waterTemperature: ['temperature', -2, 50],
  airTemperature: ['temperature', -30, 60],
  relativeHumidity: ['share', 0, 1],
};

function bound(series: FixedSeriesId) {
  const range = DIMENSIONS[series];
  if (!range) return anyQuantity;
  const [dimension, min, max] = range;
  const unit = PLAIN_UNITS[series] ?? SERIES[series].unit;
  return quantity(dimension, { min, max }).check((context) => {
    if (context.value.unit !== unit)
      context.issues.push({
        code: 'custom',
        message: `tolerances of ${series} are given in '${unit}', the unit it is shown in`,
        input: context.value,
      });
  });
}

const tolerance = (series: FixedSeriesId) =>
  z.strictObject({ low: bound(series).optional(), high: bound(series).optional() }).check((context) => {
    const { low, high } = context.value;
    if (!low && !high)
      context.issues.push({ code: 'custom', message: 'give low, high or both', input: context.value });
    if (low && high && !(low.value < high.value))
      context.issues.push({ code: 'custom', message: 'low must lie below high', input: context.value });
  });

const TOLERATED = Object.keys(DIMENSIONS) as (keyof typeof DIMENSIONS)[];

/** By series, the range in which it is fine for the species; in the unit the series is shown in. */
export const tolerances = z.strictObject(
  Object.fromEntries(TOLERATED.map((series) => [series, tolerance(series).optional()])) as Record<
    FixedSeriesId,
    z.ZodOptional<ReturnType<typeof tolerance>>
  >,
);

export type Tolerances = z.infer<typeof tolerances>;
