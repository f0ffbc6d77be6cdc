import { expEach } from '../../numerics/elementary.ts';
import { DAVIES_LIMIT } from '../activity.ts';
import { oliverExponent, oliverSlope } from '../organic-acids.ts';
import { CARBON_CLOSED, CARBON_OPEN, K, PASS, SPECIES, STATE, STEER, TOTAL } from './layout.ts';
import type { Workspace } from './workspace.ts';

const NEUTRAL = 0.1 * Math.LN10;
/** Keeps relative changes defined where an ion is absent [mol/kg]. */
const TRACE = 1e-12;

/** Most of the slope that the cations' following may take: beyond it the pass is far from the solution. */
const MOST_FOLLOWED = 0.9;

/**
 * One pass over all equilibria at the pH, ionic strength and free ions of the workspace: writes every species, the
 * next free ions and ionic strength, and the alkalinity still missing.
 *
 * Anions (carbonate, sulfate, phosphate) are divided over their species with the free cations of the last pass, then
 * cations with the anions of this one. Each half lowers what the other raises, so that from totals downwards, at
 * fixed pH and ionic strength, the passes approach the solution monotonically.
 *
 * Ion pair in concentrations: [MX] = K [M][X] g(M) g(X) / g(MX). Alkalinity
 * HCO3 + 2 CO3 + OH - H + NH3 + HPO4 + 2 PO4 - H3PO4 - HSO4 + A-, pairs counted with their anion.
 *
 * One function, since handing numbers from part to part would cost as much as the work.
 *
 * @param w workspace; all concentrations [mol/kg]
 * @param alkalinity conservative alkalinity [eq/kg]
 * @source derived: law of mass action and mass balances
 */
