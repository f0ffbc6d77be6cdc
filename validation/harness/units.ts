/** A unit as a factor to the base units and the powers of those, such as { kg: 1, m: -3 }. */
interface Measure {
  readonly factor: number;
  readonly offset: number;
  readonly dimension: string;
}

/** Base units are those with factor 1 and themselves as dimension; a litre is also what a kg of water is taken for. */
const SYMBOLS: Readonly<
  Record<string, readonly [factor: number, dimension: Readonly<Record<string, number>>]>
> = {
  m: [1, { m: 1 }],
  ft: [0.3048, { m: 1 }],
  in: [0.0254, { m: 1 }],
  L: [1e-3, { m: 3 }],
  l: [1e-3, { m: 3 }],
  gal: [3.785411784e-3, { m: 3 }],
  kgw: [1e-3, { m: 3 }],
  s: [1, { s: 1 }],
  min: [60, { s: 1 }],
  h: [3600, { s: 1 }],
  '24h': [86400, { s: 1 }],
  d: [86400, { s: 1 }],
  day: [86400, { s: 1 }],
  week: [604800, { s: 1 }],
  year: [365.25 * 86400, { s: 1 }],
  rpm: [1 / 60, { s: -1 }],
  g: [1e-3, { kg: 1 }],
  lb: [0.45359237, { kg: 1 }],
  oz: [0.028349523125, { kg: 1 }],
  kg_da: [1, { kg_da: 1 }],
  g_da: [1e-3, { kg_da: 1 }],
  g_C: [1e-3, { kg_C: 1 }],
  g_N: [1e-3, { kg_N: 1 }],
  g_P: [1e-3, { kg_P: 1 }],
  g_CaCO3: [1e-3, { kg_CaCO3: 1 }],
  mol: [1, { mol: 1 }],
  eq: [1, { eq: 1 }],
  dKH: [20 / 56.0774, { eq: 1, m: -3 }],
  dGH: [10 / 56.0774, { mol: 1, m: -3 }],
  K: [1, { K: 1 }],
  Pa: [1, { kg: 1, m: -1, s: -2 }],
  bar: [1e5, { kg: 1, m: -1, s: -2 }],
  atm: [101325, { kg: 1, m: -1, s: -2 }],
  mmHg: [133.322387415, { kg: 1, m: -1, s: -2 }],
  N: [1, { kg: 1, m: 1, s: -2 }],
  lbf: [4.4482216152605, { kg: 1, m: 1, s: -2 }],
  J: [1, { kg: 1, m: 2, s: -2 }],
  Wh: [3600, { kg: 1, m: 2, s: -2 }],
  W: [1, { kg: 1, m: 2, s: -3 }],
  hp: [745.6998715822702, { kg: 1, m: 2, s: -3 }],
  A: [1, { A: 1 }],
  V: [1, { kg: 1, m: 2, s: -3, A: -1 }],
  S: [1, { kg: -1, m: -2, s: 3, A: 2 }],
  lm: [1, { lm: 1 }],
  lux: [1, { lm: 1, m: -2 }],
  cd: [1, { cd: 1 }],
  W_opt: [1, { W_opt: 1 }],
  darcy: [9.869233e-13, { m: 2 }],
  deg: [Math.PI / 180, {}],
  rad: [1, {}],
  '1': [1, {}],
  '-': [1, {}],
  '%': [1e-2, {}],
  ppm: [1e-6, {}],
  fraction: [1, {}],
  bool: [1, {}],
};

const PREFIXES: Readonly<Record<string, number>> = {
  n: 1e-9,
  u: 1e-6,
  m: 1e-3,
  c: 1e-2,
  d: 1e-1,
  h: 1e2,
  k: 1e3,
  M: 1e6,
  G: 1e9,
};

/** Temperatures: base degC, value_base = value * factor + offset. */
const TEMPERATURES: Readonly<Record<string, readonly [factor: number, offset: number]>> = {
  degC: [1, 0],
  '°C': [1, 0],
  C: [1, 0],
  degF: [5 / 9, -160 / 9],
  '°F': [5 / 9, -160 / 9],
  K: [1, -273.15],
};

