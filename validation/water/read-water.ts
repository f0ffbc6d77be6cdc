import {
  alkalinityOf,
  type CarbonSupply,
  carbonDioxidePressure,
  MOLAR_MASS,
  type OrganicAcid,
  siteDensityPerCarbon,
  type WaterComposition,
  type WaterState,
} from '@shoreglass/engine';
import type { Inputs } from '../harness/inputs.ts';

export type Composition = Partial<WaterComposition>;

interface Master {
  readonly id: keyof WaterComposition;
  /** [g/mol] and charge, for totals given as mass or equivalents. */
  readonly mass: number;
  readonly charge: number;
}

const master = (id: keyof WaterComposition, mass: number, charge: number): Master => ({ id, mass, charge });
const NITRATE = master('nitrate', MOLAR_MASS.nitrate, 1);
const NITRITE = master('nitrite', MOLAR_MASS.nitrite, 1);
const AMMONIUM = master('ammonium', MOLAR_MASS.ammonium, 1);
const PHOSPHATE = master('phosphate', MOLAR_MASS.phosphate, 1);

/** Names of totals in the reference cases. */
const MASTERS: Readonly<Record<string, Master>> = {
  Ca: master('calcium', MOLAR_MASS.calcium, 2),
  Mg: master('magnesium', MOLAR_MASS.magnesium, 2),
  Na: master('sodium', MOLAR_MASS.sodium, 1),
  K: master('potassium', MOLAR_MASS.potassium, 1),
  Cl: master('chloride', MOLAR_MASS.chloride, 1),
  SO4: master('sulfate', MOLAR_MASS.sulfate, 2),
  NO3: NITRATE,
  NO2: NITRITE,
  NH4: AMMONIUM,
  'NH4+NH3': AMMONIUM,
  'NH3+NH4': AMMONIUM,
  'P (phosphate)': PHOSPHATE,
  P: PHOSPHATE,
  PO4: PHOSPHATE,
};

/** An amount concentration [mol/m3] given as amount, mass or equivalents. */
function amountOf(group: Inputs, name: string, { mass, charge }: Omit<Master, 'id'>): number {
  if (group.measures(name, 'mol/m3')) return group.number(name, 'mol/m3');
  if (group.measures(name, 'eq/m3')) return group.number(name, 'eq/m3') / charge;
  if (group.measures(name, 'g N/m3')) return group.number(name, 'g N/m3') / MOLAR_MASS.nitrogen;
  if (group.measures(name, 'g P/m3')) return group.number(name, 'g P/m3') / MOLAR_MASS.phosphorus;
  return group.number(name, 'g/m3') / mass;
}

/**
 * Totals of a water [mol/m3] from a group of them.
 * @param aside names in the group that are read elsewhere
 * @throws Error for a total that is not modelled.
 */
export function readTotals(group: Inputs, aside: readonly string[] = []): Composition {
  const composition: Record<string, number> = {};
  for (const name of group.names().filter((given) => !aside.includes(given))) {
    const found = Object.hasOwn(MASTERS, name) ? MASTERS[name] : undefined;
    if (!found) throw new Error(`total '${name}' is none of ${Object.keys(MASTERS).join(', ')}`);
    const amount = amountOf(group, name, found);
    if (amount < 0) throw new Error(`total '${name}' is negative`);
    composition[found.id] = (composition[found.id] ?? 0) + amount;
  }
  return composition;
}

/** Alkalinity [eq/m3], also in degrees of hardness or as CaCO3. */
export function readAlkalinity(inputs: Inputs, name: string): number {
  if (inputs.measures(name, 'eq/m3')) return inputs.number(name, 'eq/m3');
  if (inputs.measures(name, 'g CaCO3/m3'))
    return (2 * inputs.number(name, 'g CaCO3/m3')) / MOLAR_MASS.calciumCarbonate;
  return inputs.number(name, 'mol/m3');
}

/** The totals with sodium or chloride added where they do not carry the stated alkalinity [eq/m3]. */
export function carryingAlkalinity(composition: Composition, alkalinity: number): Composition {
  const gap = alkalinity - alkalinityOf(composition);
  return gap >= 0
    ? { ...composition, sodium: (composition.sodium ?? 0) + gap }
    : { ...composition, chloride: (composition.chloride ?? 0) - gap };
}

