import type { WaterComposition } from '../plan/water-composition.ts';
import { MOLAR_MASS } from './molar-masses.ts';

/** Ions and groups a formula is read into: molar mass [g/mol] and what the group leaves in solution. */
interface Group {
  readonly mass: number;
  readonly ion?: keyof WaterComposition;
  readonly carbon?: number;
}

const of = (mass: number, ion?: keyof WaterComposition): Group => (ion ? { mass, ion } : { mass });
const GROUPS: Readonly<Record<string, Group>> = {
  H2PO4: of(MOLAR_MASS.dihydrogenPhosphate, 'phosphate'),
  HPO4: of(MOLAR_MASS.hydrogenPhosphate, 'phosphate'),
  PO4: of(MOLAR_MASS.phosphate, 'phosphate'),
  HCO3: { mass: MOLAR_MASS.bicarbonate, carbon: 1 },
  CO3: { mass: MOLAR_MASS.carbonate, carbon: 1 },
  SO4: of(MOLAR_MASS.sulfate, 'sulfate'),
  NO3: of(MOLAR_MASS.nitrate, 'nitrate'),
  NO2: of(MOLAR_MASS.nitrite, 'nitrite'),
  NH4: of(MOLAR_MASS.ammonium, 'ammonium'),
  H2O: of(MOLAR_MASS.water),
  OH: of(MOLAR_MASS.hydroxide),
  Ca: of(MOLAR_MASS.calcium, 'calcium'),
  Mg: of(MOLAR_MASS.magnesium, 'magnesium'),
  Na: of(MOLAR_MASS.sodium, 'sodium'),
  Cl: of(MOLAR_MASS.chloride, 'chloride'),
  K: of(MOLAR_MASS.potassium, 'potassium'),
  H: of(MOLAR_MASS.hydrogen),
};
const TOKEN = new RegExp(`^(\\(|\\)(\\d*)|(${Object.keys(GROUPS).join('|')})(?![a-z])(\\d*))`);

/** What one mole of a salt brings. */
export interface SaltContent {
  /** [g/mol] */
  readonly molarMass: number;
  /** [mol/mol] */
  readonly ions: Partial<WaterComposition>;
  /** Inorganic carbon [mol/mol]. */
  readonly carbon: number;
}

/**
 * What one mole of a salt brings into solution, from its formula: 'CaCl2.2H2O', 'KHCO3', 'Ca(OH)2', 'NH4Cl'.
 * Water of crystallisation follows a dot or a middle dot, with its number in front.
 * @throws RangeError for a formula with anything else than ions of the common salts.
 * @source iupac-atomic-weights; derived: stoichiometry
 */
export function readSalt(formula: string): SaltContent {
  let molarMass = 0;
  let carbon = 0;
  const ions: Record<string, number> = {};
  for (const part of formula.replaceAll(/\s/g, '').split(/[.·*]/)) {
    const [, number = '', rest = ''] = /^(\d*)(.*)$/.exec(part) ?? [];
    if (rest === '') throw new RangeError(`'${formula}' is not the formula of a salt`);
    for (const [symbol, count] of groupsOf(rest, formula)) {
      const group = GROUPS[symbol]!;
      const amount = count * (number === '' ? 1 : Number(number));
      molarMass += amount * group.mass;
      carbon += amount * (group.carbon ?? 0);
      if (group.ion) ions[group.ion] = (ions[group.ion] ?? 0) + amount;
    }
  }
  return { molarMass, ions, carbon };
}

/** Groups of one part of a formula with their numbers, brackets multiplied out. */
function groupsOf(part: string, formula: string): [symbol: string, count: number][] {
  const found: [string, number][] = [];
  let openedAt = -1;
  let rest = part;
  while (rest !== '') {
    const match = TOKEN.exec(rest);
    if (!match) throw new RangeError(`'${formula}' holds '${rest}', which is not an ion of a common salt`);
    const [token, , closing = '', symbol, count = ''] = match;
    if (symbol !== undefined) found.push([symbol, count === '' ? 1 : Number(count)]);
    else if (token === '(' && openedAt < 0) openedAt = found.length;
    else if (token !== '(' && openedAt >= 0) {
      for (const entry of found.slice(openedAt)) entry[1] *= closing === '' ? 1 : Number(closing);
      openedAt = -1;
    } else throw new RangeError(`'${formula}' has a bracket out of place`);
    rest = rest.slice(token.length);
  }
  if (openedAt >= 0) throw new RangeError(`'${formula}' has a bracket out of place`);
  return found;
}

export interface Dissolved {
  readonly composition: Partial<WaterComposition>;
  /** Inorganic carbon brought by carbonates [mol/m3]. */
  readonly dissolvedInorganicCarbon: number;
}

/**
 * Water with salts dissolved in it completely [mol/m3].
 * @param salts mass of each salt by formula [g/m3 = mg/L], >= 0
 * @throws RangeError for an unknown salt or a mass that is negative or not finite.
 * @source derived: stoichiometry
 */
export function dissolveSalts(salts: Readonly<Record<string, number>>): Dissolved {
  const composition: Record<string, number> = {};
  let dissolvedInorganicCarbon = 0;
  for (const [formula, mass] of Object.entries(salts)) {
    if (!(mass >= 0 && mass < Number.POSITIVE_INFINITY))
      throw new RangeError(`${mass} mg/L of ${formula} cannot be dissolved`);
    const { molarMass, ions, carbon } = readSalt(formula);
    const amount = mass / molarMass;
    for (const [ion, number] of Object.entries(ions))
      composition[ion] = (composition[ion] ?? 0) + number * amount;
    dissolvedInorganicCarbon += carbon * amount;
  }
  return { composition, dissolvedInorganicCarbon };
}
