/**
 * What a unit measures. Chemistry uses three concentrations that are easily mixed up:
 * - mass concentration [kg/m3], of whatever the value says it is of (mg/L, mg N/L);
 * - amount concentration [mol/m3] (mmol/L); hardness is the amount of calcium and magnesium (degrees dGH);
 * - charge concentration [eq/m3] (meq/L); alkalinity is one (degrees dKH).
 */
export type Dimension =
  | 'length'
  | 'area'
  | 'volume'
  | 'mass'
  | 'time'
  | 'temperature'
  | 'temperature difference'
  | 'power'
  | 'pressure'
  | 'flow'
  | 'mass flow'
  | 'photon flux'
  | 'photon flux density'
  | 'luminous flux'
  | 'photon efficacy'
  | 'share'
  | 'mole fraction'
  | 'amount'
  | 'mass concentration'
  | 'nitrogen concentration'
  | 'phosphorus concentration'
  | 'amount concentration'
  | 'charge concentration'
  | 'conductivity'
  | 'density'
  | 'area per volume'
  | 'mass per area'
  | 'carbon per area'
  | 'rate'
  | 'acidity';

/** One reading of a unit: value in the plan's unit = value * factor + offset. */
export interface Meaning {
  readonly dimension: Dimension;
  readonly factor: number;
  readonly offset: number;
}

const of = (dimension: Dimension, factor: number, offset = 0): Meaning => ({ dimension, factor, offset });

const INCH = 0.0254;
const US_GALLON = 3.785411784e-3;
const IMPERIAL_GALLON = 4.54609e-3;
const POUND = 0.45359237;
/** 1 degree dGH: 10 mg CaO per litre, M(CaO) = 56.0774 g/mol; 1 degree dKH: the same amount, twice the charge. */
const GERMAN_DEGREE = 10 / 56.0774;
/** 1 mg CaCO3 per litre, M(CaCO3) = 100.0869 g/mol. */
const PPM_CALCIUM_CARBONATE = 1 / 100.0869;
/** 1 French degree: 10 mg CaCO3 per litre. */
const FRENCH_DEGREE = 10 * PPM_CALCIUM_CARBONATE;
/** A grain of CaCO3, 64.79891 mg exactly: in an imperial gallon 1 English (Clark) degree, in a US gallon 1 gpg. */
const CLARK_DEGREE = (0.06479891 / IMPERIAL_GALLON) * PPM_CALCIUM_CARBONATE;
const GRAIN_PER_GALLON = (0.06479891 / US_GALLON) * PPM_CALCIUM_CARBONATE;

/**
 * The only table of units. Keys are how a unit is written; a unit with several meanings is read by the dimension
 * that is asked for. The plan's units: m, m2, m3, kg, s, degC, K, W, Pa, m3/s, kg/s, umol/s, umol/m2/s, lm, umol/J,
 * 1, umol/mol, mol, kg/m3, mol/m3, eq/m3, uS/cm, 1/m, kg/m2, mol/m2, 1/s.
 * @source bipm-si for SI prefixes and degrees; inch, pound and gallons are exact by definition; dGH and dKH by
 *   DIN 38409-6 (memory) from 10 mg CaO per litre with IUPAC atomic weights.
 */
