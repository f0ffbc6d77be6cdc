import { type TemperatureUnit, temperatureUnitOf } from './temperature-unit.ts';

/** What the columns of counts hold, by their places. */
export interface CountedColumns {
  readonly when: number;
  /** Whether the first column holds days instead of dates. */
  readonly inDays: boolean;
  /** Columns of numbers, one for all animals or one for each stage, with their names. */
  readonly numbers: readonly { readonly at: number; readonly name: string }[];
  readonly error?: number;
  readonly effort?: number;
  readonly coldest?: { readonly at: number; readonly unit: TemperatureUnit };
  readonly warmest?: { readonly at: number; readonly unit: TemperatureUnit };
  readonly count: number;
}

/** What is wrong with a line, and what to do. */
export interface Fault {
  readonly message: string;
  readonly mend: string;
  readonly value?: string;
}

const WHEN = ['date', 'day'];
const OWN = ['error', 'effort', 'coldest', 'warmest'];
/** A name and, in square brackets, a unit. */
const HEADING = /^(.*?)\s*(?:\[(.*)\])?$/;

/** Columns without names: a date or day and a number. */
export function plainColumns(inDays: boolean): CountedColumns {
  return { when: 0, inDays, numbers: [{ at: 1, name: 'count' }], count: 2 };
}

interface Heading {
  readonly name: string;
  readonly key: string;
  readonly unit: string | undefined;
}

/** Where a column stands; undefined where there is none of that name. */
function placeOf(heads: readonly Heading[], key: string): number | undefined {
  const at = heads.findIndex((head) => head.key === key);
  return at < 0 ? undefined : at;
}

/** The columns of warmth, both or none. */
function warmthColumns(heads: readonly Heading[]): Pick<CountedColumns, 'coldest' | 'warmest'> | Fault {
  const [coldest, warmest] = [placeOf(heads, 'coldest'), placeOf(heads, 'warmest')];
  if (coldest === undefined && warmest === undefined) return {};
  if (coldest === undefined || warmest === undefined)
    return { message: "has only one of 'coldest' and 'warmest'", mend: 'Give both, or neither.' };
  const [cold, warm] = [coldest, warmest].map((at) => temperatureUnitOf(heads[at]?.unit));
  if (cold === undefined || warm === undefined)
    return {
      message: 'has temperatures in no unit known',
      mend: 'Put [°C] or [°F] after the name, or nothing for °C.',
    };
  return { coldest: { at: coldest, unit: cold }, warmest: { at: warmest, unit: warm } };
}

/** Columns by their names: date or day, count or one for each stage, and error, effort, coldest and warmest. */
export function columnsOf(names: readonly string[]): CountedColumns | Fault {
  const heads = names.map((name): Heading => {
    const [, plain = '', unit] = HEADING.exec(name) ?? [];
    return { name: plain.trim(), key: plain.trim().toLowerCase(), unit };
  });
  const twice = heads.find(({ key }, i) => heads.findIndex((other) => other.key === key) !== i);
  if (twice)
    return {
      message: 'names a column twice',
      mend: 'Give each column a name of its own.',
      value: twice.name,
    };
  const when = heads.findIndex(({ key }) => WHEN.includes(key));
  if (when < 0)
    return { message: "has no column 'date' or 'day'", mend: 'Name the columns, such as: date, count.' };
  const numbers = heads.flatMap(({ name, key }, at) =>
    at === when || OWN.includes(key) || WHEN.includes(key) ? [] : [{ at, name }],
  );
  if (numbers.length === 0 || numbers.some(({ name }) => name === ''))
    return {
      message: numbers.length === 0 ? 'has no column of numbers' : 'has a column without a name',
      mend: "Name it 'count', or name one column for each stage, the youngest first.",
    };
  if (numbers.length > 5)
    return { message: `names ${numbers.length} stages`, mend: 'Put them together into five at most.' };
  const warmth = warmthColumns(heads);
  if ('message' in warmth) return warmth;
  const [error, effort] = [placeOf(heads, 'error'), placeOf(heads, 'effort')];
  return {
    when,
    inDays: heads[when]?.key === 'day',
    numbers,
    ...(error === undefined ? {} : { error }),
    ...(effort === undefined ? {} : { effort }),
    ...warmth,
    count: names.length,
  };
}
