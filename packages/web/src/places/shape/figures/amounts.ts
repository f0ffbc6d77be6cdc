import { convert } from '@shoreglass/engine';
import { type LengthUnit, quantityText } from '@shoreglass/figures';

/** How people read the engine's SI figures, in litres and kilograms or in gallons and pounds. */
export interface Amounts {
  volume(cubicMetres: number): string;
  smallVolume(cubicMetres: number): string;
  area(squareMetres: number): string;
  mass(kilograms: number): string;
  length(metres: number): string;
  deflection(metres: number): string;
  flow(cubicMetresPerSecond: number): string;
  temperature(celsius: number): string;
  pressure(pascal: number): string;
  force(newton: number): string;
  /** Units of chart axes, and what one metre, cubic metre, cubic metre per second is in them. */
  readonly axes: Readonly<
    Record<'length' | 'volume' | 'flow', { readonly unit: string; readonly per: number }>
  >;
}

/** Digits after the point that leave about three figures. */
function digitsFor(value: number, most = 2): number {
  const size = Math.abs(value);
  return size >= 100 ? 0 : size >= 10 ? Math.min(1, most) : most;
}

function amount(value: number, unit: string, most?: number): string {
  return quantityText(value, unit, digitsFor(value, most));
}

const KILOGRAM_FORCE = 9.80665;

const METRIC: Amounts = {
  volume: (v) => amount(v * 1000, 'L', 1),
  smallVolume: (v) => (v < 1e-3 ? amount(v * 1e6, 'mL', 0) : amount(v * 1000, 'L')),
  area: (a) => (a < 0.1 ? quantityText(a * 1e4, 'cm²') : amount(a, 'm²')),
  mass: (m) => amount(m, 'kg', 1),
  length: (l) => (Math.abs(l) < 0.01 ? amount(l * 1000, 'mm', 1) : amount(l * 100, 'cm', 1)),
  deflection: (l) => amount(l * 1000, 'mm'),
  flow: (q) => amount(q * 3.6e6, 'L/h', 1),
  temperature: (t) => quantityText(t, '°C', 1),
  pressure: (p) => `${amount(p / 1000, 'kPa', 1)} (${amount(p / KILOGRAM_FORCE, 'kg/m²', 0)})`,
  force: (f) => amount(f / KILOGRAM_FORCE, 'kg'),
  axes: {
    length: { unit: 'cm', per: 100 },
    volume: { unit: 'L', per: 1000 },
    flow: { unit: 'L/h', per: 3.6e6 },
  },
};

const INCH: Amounts = {
  volume: (v) => amount(convert(v, 'm³', 'gal'), 'gal', 1),
  smallVolume: (v) => amount(convert(v, 'm³', 'gal'), 'gal', 2),
  area: (a) => quantityText(convert(a, 'm²', 'in²'), 'in²'),
  mass: (m) => amount(convert(m, 'kg', 'lb'), 'lb', 1),
  length: (l) => amount(convert(l, 'm', 'in'), 'in'),
  deflection: (l) => quantityText(convert(l, 'm', 'in'), 'in', 3),
  flow: (q) => amount(convert(q, 'm³/s', 'gal/h'), 'gal/h', 1),
  temperature: (t) => quantityText(convert(t, '°C', '°F'), '°F', 1),
  pressure: (p) => amount(p / 47.880259, 'lb/ft²', 0),
  force: (f) => amount(convert(f / KILOGRAM_FORCE, 'kg', 'lb'), 'lb'),
  axes: {
    length: { unit: 'in', per: convert(1, 'm', 'in') },
    volume: { unit: 'gal', per: convert(1, 'm³', 'gal') },
    flow: { unit: 'gal/h', per: convert(1, 'm³/s', 'gal/h') },
  },
};

export function amountsIn(unit: LengthUnit): Amounts {
  return unit === 'in' ? INCH : METRIC;
}

export function percentText(share: number, digits = 0): string {
  return quantityText(share * 100, '%', digits);
}

export function hoursText(hours: number): string {
  return quantityText(hours, 'h', hours >= 10 ? 0 : 1);
}

export function daysText(seconds: number): string {
  const days = seconds / 86_400;
  return days < 2
    ? quantityText(seconds / 3600, 'h')
    : quantityText(days, 'days', Number.isInteger(days) ? 0 : 1);
}
