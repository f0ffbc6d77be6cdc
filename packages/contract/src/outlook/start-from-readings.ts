import {
  convert,
  type DissolvedId,
  feltWater,
  type Plan,
  type RecipeQuantity,
  readQuantity,
  testedAlkalinity,
  type WaterComposition,
} from '@shoreglass/engine';
import { concentrationOf } from '../enclosure/schema/water.ts';
import { readAmount, type Unread } from '../water/read-target.ts';

/** A plan that starts with the water as measured, and what had to be inferred for it. */
export interface MeasuredStart {
  readonly plan: Plan;
  /** As written, one by one. */
  readonly readings: readonly string[];
  readonly inferred: readonly string[];
}

type Readable = RecipeQuantity | 'ammonium' | 'nitrite' | 'phosphate' | 'pH';

/** What people call the quantities, in lower case. */
const NAMES: Readonly<Record<string, Readable>> = {
  ph: 'pH',
  gh: 'GH',
  kh: 'KH',
  ec: 'conductivity',
  conductivity: 'conductivity',
  ca: 'calcium',
  calcium: 'calcium',
  mg: 'magnesium',
  magnesium: 'magnesium',
  na: 'sodium',
  sodium: 'sodium',
  k: 'potassium',
  potassium: 'potassium',
  cl: 'chloride',
  chloride: 'chloride',
  so4: 'sulfate',
  sulfate: 'sulfate',
  no3: 'nitrate',
  nitrate: 'nitrate',
  no2: 'nitrite',
  nitrite: 'nitrite',
  nh4: 'ammonium',
  ammonium: 'ammonium',
  ammonia: 'ammonium',
  po4: 'phosphate',
  phosphate: 'phosphate',
};

const MEND =
  "Write readings like 'KH 4 °dKH, GH 7 °dGH, EC 320 µS/cm, NO3 10 mg/L, pH 7.2', separated by commas.";

/** A comma between two readings, not a decimal one. */
const BETWEEN = /[;,]\s*(?=[A-Za-z])/;
const ONE = /^([A-Za-z][A-Za-z0-9]*)\s*[=:]?\s*(.+)$/;

function readPH(text: string): number | Unread {
  const value = Number(text.replace(',', '.').replace(/\s*pH$/, ''));
  if (value >= 3 && value <= 11) return value;
  return { wrong: `pH ${text} is not a number from 3 to 11`, mend: 'Write it like pH 7.2.' };
}

function readDissolved(id: 'ammonium' | 'nitrite' | 'phosphate', text: string): number | Unread {
  const mend = `Write ${id} like 0.5 mg/L.`;
  const quantity = readQuantity(text);
  if ('wrong' in quantity) return { wrong: `${id} ${text} ${quantity.wrong}`, mend };
  const value = concentrationOf(id, quantity.value, quantity.unit);
  if (value === undefined) return { wrong: `${quantity.unit} does not measure ${id}`, mend };
  return value >= 0 ? value : { wrong: `${id} ${text} is less than nothing`, mend };
}

function readingOf(quantity: Readable, text: string): number | Unread {
  if (quantity === 'pH') return readPH(text);
  if (quantity === 'ammonium' || quantity === 'nitrite' || quantity === 'phosphate')
    return readDissolved(quantity, text);
  return readAmount(quantity, text);
}

/** Readings in the plan's units, or what is wrong with the first that cannot be read. */
function read(text: string): ReadonlyMap<Readable, number> | Unread {
  const found = new Map<Readable, number>();
  for (const part of text.split(BETWEEN)) {
    const [, name = '', amount = ''] = ONE.exec(part.trim()) ?? [];
    const quantity = NAMES[name.toLowerCase()];
    if (!quantity)
      return { wrong: `'${part.trim()}' does not begin with something that is measured here`, mend: MEND };
    if (found.has(quantity)) return { wrong: `${name} is given twice`, mend: 'Keep one of the two.' };
    const value = readingOf(quantity, amount);
    if (typeof value !== 'number') return value;
    found.set(quantity, value);
  }
  return found;
}

const IONS = [
  'calcium',
  'magnesium',
  'sodium',
  'potassium',
  'chloride',
  'sulfate',
  'nitrate',
  'nitrite',
  'ammonium',
  'phosphate',
] as const satisfies readonly DissolvedId[];

/** Calcium share of the hardness where the plan's water has none to go by. @source assumed: usual of limestone waters */
const CALCIUM_SHARE = 0.8;
const START_TEMPERATURE = 20;

function withHardness(water: WaterComposition, hardness: number): WaterComposition {
  const now = water.calcium + water.magnesium;
  const calcium = now > 0 ? water.calcium / now : CALCIUM_SHARE;
  return { ...water, calcium: calcium * hardness, magnesium: (1 - calcium) * hardness };
}