/** Bicarbonate and carbonate of an analysis as alkalinity [eq/m3], with what H+ and OH- add at its pH. */
function analysedAlkalinity(ions: Inputs, pH: number): number {
  const bicarbonate = ions.has('HCO3')
    ? amountOf(ions, 'HCO3', { mass: MOLAR_MASS.bicarbonate, charge: 1 })
    : 0;
  const carbonate = ions.has('CO3') ? amountOf(ions, 'CO3', { mass: MOLAR_MASS.carbonate, charge: 2 }) : 0;
  return bicarbonate + 2 * carbonate + 1000 * (10 ** (pH - 14) - 10 ** -pH);
}

function readCarbon(inputs: Inputs, temperature: number): CarbonSupply {
  if (inputs.has('pCO2')) return { kind: 'open', pressure: inputs.number('pCO2', 'Pa') };
  if (inputs.has('log10_pCO2')) {
    const atmospheres = 10 ** inputs.number('log10_pCO2', 'log10(atm)');
    return { kind: 'open', pressure: atmospheres * 101325 };
  }
  if (inputs.has('xCO2_dry')) {
    const pressure = inputs.numberOr('pressure', 'Pa', 101325);
    const air = { carbonDioxide: inputs.number('xCO2_dry', '-') * 1e6, pressure };
    return { kind: 'open', pressure: carbonDioxidePressure(temperature, air) };
  }
  if (inputs.has('DIC')) {
    const dissolvedInorganicCarbon = amountOf(inputs, 'DIC', { mass: MOLAR_MASS.carbon, charge: 1 });
    return { kind: 'closed', dissolvedInorganicCarbon };
  }
  if (inputs.has('pH') && inputs.has('ions')) {
    const alkalinity = analysedAlkalinity(inputs.group('ions'), inputs.number('pH', '-'));
    return { kind: 'alkalinity', alkalinity };
  }
  if (inputs.has('pH') && inputs.has('alkalinity'))
    return { kind: 'alkalinity', alkalinity: readAlkalinity(inputs, 'alkalinity') };
  throw new Error(
    "none of the inputs 'pCO2', 'DIC', or 'pH' with 'alkalinity' or 'ions' says which carbon is fixed",
  );
}

/** Dissolved organic carbon [mol/m3] and how it acts as an acid; none when the case has none. */
function readOrganics(inputs: Inputs): { readonly carbon: number; readonly acid?: OrganicAcid } {
  if (!inputs.has('DOC')) return { carbon: 0 };
  const perMass = inputs.measures('DOC', 'g C/m3') ? 'g C/m3' : 'g/m3';
  const carbon = inputs.measures('DOC', 'mol/m3')
    ? inputs.number('DOC', 'mol/m3')
    : inputs.number('DOC', perMass) / MOLAR_MASS.carbon;
  if (!inputs.has('pKa')) {
    const siteDensity = siteDensityPerCarbon(inputs.numberOr('carboxyl_density', 'ueq/mg C', 10));
    return { carbon, acid: { kind: 'Oliver', siteDensity } };
  }
  const pKa = inputs.numbers('pKa', '-');
  if (pKa.length !== 3) throw new Error(`input 'pKa' has ${pKa.length} values, not 3`);
  const siteDensity = siteDensityPerCarbon(inputs.number('site_density', 'ueq/mg C'));
  return { carbon, acid: { kind: 'triprotic', siteDensity, pKa: pKa as [number, number, number] } };
}

/**
 * The water of a case: temperature, totals, which carbon is fixed, a given pH, organic acids.
 * @throws Error with what is missing.
 */
export function readWater(inputs: Inputs): WaterState {
  const temperature = inputs.number('temperature', 'degC');
  const totals = inputs.has('ions')
    ? readTotals(inputs.group('ions'), ['HCO3', 'CO3'])
    : readTotals(inputs.groupOrEmpty('totals'));
  const stated = ['alkalinity', 'mineral_alkalinity'].find((name) => inputs.has(name));
  const composition = stated ? carryingAlkalinity(totals, readAlkalinity(inputs, stated)) : totals;
  const { carbon, acid } = readOrganics(inputs);
  return {
    temperature,
    composition: { ...composition, dissolvedOrganicCarbon: carbon },
    carbon: readCarbon(inputs, temperature),
    ...(inputs.has('pH') ? { pH: inputs.number('pH', '-') } : {}),
    ...(acid ? { organicAcid: acid } : {}),
  };
}
