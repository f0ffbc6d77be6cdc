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
  if (!Number.isFinite(value)) throw new RangeError(`${value} ${from} is not a finite number`);
  const source = known(from);
  const target = known(to);
  if (source === target) return value;
  const [out, into] = shared(source, target);
  return (value * out.factor + out.offset - into.offset) / into.factor;
}

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
