import { exp10, log10 } from '../numerics/elementary.ts';
import { DISSOLVED_IDS, type WaterComposition } from '../plan/water-composition.ts';
import { logAragoniteSolubility, logCalciteSolubility, logGypsumSolubility } from './constants/minerals.ts';
import {
  CARBON_CLOSED,
  CARBON_FROM_ALKALINITY,
  CARBON_OPEN,
  K,
  PASS,
  SPECIES,
  STATE,
  TOTAL,
} from './equilibrium/layout.ts';
import { settleAtPH, solvePH } from './equilibrium/solve.ts';
import { writeConstants } from './equilibrium/temperature-table.ts';
import { conservativeAlkalinity, Workspace } from './equilibrium/workspace.ts';
import { ATMOSPHERE } from './gases.ts';
import { HUMIC_ACID, type OrganicAcid } from './organic-acids.ts';

/** Which carbon is fixed. `alkalinity` needs a given pH: carbon is what makes the two agree. */
export type CarbonSupply =
  /** In balance with a partial pressure of CO2 [Pa]. */
  | { readonly kind: 'open'; readonly pressure: number }
  /** Dissolved inorganic carbon [mol/m3]. */
  | { readonly kind: 'closed'; readonly dissolvedInorganicCarbon: number }
  /** Alkalinity [eq/m3], at the given pH. */
  | { readonly kind: 'alkalinity'; readonly alkalinity: number };

export interface WaterState {
  /** [degC], -5 to 95. */
  readonly temperature: number;
  /** Totals [mol/m3]; what is left out is absent. */
  readonly composition: Partial<WaterComposition>;
  readonly carbon: CarbonSupply;
  /** Given instead of computed, activity scale, -2 to 16; charges then need not balance. */
  readonly pH?: number;
  /** Nature of the dissolved organic carbon; humic acid after Oliver when left out. */
  readonly organicAcid?: OrganicAcid;
}

/** A water with its equilibria solved. Concentrations [mol/m3], 1 kg of water taken as 1 L. */
export interface Speciation {
  readonly temperature: number;
  readonly pH: number;
  /** [mol/kg] */
  readonly ionicStrength: number;
  /** Conservative alkalinity of the totals [eq/m3]. */
  readonly alkalinity: number;
  readonly dissolvedInorganicCarbon: number;
  readonly carbonDioxide: number;
  /** Ion pairs included. */
  readonly bicarbonate: number;
  readonly carbonate: number;
  /** Partial pressure of CO2 the water would balance [Pa]. */
  readonly carbonDioxidePressure: number;
  readonly unionisedAmmonia: number;
  /** Charge of dissociated organic acids [eq/m3]. */
  readonly organicAnion: number;
  readonly free: FreeIons;
  /** log10 of ion activity product over solubility product; -Infinity where an ion is absent. */
  readonly saturationIndex: { readonly calcite: number; readonly aragonite: number; readonly gypsum: number };
  /** Activities of H+ and CO2(aq) [mol/kg]. */
  readonly activity: { readonly hydrogen: number; readonly carbonDioxide: number };
  /** False where the iteration met its limit, in brines of several mol/kg. */
  readonly converged: boolean;
}

/** Unpaired ions [mol/m3]. */
export interface FreeIons {
  readonly hydrogen: number;
  readonly hydroxide: number;
  readonly calcium: number;
  readonly magnesium: number;
  readonly sodium: number;
  readonly potassium: number;
  readonly ammonium: number;
  readonly chloride: number;
  readonly sulfate: number;
  readonly nitrate: number;
  readonly nitrite: number;
  readonly bicarbonate: number;
  readonly carbonate: number;
}

function checked(name: string, value: number, min: number, max: number): number {
  if (!(value >= min && value <= max)) throw new RangeError(`${name} = ${value} is outside ${min} to ${max}`);
  return value;
}

/** More than any natural brine [mol/m3]. */
const MOST = 20_000;

function loadTotals(w: Workspace, composition: Partial<WaterComposition>, acid: OrganicAcid): void {
  for (const id of DISSOLVED_IDS) {
    const amount = checked(`${id} [mol/m3]`, composition[id] ?? 0, 0, MOST) / 1000;
    if (id === 'dissolvedOrganicCarbon') w.totals[TOTAL.organic] = amount * acid.siteDensity;
    else w.totals[TOTAL[id]] = amount;
  }
  w.organicRule = acid.kind === 'Oliver' ? 1 : 2;
  if (acid.kind === 'triprotic') {
    const [first, second, third] = acid.pKa;
    w.triprotic.set([exp10(-first), exp10(-first - second), exp10(-first - second - third)]);
  }
}

function loadCarbon(w: Workspace, carbon: CarbonSupply): void {
  if (carbon.kind === 'open') {
    w.carbonRule = CARBON_OPEN;
    const pressure = checked('partial pressure of CO2 [Pa]', carbon.pressure, 0, 10 * ATMOSPHERE);
    w.totals[TOTAL.carbon] = (w.constants[K.carbonDioxide]! * pressure) / ATMOSPHERE;
  } else if (carbon.kind === 'closed') {
    w.carbonRule = CARBON_CLOSED;
    w.totals[TOTAL.carbon] =
      checked('dissolved inorganic carbon [mol/m3]', carbon.dissolvedInorganicCarbon, 0, MOST) / 1000;
  } else {
    w.carbonRule = CARBON_FROM_ALKALINITY;
    w.totals[TOTAL.carbon] = checked('alkalinity [eq/m3]', carbon.alkalinity, -MOST, MOST) / 1000;
  }
}

