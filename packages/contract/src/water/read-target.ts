import {
  type RecipeQuantity,
  type RecipeTarget,
  readQuantity,
  toPlanUnit,
  unitsOf,
} from '@shoreglass/engine';
import { concentrationOf } from '../enclosure/schema/water.ts';

/** What is wrong with what was written, and the mend. */
export interface Unread {
  readonly wrong: string;
  readonly mend: string;
}

/** Charges of each ion that can be asked for in meq/L; of hardness, which counts calcium and magnesium, two. */
const CHARGES: Readonly<Record<Exclude<RecipeQuantity, 'conductivity' | 'KH'>, number>> = {
  GH: 2,
  calcium: 2,
  magnesium: 2,
  sodium: 1,
  potassium: 1,
  chloride: 1,
  sulfate: 2,
  nitrate: 1,
};

const EXAMPLES: Readonly<Record<RecipeQuantity, string>> = {
  GH: '6 °dGH, 107 ppm CaCO3, 10.7 °fH, 7.5 °Clark, 6.3 gpg or 1.07 mmol/L',
  KH: '4 °dKH, 71 ppm CaCO3, 7.1 °fH or 1.43 meq/L',
  calcium: '30 mg/L or 0.75 mmol/L',
  magnesium: '6 mg/L or 0.25 mmol/L',
  sodium: '10 mg/L',
  potassium: '4 mg/L',
  chloride: '20 mg/L',
  sulfate: '40 mg/L',
  nitrate: '5 mg/L or 1.1 mg N/L',
  conductivity: '250 µS/cm or 0.25 mS/cm',
};

const measures = (unit: string, dimension: Parameters<typeof unitsOf>[0]): boolean =>
  unitsOf(dimension).some((each) => each === unit);

/** In the trade "ppm" is ppm CaCO3 of hardness and mg/L of an ion. */
function meant(quantity: RecipeQuantity, unit: string): string {
  if (unit !== 'ppm' || quantity === 'conductivity') return unit;
  return quantity === 'GH' || quantity === 'KH' ? 'ppm CaCO3' : 'mg/L';
}

function planValue(quantity: RecipeQuantity, value: number, written: string): number | undefined {
  const unit = meant(quantity, written);
  if (quantity === 'conductivity')
    return measures(unit, 'conductivity') ? toPlanUnit(value, unit, 'conductivity') : undefined;
  if (quantity === 'KH') {
    if (measures(unit, 'charge concentration')) return toPlanUnit(value, unit, 'charge concentration');
    // Acid capacity is printed in mmol/L of acid: the same number as meq/L.
    return unit === 'mmol/L' || unit === 'mol/m³' ? value : undefined;
  }
  if (unit === 'meq/L') return value / CHARGES[quantity];
  if (quantity === 'GH')
    return measures(unit, 'amount concentration')
      ? toPlanUnit(value, unit, 'amount concentration')
      : undefined;
  return concentrationOf(quantity, value, unit);
}

/** An amount of a quantity as people write it ('6 °dGH', '90 ppm', '10 mg/L') in the plan's unit. */
export function readAmount(quantity: RecipeQuantity, text: string): number | Unread {
  const mend = `Write ${quantity} like ${EXAMPLES[quantity]}.`;
  const read = readQuantity(text);
  if ('wrong' in read) return { wrong: `'${text.trim().slice(0, 60)}' ${read.wrong}`, mend };
  const value = planValue(quantity, read.value, read.unit);
  if (value === undefined) return { wrong: `${read.unit} does not measure ${quantity}`, mend };
  if (value < 0) return { wrong: `${text.trim()} of ${quantity} is below none`, mend };
  return value;
}

const BAND = /^\s*([\d.,]+)\s*(?:to|-|–|…|\.\.)\s*([\d.,]+)\s*([^\d\s].*)$/i;
const LIMIT = /^\s*(at most|up to|below|max|<=|<|≤|at least|above|min|>=|>|≥)\s*(.+)$/i;
const UPPER = /^(at most|up to|below|max|<=|<|≤)/i;

/** Some of low, aim and high; or what is wrong. */
export type ReadTarget = RecipeTarget | Unread;

function joined(quantity: RecipeQuantity, parts: Record<string, number | Unread>): ReadTarget {
  const target: Record<string, unknown> = { quantity };
  for (const [key, value] of Object.entries(parts)) {
    if (typeof value !== 'number') return value;
    target[key] = value;
  }
  return target as unknown as RecipeTarget;
}

/** A target as people write it: '6 °dGH' to come near to, '4 to 8 °dKH' to stay between, 'at most 10 mg/L'. */
export function readTarget(quantity: RecipeQuantity, text: string): ReadTarget {
  const band = BAND.exec(text);
  if (band) {
    const [, low = '', high = '', unit = ''] = band;
    return joined(quantity, {
      low: readAmount(quantity, `${low} ${unit}`),
      high: readAmount(quantity, `${high} ${unit}`),
    });
  }
  const limit = LIMIT.exec(text);
  if (limit) {
    const [, word = '', rest = ''] = limit;
    return joined(quantity, { [UPPER.test(word) ? 'high' : 'low']: readAmount(quantity, rest) });
  }
  return joined(quantity, { aim: readAmount(quantity, text) });
}

/** Two sayings about the same quantity as one target; the later wins where both say the same. */
export function mergedTargets(targets: readonly RecipeTarget[]): RecipeTarget[] {
  const merged = new Map<RecipeQuantity, RecipeTarget>();
  for (const target of targets) merged.set(target.quantity, { ...merged.get(target.quantity), ...target });
  return [...merged.values()];
}