export function sweep(w: Workspace, alkalinity: number): void {
  const { constants: k, totals: t, state: s, species: m, pass, steer } = w;
  const pH = s[STATE.pH]!;
  const ca = s[STATE.calcium]!;
  const mg = s[STATE.magnesium]!;

  // Activity coefficients (Davies) and the ions of water.
  const I = Math.min(s[STATE.ionicStrength]!, DAVIES_LIMIT);
  const root = Math.sqrt(I);
  const { exponentials } = w;
  exponentials[0] = -Math.LN10 * pH;
  exponentials[1] = -k[K.davies]! * (root / (1 + root) - 0.3 * I);
  exponentials[2] = NEUTRAL * I;
  exponentials[3] = Math.LN10 * oliverExponent(pH);
  expEach(exponentials);
  const h = exponentials[0]!;
  const g = exponentials[1]!;
  const n = exponentials[2]!;
  const g2 = g * g * (g * g);
  const perH = 1 / h;
  const perG = 1 / g;
  const perN = 1 / n;
  const neutralPair = g2 * g2 * perN;
  const hydrogen = h * perG;
  const hydroxide = k[K.water]! * perH * perG;
  let other = hydroxide - hydrogen;
  let slope = hydroxide + hydrogen;

  // Ammonia.
  const nitrogen = t[TOTAL.ammonium]!;
  const ratio = k[K.ammonium]! * g * perH * perN;
  const ammonia = (nitrogen * ratio) / (1 + ratio);
  other += ammonia;
  slope += ammonia / (1 + ratio);

  // Sulfate, per free ion.
  const sulfur = t[TOTAL.sulfate]!;
  const caSO4 = k[K.calciumSulfate]! * neutralPair;
  const mgSO4 = k[K.magnesiumSulfate]! * neutralPair;
  const naSO4 = k[K.sodiumSulfate]! * g2;
  const kSO4 = k[K.potassiumSulfate]! * g2;
  const hSO4 = k[K.hydrogenSulfate]! * hydrogen * g2;
  const inSulfate =
    1 + caSO4 * ca + mgSO4 * mg + naSO4 * s[STATE.sodium]! + kSO4 * s[STATE.potassium]! + hSO4;
  const sulfate = sulfur / inSulfate;
  const hydrogenSulfate = hSO4 * sulfate;
  other -= hydrogenSulfate;
  slope += hydrogenSulfate * (1 - hSO4 / inSulfate);

  // Phosphate, per free PO4 3-.
  const phosphorus = t[TOTAL.phosphate]!;
  const withPO4 = g2 * g2 * g2;
  const hPO4 = k[K.hydrogenPhosphate]! * h * g2 * g;
  const h2PO4 = k[K.dihydrogenPhosphate]! * h * h * g2 * g2;
  const h3PO4 = k[K.trihydrogenPhosphate]! * h * h * h * g2 * g2 * g * perN;
  const caPO4 = k[K.calciumPhosphate]! * withPO4;
  const caHPO4 = k[K.calciumHydrogenPhosphate]! * hPO4 * neutralPair;
  const caH2PO4 = k[K.calciumDihydrogenPhosphate]! * h2PO4 * g2;
  const mgPO4 = k[K.magnesiumPhosphate]! * withPO4;
  const mgHPO4 = k[K.magnesiumHydrogenPhosphate]! * hPO4 * neutralPair;
  const mgH2PO4 = k[K.magnesiumDihydrogenPhosphate]! * h2PO4 * g2;
  const all0 = 1 + caPO4 * ca + mgPO4 * mg;
  const all1 = hPO4 + caHPO4 * ca + mgHPO4 * mg;
  const paired2 = caH2PO4 * ca + mgH2PO4 * mg;
  const perPhosphate = 1 / (all0 + all1 + h2PO4 + paired2 + h3PO4);
  const phosphate = phosphorus * perPhosphate;
  const phosphateCharge = (2 * all0 + all1 - h3PO4) * phosphate;
  other += phosphateCharge;
  slope += (4 * all0 + all1 + h3PO4) * phosphate - phosphateCharge * (2 * all0 + all1 - h3PO4) * perPhosphate;

  // Organic acid.
  const sites = t[TOTAL.organic]!;
  let organic = 0;
  if (w.organicRule === 1) {
    const dissociated = 1 / (1 + exponentials[3]!);
    organic = sites * dissociated;
    slope -= organic * (1 - dissociated) * oliverSlope(pH);
  } else if (w.organicRule === 2 && sites > 0) {
    const a1 = w.triprotic[0]! * perH;
    const a2 = w.triprotic[1]! * perH * perH;
    const a3 = w.triprotic[2]! * perH * perH * perH;
    const molecules = sites / 3 / (1 + a1 + a2 + a3);
    organic = molecules * (a1 + 2 * a2 + 3 * a3);
    slope += molecules * (a1 + 4 * a2 + 9 * a3) - (3 * organic * organic) / sites;
  }
  other += organic;

  // Carbonate, per unit of CO2(aq) activity.
  const carbon = t[TOTAL.carbon]!;
  const b1 = k[K.first]! * perH * perG;
  const b2 = k[K.first]! * k[K.second]! * perH * perH * (perG * perG * (perG * perG));
  const caHCO3 = k[K.calciumBicarbonate]! * g2;
  const mgHCO3 = k[K.magnesiumBicarbonate]! * g2;
  const caCO3 = k[K.calciumCarbonate]! * neutralPair;
  const mgCO3 = k[K.magnesiumCarbonate]! * neutralPair;
  const c1 = b1 * (1 + caHCO3 * ca + mgHCO3 * mg);
  const c2 = b2 * (1 + caCO3 * ca + mgCO3 * mg);
  let a = carbon;
  let change = 0;
  /** Charge of a carbon: what CO2(aq) falls by as pH rises. */
  let mean = 0;
  if (w.carbonRule === CARBON_CLOSED) {
    const perCarbon = 1 / (perN + c1 + c2);
    a = carbon * perCarbon;
    mean = (c1 + 2 * c2) * perCarbon;
    slope -= mean * mean * carbon;
  } else if (w.carbonRule !== CARBON_OPEN) {
    a = Math.max(0, (carbon - other) / (c1 + 2 * c2));
    change = larger(change, a, s[STATE.carbon]!);
  }
  slope += a * (c1 + 4 * c2);
  const hco3 = b1 * a;
  const co3 = b2 * a;

  // Free cations, with the anions of this pass.
  const caCarbonate = caHCO3 * hco3 + caCO3 * co3;
  const mgCarbonate = mgHCO3 * hco3 + mgCO3 * co3;
  const calcium =
    t[TOTAL.calcium]! / (1 + caCarbonate + (caPO4 + caHPO4 + caH2PO4) * phosphate + caSO4 * sulfate);
  const magnesium =
    t[TOTAL.magnesium]! / (1 + mgCarbonate + (mgPO4 + mgHPO4 + mgH2PO4) * phosphate + mgSO4 * sulfate);
  const sodium = t[TOTAL.sodium]! / (1 + naSO4 * sulfate);
  const potassium = t[TOTAL.potassium]! / (1 + kSO4 * sulfate);

  // What free calcium and magnesium give way as their pairs with carbonate grow, eliminated from the balances.
  const calciumGrowth = (1 - mean) * caHCO3 * hco3 + (2 - mean) * caCO3 * co3;
  const magnesiumGrowth = (1 - mean) * mgHCO3 * hco3 + (2 - mean) * mgCO3 * co3;
  let followed = 0;
  if (ca > 0) followed += (calciumGrowth * ca * (calciumGrowth * ca)) / t[TOTAL.calcium]!;
  if (mg > 0) followed += (magnesiumGrowth * mg * (magnesiumGrowth * mg)) / t[TOTAL.magnesium]!;
  if (followed < MOST_FOLLOWED * slope) slope -= followed;

  m[SPECIES.hydrogen] = hydrogen;
  m[SPECIES.hydroxide] = hydroxide;
  m[SPECIES.carbonDioxide] = perN * a;
  m[SPECIES.bicarbonate] = hco3;
  m[SPECIES.carbonate] = co3;
  m[SPECIES.calciumBicarbonate] = caHCO3 * ca * hco3;
  m[SPECIES.calciumCarbonate] = caCO3 * ca * co3;
  m[SPECIES.magnesiumBicarbonate] = mgHCO3 * mg * hco3;
  m[SPECIES.magnesiumCarbonate] = mgCO3 * mg * co3;
  m[SPECIES.calcium] = calcium;
  m[SPECIES.magnesium] = magnesium;
  m[SPECIES.sodium] = sodium;
  m[SPECIES.potassium] = potassium;
  m[SPECIES.sulfate] = sulfate;
  m[SPECIES.calciumSulfate] = caSO4 * sulfate * calcium;
  m[SPECIES.magnesiumSulfate] = mgSO4 * sulfate * magnesium;
  m[SPECIES.sodiumSulfate] = naSO4 * sulfate * sodium;
  m[SPECIES.potassiumSulfate] = kSO4 * sulfate * potassium;
  m[SPECIES.hydrogenSulfate] = hydrogenSulfate;
  m[SPECIES.ammonium] = nitrogen - ammonia;
  m[SPECIES.ammonia] = ammonia;
  m[SPECIES.phosphate] = phosphate;
  m[SPECIES.hydrogenPhosphate] = hPO4 * phosphate;
  m[SPECIES.dihydrogenPhosphate] = h2PO4 * phosphate;
  m[SPECIES.trihydrogenPhosphate] = h3PO4 * phosphate;
  m[SPECIES.calciumPhosphate] = caPO4 * ca * phosphate;
  m[SPECIES.calciumHydrogenPhosphate] = caHPO4 * ca * phosphate;
  m[SPECIES.calciumDihydrogenPhosphate] = caH2PO4 * ca * phosphate;
  m[SPECIES.magnesiumPhosphate] = mgPO4 * mg * phosphate;
  m[SPECIES.magnesiumHydrogenPhosphate] = mgHPO4 * mg * phosphate;
  m[SPECIES.magnesiumDihydrogenPhosphate] = mgH2PO4 * mg * phosphate;
  m[SPECIES.organicAnion] = organic;

  // I = 1/2 sum of m z2 over the free species and charged pairs; organic anions count with charge 1.
  const single =
    sodium +
    potassium +
    (nitrogen - ammonia) +
    hydrogen +
    hydroxide +
    hco3 * (1 + caHCO3 * ca + mgHCO3 * mg) +
    sulfate * (naSO4 * sodium + kSO4 * potassium) +
    hydrogenSulfate +
    organic +
    t[TOTAL.chloride]! +
    t[TOTAL.nitrate]! +
    t[TOTAL.nitrite]!;
  const double = calcium + magnesium + sulfate + co3;
  const ofPhosphate = (8 + all0 + 4 * hPO4 + h2PO4 + paired2) * phosphate;
  const strength = 0.5 * (single + 4 * double + ofPhosphate);

  change = larger(change, calcium, ca);
  change = larger(change, magnesium, mg);
  change = larger(change, sodium, s[STATE.sodium]!);
  change = larger(change, potassium, s[STATE.potassium]!);
  change = larger(change, strength, s[STATE.ionicStrength]!);
  s[STATE.ionicStrength] = strength;
  s[STATE.calcium] = calcium;
  s[STATE.magnesium] = magnesium;
  s[STATE.sodium] = sodium;
  s[STATE.potassium] = potassium;
  s[STATE.carbon] = a;
  pass[PASS.double] = g2;
  pass[PASS.neutral] = n;
  pass[PASS.otherAlkalinity] = other;
  pass[PASS.calciumGrowth] = calciumGrowth;
  pass[PASS.magnesiumGrowth] = magnesiumGrowth;
  steer[STEER.slope] = slope;
  steer[STEER.residual] = alkalinity - other - a * (c1 + 2 * c2);
  steer[STEER.change] = change;
}

/** The larger of a change and the relative change from before to now [1]; NaN when either is. */
function larger(change: number, now: number, before: number): number {
  const relative = Math.abs(now - before) / (now + TRACE);
  return Math.max(change, relative);
}

/**
 * Moves free calcium and magnesium along with pH, to where their pairs with carbonate will leave them.
 * @param change of ln 10 pH [1]
 * @source derived: first order in the change
 */
export function moveCations({ totals: t, state: s, pass }: Workspace, change: number): void {
  const ca = s[STATE.calcium]!;
  const mg = s[STATE.magnesium]!;
  // Total over free, 1 where nothing is paired
  if (ca > 0) {
    const paired = t[TOTAL.calcium]! / ca;
    s[STATE.calcium] =
      t[TOTAL.calcium]! / Math.max(0.5 * paired, paired + pass[PASS.calciumGrowth]! * change);
  }
  if (mg > 0) {
    const paired = t[TOTAL.magnesium]! / mg;
    s[STATE.magnesium] =
      t[TOTAL.magnesium]! / Math.max(0.5 * paired, paired + pass[PASS.magnesiumGrowth]! * change);
  }
}