/**
 * The water with its equilibria solved: pH, carbonate, ammonia, ion pairs and saturation at given totals.
 * @param w workspace kept from call to call: its last solution is the first guess of the next
 * @throws RangeError when an input is negative, not finite or beyond its range; when carbon is to follow from
 *   alkalinity without a pH; when no carbon can explain the alkalinity at the given pH.
 * @validity ionic strength up to 0.1 mol/kg, 5 to 45 degC; beyond 0.5 mol/kg activity coefficients stay constant.
 *   Nitrite counts as a strong anion (pKa 3.2), so below pH 4.5 it is a little overstated as such.
 * @source davies-1962, plummer-busenberg-1982, ball-nordstrom-1991, emerson-1975, oliver-1983; derived: charge and
 *   mass balances
 */
export function speciate(water: WaterState, w: Workspace = new Workspace()): Speciation {
  const { temperature, carbon, pH } = water;
  writeConstants(checked('temperature [degC]', temperature, -5, 95), w.constants, 0);
  loadTotals(w, water.composition, water.organicAcid ?? HUMIC_ACID);
  loadCarbon(w, carbon);
  let passes: number;
  if (pH !== undefined) {
    w.state[STATE.pH] = checked('pH', pH, -2, 16);
    passes = settleAtPH(w, conservativeAlkalinity(w.totals));
    if (carbon.kind === 'alkalinity') requireCarbon(w, carbon.alkalinity);
  } else {
    if (carbon.kind === 'alkalinity') throw new RangeError('carbon from alkalinity needs a pH');
    passes = solvePH(w);
  }
  return readout(w, temperature, passes > 0);
}

function requireCarbon(w: Workspace, alkalinity: number): void {
  const rest = w.pass[PASS.otherAlkalinity]!;
  if (alkalinity / 1000 - rest < -1e-9)
    throw new RangeError(
      `alkalinity ${alkalinity} eq/m3 is less than the water has without carbon at this pH`,
    );
}

/**
 * The unpaired ions of a solved workspace [mol/m3].
 * @param w workspace in which pH has been solved for
 * @source derived: 1 kg of water taken as 1 L
 */
export function freeIons({ species, totals }: Workspace): FreeIons {
  return {
    hydrogen: 1000 * species[SPECIES.hydrogen]!,
    hydroxide: 1000 * species[SPECIES.hydroxide]!,
    calcium: 1000 * species[SPECIES.calcium]!,
    magnesium: 1000 * species[SPECIES.magnesium]!,
    sodium: 1000 * species[SPECIES.sodium]!,
    potassium: 1000 * species[SPECIES.potassium]!,
    ammonium: 1000 * species[SPECIES.ammonium]!,
    chloride: 1000 * totals[TOTAL.chloride]!,
    sulfate: 1000 * species[SPECIES.sulfate]!,
    nitrate: 1000 * totals[TOTAL.nitrate]!,
    nitrite: 1000 * totals[TOTAL.nitrite]!,
    bicarbonate: 1000 * species[SPECIES.bicarbonate]!,
    carbonate: 1000 * species[SPECIES.carbonate]!,
  };
}

function readout(w: Workspace, temperature: number, converged: boolean): Speciation {
  const m = (key: keyof typeof SPECIES): number => 1000 * w.species[SPECIES[key]]!;
  const T = temperature + 273.15;
  const g2 = w.pass[PASS.double]!;
  const ionProduct = (anion: 'carbonate' | 'sulfate'): number =>
    log10(w.species[SPECIES.calcium]! * g2 * w.species[SPECIES[anion]]! * g2);
  const carbonate = ionProduct('carbonate');
  const bicarbonate = m('bicarbonate') + m('calciumBicarbonate') + m('magnesiumBicarbonate');
  const allCarbonate = m('carbonate') + m('calciumCarbonate') + m('magnesiumCarbonate');
  return {
    temperature,
    pH: w.state[STATE.pH]!,
    ionicStrength: w.state[STATE.ionicStrength]!,
    alkalinity: 1000 * conservativeAlkalinity(w.totals),
    dissolvedInorganicCarbon: m('carbonDioxide') + bicarbonate + allCarbonate,
    carbonDioxide: m('carbonDioxide'),
    bicarbonate,
    carbonate: allCarbonate,
    carbonDioxidePressure: (w.state[STATE.carbon]! / w.constants[K.carbonDioxide]!) * ATMOSPHERE,
    unionisedAmmonia: m('ammonia'),
    organicAnion: m('organicAnion'),
    free: freeIons(w),
    saturationIndex: {
      calcite: carbonate - logCalciteSolubility(T),
      aragonite: carbonate - logAragoniteSolubility(T),
      gypsum: ionProduct('sulfate') - logGypsumSolubility(T),
    },
    activity: { hydrogen: exp10(-w.state[STATE.pH]!), carbonDioxide: w.state[STATE.carbon]! },
    converged,
  };
}