interface ReadSymbol {
  readonly factor: number;
  readonly dimension: Readonly<Record<string, number>>;
}

/** A symbol with or without prefix, such as 'kPa', 'min', 'mg_CaCO3'. */
function readName(name: string): ReadSymbol | undefined {
  const known = SYMBOLS[name];
  if (known) return { factor: known[0], dimension: known[1] };
  const prefix = PREFIXES[name[0] ?? ''];
  const rest = SYMBOLS[name.slice(1)];
  return prefix && rest ? { factor: prefix * rest[0], dimension: rest[1] } : undefined;
}

/** A symbol with or without prefix and power, such as 'mm2'. */
function readSymbol(token: string): ReadSymbol | undefined {
  const plain = readName(token);
  if (plain) return plain;
  const [, name = '', power = ''] = /^(.*?)(\d+)$/.exec(token) ?? [];
  const base = readName(name);
  if (!base) return undefined;
  const exponent = Number(power);
  const dimension = Object.entries(base.dimension).map(([unit, n]) => [unit, n * exponent]);
  return { factor: base.factor ** exponent, dimension: Object.fromEntries(dimension) };
}

/** Reads a product of units such as 'kg/m2/h', 'mol/(kg atm)', 'ueq/mg C'. @throws Error for an unknown symbol. */
function readProduct(unit: string): Measure {
  const text = unit
    .replaceAll(/[µμ]/g, 'u')
    .replaceAll('²', '2')
    .replaceAll('³', '3')
    .replaceAll('US gal', 'gal')
    .replaceAll(/\b([umk]?g) (C|N|P|CaCO3)(?![a-z])/g, '$1_$2');
  const powers = new Map<string, number>();
  let factor = 1;
  let sign = 1;
  let bracketSign = 1;
  for (const [token] of text.matchAll(/[^\s/()]+|[/()]/g)) {
    if (token === '/') sign = -1;
    else if (token === '(') {
      bracketSign = sign;
      sign = 1;
    } else if (token === ')') bracketSign = 1;
    else {
      const symbol = readSymbol(token);
      if (!symbol) throw new Error(`'${unit}' is not a known unit`);
      const power = sign * bracketSign;
      factor *= symbol.factor ** power;
      for (const [base, n] of Object.entries(symbol.dimension))
        powers.set(base, (powers.get(base) ?? 0) + n * power);
      sign = 1;
    }
  }
  const dimension = [...powers]
    .filter(([, n]) => n !== 0)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([base, n]) => `${base}^${n}`)
    .join(' ');
  return { factor, offset: 0, dimension };
}

function readUnit(unit: string, asTemperature: boolean): Measure {
  const temperature = TEMPERATURES[unit.trim()];
  if (temperature && (asTemperature || /deg|°/.test(unit)))
    return { factor: temperature[0], offset: temperature[1], dimension: 'temperature' };
  return readProduct(unit);
}

const isTemperature = (unit: string): boolean => unit.trim() in TEMPERATURES;

/** True when a value in one unit can be told in the other. @throws Error for an unknown unit. */
export function sameDimension(from: string, to: string): boolean {
  if (from === to) return true;
  const temperature = isTemperature(from) && isTemperature(to);
  return readUnit(from, temperature).dimension === readUnit(to, temperature).dimension;
}

/**
 * A value told in another unit. The same spelling is taken as it is, known or not; a kilogram of water counts as a
 * litre; K, degC and degF are temperatures, not differences.
 * @throws Error for an unknown unit or units that measure different things.
 */
export function inUnit(value: number, from: string, to: string): number {
  if (from === to) return value;
  const temperature = isTemperature(from) && isTemperature(to);
  const source = readUnit(from, temperature);
  const target = readUnit(to, temperature);
  if (source.dimension !== target.dimension) throw new Error(`'${from}' cannot be converted to '${to}'`);
  if (source.factor === target.factor && source.offset === target.offset) return value;
  return (value * source.factor + source.offset - target.offset) / target.factor;
}