/** Alkalinity, as a drop test finds it, brought to a value by sodium or chloride, on which nothing else here depends. */
function withAlkalinity(water: WaterComposition, tested: number): WaterComposition {
  const missing = tested - testedAlkalinity(water);
  return missing > 0
    ? { ...water, sodium: water.sodium + missing }
    : { ...water, chloride: water.chloride - missing };
}

const MOST_SALT = 200;
const HALVINGS = 40;

/** Table salt that brings the conductivity up to a value [mol/m3]; undefined where it is too high already. */
function saltFor(water: WaterComposition, conductivity: number, { room }: Plan): number | undefined {
  const reading = (salt: number): number => {
    const composition = { ...water, sodium: water.sodium + salt, chloride: water.chloride + salt };
    return feltWater({ composition, temperature: START_TEMPERATURE }, room).conductivity;
  };
  if (reading(0) > conductivity) return undefined;
  let [low, high] = [0, MOST_SALT];
  for (let step = 0; step < HALVINGS; step += 1) {
    const middle = (low + high) / 2;
    if (reading(middle) > conductivity) high = middle;
    else low = middle;
  }
  return low;
}

/** A measured conductivity may be this much below what the other readings carry before it is called odd. */
const METER_ERROR = 0.08;

function withConductivity(
  water: WaterComposition,
  conductivity: number,
  plan: Plan,
  tell: (sentence: string) => void,
): WaterComposition {
  const salt = saltFor(water, conductivity, plan);
  if (salt === undefined) {
    const carried = feltWater({ composition: water, temperature: START_TEMPERATURE }, plan.room).conductivity;
    if (carried > conductivity * (1 + METER_ERROR)) {
      tell(
        `The other readings alone make ${carried.toFixed(0)} µS/cm, more than the ${conductivity.toFixed(0)} measured: one of them is off; the conductivity was not used.`,
      );
    }
    return water;
  }
  tell(`What the conductivity leaves open is taken as table salt, ${(salt * 58.44).toFixed(0)} mg/L.`);
  return { ...water, sodium: water.sodium + salt, chloride: water.chloride + salt };
}

function tellPH(
  measured: number,
  water: WaterComposition,
  plan: Plan,
  tell: (sentence: string) => void,
): void {
  const { pH } = feltWater({ composition: water, temperature: START_TEMPERATURE }, plan.room);
  const why =
    measured < pH
      ? 'a lower reading tells of carbon dioxide from breathing and decay, or of acids from wood'
      : 'a higher reading tells of plants or algae taking up carbon dioxide';
  tell(
    `pH ${measured} was not used: this water comes to pH ${pH.toFixed(1)} in the room's air; ${why}, which the run works out itself.`,
  );
}

/**
 * The plan started from today's water: its fill brought to the readings, in any unit of the trade. What a reading does
 * not fix stays as the plan's fill has it; charges are closed by sodium and chloride, and each inference is told.
 * @param text such as 'KH 4 °dKH, GH 7 °dGH, pH 7.2'
 */
export function startFromReadings(plan: Plan, text: string): MeasuredStart | Unread {
  const found = read(text);
  if ('wrong' in found) return found;
  const inferred: string[] = [];
  const tell = (sentence: string) => inferred.push(sentence);
  const { fill } = plan.water;
  let water: WaterComposition = fill;
  const hardness = found.get('GH');
  if (hardness !== undefined) {
    water = withHardness(water, hardness);
    if (!found.has('calcium'))
      tell('The hardness is shared between calcium and magnesium as in the fill of the plan.');
  }
  for (const ion of IONS) water = { ...water, [ion]: found.get(ion) ?? water[ion] };
  const alkalinity = found.get('KH');
  if (alkalinity === undefined)
    tell(
      `Carbonate hardness was not measured and is taken from the plan, ${convert(testedAlkalinity(fill), 'meq/L', '°dKH').toFixed(1)} °dKH.`,
    );
  else if (hardness !== undefined && alkalinity > 2 * hardness)
    tell('Carbonate hardness exceeds what calcium and magnesium can hold: the rest is taken as sodium.');
  water = withAlkalinity(water, alkalinity ?? testedAlkalinity(fill));
  const conductivity = found.get('conductivity');
  if (conductivity !== undefined) water = withConductivity(water, conductivity, plan, tell);
  const pH = found.get('pH');
  if (pH !== undefined) tellPH(pH, water, plan, tell);
  const readings = text.split(BETWEEN).map((part) => part.trim());
  return { plan: { ...plan, water: { ...plan.water, fill: water } }, readings, inferred };
}
