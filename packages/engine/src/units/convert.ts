import { meaningsOf, readUnit } from './read-unit.ts';
import type { Dimension, Meaning, Unit } from './units.ts';

function known(text: string): Unit {
  const unit = readUnit(text);
  if (unit === undefined) throw new RangeError(`'${text}' is not a unit of the table`);
  return unit;
}

/** The first dimension both units share, as the meaning of each. */
function shared(from: Unit, to: Unit): readonly [Meaning, Meaning] {
  for (const source of meaningsOf(from)) {
    const target = meaningsOf(to).find((meaning) => meaning.dimension === source.dimension);
    if (target) return [source, target];
  }
  const measured = (unit: Unit) => meaningsOf(unit)[0]?.dimension;
  throw new RangeError(`${from} (${measured(from)}) cannot be converted to ${to} (${measured(to)})`);
}

/**
 * A value in another unit of the same dimension [unit `to`].
 * value_to = (value * factor_from + offset_from - offset_to) / factor_to
 * @param value finite number in `from`
 * @param from,to units of the table in any of their spellings
 * @throws RangeError for an unknown unit, units of different dimensions, or a value that is not finite.
 * @source derived: linear map through the plan's unit.
 */
export function convert(value: number, from: string, to: string): number {
  return conversion(from, to)(value);
}

/**
 * The conversion of `convert` between two units, looked up once for many values.
 * @param from,to units of the table in any of their spellings
 * @returns function of a finite number in `from` [unit `to`]; throws RangeError for one that is not finite
 * @throws RangeError for an unknown unit or units of different dimensions.
 * @source derived: linear map through the plan's unit.
 */
export function conversion(from: string, to: string): (value: number) => number {
  const source = known(from);
  const target = known(to);
  const [out, into] = source === target ? [SAME, SAME] : shared(source, target);
  return (value) => {
    if (!Number.isFinite(value)) throw new RangeError(`${value} ${from} is not a finite number`);
    return out === into ? value : (value * out.factor + out.offset - into.offset) / into.factor;
  };
}

const SAME = { factor: 1, offset: 0 };

/**
 * A value in the plan's unit of a dimension (m, kg, s, degC, mol/m3, …).
 * @throws RangeError for an unknown unit, one that does not measure the dimension, or a value that is not finite.
 * @source derived: value * factor + offset of the table.
 */
export function toPlanUnit(value: number, unit: string, dimension: Dimension): number {
  if (!Number.isFinite(value)) throw new RangeError(`${value} ${unit} is not a finite number`);
  const meaning = meaningsOf(known(unit)).find((candidate) => candidate.dimension === dimension);
  if (!meaning) throw new RangeError(`${unit} does not measure ${dimension}`);
  return value * meaning.factor + meaning.offset;
}