export const UNITS = {
  mm: [of('length', 1e-3)],
  cm: [of('length', 1e-2)],
  m: [of('length', 1)],
  in: [of('length', INCH)],
  ft: [of('length', 12 * INCH)],
  µm: [of('length', 1e-6)],
  'cm²': [of('area', 1e-4)],
  'm²': [of('area', 1)],
  'in²': [of('area', INCH * INCH)],
  mL: [of('volume', 1e-6)],
  L: [of('volume', 1e-3)],
  'cm³': [of('volume', 1e-6)],
  'm³': [of('volume', 1)],
  gal: [of('volume', US_GALLON)],
  'imp gal': [of('volume', IMPERIAL_GALLON)],
  mg: [of('mass', 1e-6)],
  g: [of('mass', 1e-3)],
  kg: [of('mass', 1)],
  oz: [of('mass', POUND / 16)],
  lb: [of('mass', POUND)],
  s: [of('time', 1)],
  min: [of('time', 60)],
  h: [of('time', 3600)],
  d: [of('time', 86400)],
  week: [of('time', 7 * 86400)],
  '°C': [of('temperature', 1), of('temperature difference', 1)],
  '°F': [of('temperature', 5 / 9, (-32 * 5) / 9), of('temperature difference', 5 / 9)],
  K: [of('temperature difference', 1)],
  W: [of('power', 1)],
  kW: [of('power', 1000)],
  Pa: [of('pressure', 1)],
  hPa: [of('pressure', 100)],
  kPa: [of('pressure', 1000)],
  mbar: [of('pressure', 100)],
  inHg: [of('pressure', 3386.389)],
  'm³/s': [of('flow', 1)],
  'm³/h': [of('flow', 1 / 3600)],
  'L/h': [of('flow', 1e-3 / 3600)],
  'L/min': [of('flow', 1e-3 / 60)],
  'L/d': [of('flow', 1e-3 / 86400)],
  'mL/min': [of('flow', 1e-6 / 60)],
  'gal/h': [of('flow', US_GALLON / 3600)],
  'kg/d': [of('mass flow', 1 / 86400)],
  'g/d': [of('mass flow', 1e-3 / 86400)],
  'µmol/s': [of('photon flux', 1)],
  'µmol/m²/s': [of('photon flux density', 1)],
  lm: [of('luminous flux', 1)],
  'µmol/J': [of('photon efficacy', 1)],
  '1': [of('share', 1)],
  '%': [of('share', 1e-2)],
  'g/kg': [of('share', 1e-3)],
  ppm: [of('mole fraction', 1)],
  'µmol/mol': [of('mole fraction', 1)],
  mol: [of('amount', 1)],
  mmol: [of('amount', 1e-3)],
  'µg/L': [of('mass concentration', 1e-6)],
  'mg/L': [of('mass concentration', 1e-3)],
  'g/L': [of('mass concentration', 1)],
  'mg N/L': [of('nitrogen concentration', 1 / 14.007)],
  'mg P/L': [of('phosphorus concentration', 1 / 30.974)],
  'µmol/L': [of('amount concentration', 1e-3)],
  'mmol/L': [of('amount concentration', 1)],
  'mol/m³': [of('amount concentration', 1)],
  'meq/L': [of('charge concentration', 1)],
  '°dGH': [of('amount concentration', GERMAN_DEGREE)],
  '°dKH': [of('charge concentration', 2 * GERMAN_DEGREE)],
  '°dH': [of('amount concentration', GERMAN_DEGREE), of('charge concentration', 2 * GERMAN_DEGREE)],
  'ppm CaCO3': [
    of('amount concentration', PPM_CALCIUM_CARBONATE),
    of('charge concentration', 2 * PPM_CALCIUM_CARBONATE),
  ],
  'mg/L CaCO3': [
    of('amount concentration', PPM_CALCIUM_CARBONATE),
    of('charge concentration', 2 * PPM_CALCIUM_CARBONATE),
  ],
  '°fH': [of('amount concentration', FRENCH_DEGREE), of('charge concentration', 2 * FRENCH_DEGREE)],
  '°Clark': [of('amount concentration', CLARK_DEGREE), of('charge concentration', 2 * CLARK_DEGREE)],
  gpg: [of('amount concentration', GRAIN_PER_GALLON), of('charge concentration', 2 * GRAIN_PER_GALLON)],
  'µS/cm': [of('conductivity', 1)],
  'mS/cm': [of('conductivity', 1000)],
  'mS/m': [of('conductivity', 10)],
  'kg/m³': [of('density', 1)],
  'g/cm³': [of('density', 1000)],
  'kg/L': [of('density', 1000)],
  'm²/m³': [of('area per volume', 1)],
  'kg/m²': [of('mass per area', 1)],
  'g/m²': [of('mass per area', 1e-3)],
  'mol/m²': [of('carbon per area', 1)],
  '1/d': [of('rate', 1 / 86400)],
  '1/s': [of('rate', 1)],
  pH: [of('acidity', 1)],
} as const satisfies Record<string, readonly Meaning[]>;

export type Unit = keyof typeof UNITS;

/** The unit the plan uses for each dimension, which convert(…) to it leaves a factor of 1. */
export const PLAN_UNITS = {
  length: 'm',
  area: 'm²',
  volume: 'm³',
  mass: 'kg',
  time: 's',
  temperature: '°C',
  'temperature difference': 'K',
  power: 'W',
  pressure: 'Pa',
  flow: 'm³/s',
  'photon flux': 'µmol/s',
  'photon flux density': 'µmol/m²/s',
  'luminous flux': 'lm',
  'photon efficacy': 'µmol/J',
  share: '1',
  'mole fraction': 'ppm',
  amount: 'mol',
  'amount concentration': 'mol/m³',
  'charge concentration': 'meq/L',
  'mass concentration': 'g/L',
  conductivity: 'µS/cm',
  density: 'kg/m³',
  'area per volume': 'm²/m³',
  'mass per area': 'kg/m²',
  'carbon per area': 'mol/m²',
  rate: '1/s',
  acidity: 'pH',
} as const satisfies Partial<Record<Dimension, Unit>>;
