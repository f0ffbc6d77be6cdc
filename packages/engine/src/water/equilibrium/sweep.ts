import { exp, exp10 } from '../../numerics/elementary.ts';
import { DAVIES_LIMIT } from '../activity.ts';
import { oliverExponent, oliverSlope } from '../organic-acids.ts';
import { CARBON_CLOSED, CARBON_OPEN, K, PASS, SPECIES, STATE, STEER, TOTAL } from './layout.ts';
import { sharePhosphate } from './share-phosphate.ts';
import type { Workspace } from './workspace.ts';

const NEUTRAL = 0.1 * Math.LN10;
/** Keeps relative changes defined where an ion is absent [mol/kg]. */
const TRACE = 1e-12;

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
 * @param w workspace; all concentrations [mol/kg]
 * @param alkalinity conservative alkalinity [eq/kg]
 * @source derived: law of mass action and mass balances
 */
export function sweep(w: Workspace, alkalinity: number): void {
  setCoefficients(w);
  shareAmmonia(w);
  shareSulfate(w);
  sharePhosphate(w);
  if (w.organicRule !== 0) shareOrganicAcid(w);
  shareCarbon(w, alkalinity);
  shareCations(w);
  updateIonicStrength(w);
}

/** Activity coefficients (Davies) and the ions of water. */
function setCoefficients({ constants: k, state: s, species: m, pass, steer }: Workspace): void {
  const h = exp10(-s[STATE.pH]!);
  const I = Math.min(s[STATE.ionicStrength]!, DAVIES_LIMIT);
  const root = Math.sqrt(I);
  const g = exp(-k[K.davies]! * (root / (1 + root) - 0.3 * I));
  const square = g * g;
  pass[PASS.hydrogen] = h;
  pass[PASS.single] = g;
  pass[PASS.double] = square * square;
  pass[PASS.neutral] = exp(NEUTRAL * I);
  const hydrogen = h / g;
  const hydroxide = k[K.water]! / (h * g);
  m[SPECIES.hydrogen] = hydrogen;
  m[SPECIES.hydroxide] = hydroxide;
  pass[PASS.otherAlkalinity] = hydroxide - hydrogen;
  steer[STEER.slope] = hydroxide + hydrogen;
  steer[STEER.change] = 0;
}

function shareAmmonia({ constants: k, totals: t, species: m, pass, steer }: Workspace): void {
  const total = t[TOTAL.ammonium]!;
  const ratio = (k[K.ammonium]! * pass[PASS.single]!) / (pass[PASS.hydrogen]! * pass[PASS.neutral]!);
  const ammonia = (total * ratio) / (1 + ratio);
  m[SPECIES.ammonia] = ammonia;
  m[SPECIES.ammonium] = total - ammonia;
  pass[PASS.otherAlkalinity]! += ammonia;
  steer[STEER.slope]! += ammonia / (1 + ratio);
}

function shareSulfate({ constants: k, totals: t, state: s, species: m, pass, steer }: Workspace): void {
  const total = t[TOTAL.sulfate]!;
  const g2 = pass[PASS.double]!;
  const neutralPair = (g2 * g2) / pass[PASS.neutral]!;
  const hydrogen = (k[K.hydrogenSulfate]! * pass[PASS.hydrogen]! * g2) / pass[PASS.single]!;
  const sulfate =
    total /
    (1 +
      (k[K.calciumSulfate]! * s[STATE.calcium]! + k[K.magnesiumSulfate]! * s[STATE.magnesium]!) *
        neutralPair +
      (k[K.sodiumSulfate]! * s[STATE.sodium]! + k[K.potassiumSulfate]! * s[STATE.potassium]!) * g2 +
      hydrogen);
  const hydrogenSulfate = hydrogen * sulfate;
  m[SPECIES.sulfate] = sulfate;
  m[SPECIES.hydrogenSulfate] = hydrogenSulfate;
  pass[PASS.otherAlkalinity]! -= hydrogenSulfate;
  if (total > 0) steer[STEER.slope]! += hydrogenSulfate * (1 - hydrogenSulfate / total);
}

function shareOrganicAcid(w: Workspace): void {
  const { totals: t, state: s, species: m, pass, steer } = w;
  const sites = t[TOTAL.organic]!;
  let anion = 0;
  if (sites > 0 && w.organicRule === 1) {
    const pH = s[STATE.pH]!;
    anion = sites / (1 + exp10(oliverExponent(pH)));
    steer[STEER.slope]! -= anion * (1 - anion / sites) * oliverSlope(pH);
  } else if (sites > 0) {
    const h = pass[PASS.hydrogen]!;
    const a1 = w.triprotic[0]! / h;
    const a2 = w.triprotic[1]! / (h * h);
    const a3 = w.triprotic[2]! / (h * h * h);
    const molecules = sites / 3 / (1 + a1 + a2 + a3);
    anion = molecules * (a1 + 2 * a2 + 3 * a3);
    steer[STEER.slope]! += molecules * (a1 + 4 * a2 + 9 * a3) - (3 * anion * anion) / sites;
  }
  m[SPECIES.organicAnion] = anion;
  pass[PASS.otherAlkalinity]! += anion;
}

/** Carbonate species, from their shares per unit of CO2(aq) activity; completes the residual and its slope. */
function shareCarbon(w: Workspace, alkalinity: number): void {
  const { constants: k, totals: t, state: s, species: m, pass, steer } = w;
  const h = pass[PASS.hydrogen]!;
  const g2 = pass[PASS.double]!;
  const ca = s[STATE.calcium]!;
  const mg = s[STATE.magnesium]!;
  const neutralPair = (g2 * g2) / pass[PASS.neutral]!;
  const b1 = k[K.first]! / (h * pass[PASS.single]!);
  const b2 = (k[K.first]! * k[K.second]!) / (h * h * g2);
  const caHCO3 = k[K.calciumBicarbonate]! * g2;
  const mgHCO3 = k[K.magnesiumBicarbonate]! * g2;
  const caCO3 = k[K.calciumCarbonate]! * neutralPair;
  const mgCO3 = k[K.magnesiumCarbonate]! * neutralPair;
  const c0 = 1 / pass[PASS.neutral]!;
  const c1 = b1 * (1 + caHCO3 * ca + mgHCO3 * mg);
  const c2 = b2 * (1 + caCO3 * ca + mgCO3 * mg);
  const total = t[TOTAL.carbon]!;
  const other = pass[PASS.otherAlkalinity]!;
  let a = total;
  /** Charge of a carbon: what CO2(aq) falls by as pH rises. */
  let mean = 0;
  if (w.carbonRule === CARBON_CLOSED) {
    a = total / (c0 + c1 + c2);
    mean = (c1 + 2 * c2) / (c0 + c1 + c2);
    steer[STEER.slope]! -= mean * mean * total;
  } else if (w.carbonRule !== CARBON_OPEN) {
    a = Math.max(0, (total - other) / (c1 + 2 * c2));
    note(steer, a, s[STATE.carbon]!);
  }
  steer[STEER.slope]! += a * (c1 + 4 * c2);
  steer[STEER.residual] = alkalinity - other - a * (c1 + 2 * c2);
  const hco3 = b1 * a;
  const co3 = b2 * a;
  m[SPECIES.carbonDioxide] = c0 * a;
  m[SPECIES.bicarbonate] = hco3;
  m[SPECIES.carbonate] = co3;
  m[SPECIES.calciumBicarbonate] = caHCO3 * ca * hco3;
  m[SPECIES.calciumCarbonate] = caCO3 * ca * co3;
  m[SPECIES.magnesiumBicarbonate] = mgHCO3 * mg * hco3;
  m[SPECIES.magnesiumCarbonate] = mgCO3 * mg * co3;
  pass[PASS.calciumPaired] = caHCO3 * hco3 + caCO3 * co3;
  pass[PASS.magnesiumPaired] = mgHCO3 * hco3 + mgCO3 * co3;
  s[STATE.carbon] = a;
  pass[PASS.calciumGrowth] = (1 - mean) * caHCO3 * hco3 + (2 - mean) * caCO3 * co3;
  pass[PASS.magnesiumGrowth] = (1 - mean) * mgHCO3 * hco3 + (2 - mean) * mgCO3 * co3;
  followCations(w, ca, mg);
}

/** Most of the slope that the cations' following may take: beyond it the pass is far from the solution. */
const MOST_FOLLOWED = 0.9;

/**
 * Takes from the slope what free calcium and magnesium give way as their pairs with carbonate grow: with q the growth of
 * the pairs of an ion, q2 over its total. `derived`: elimination of the free ions from the linearised balances.
 */
function followCations({ totals: t, pass, steer }: Workspace, ca: number, mg: number): void {
  const calcium = pass[PASS.calciumGrowth]! * ca;
  const magnesium = pass[PASS.magnesiumGrowth]! * mg;
  let followed = 0;
  if (calcium > 0) followed += (calcium * calcium) / t[TOTAL.calcium]!;
  if (magnesium > 0) followed += (magnesium * magnesium) / t[TOTAL.magnesium]!;
  if (followed < MOST_FOLLOWED * steer[STEER.slope]!) steer[STEER.slope]! -= followed;
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

/** Free cations and their sulfate pairs, with the anions of this pass. */
function shareCations({ constants: k, totals: t, state: s, species: m, pass, steer }: Workspace): void {
  const g2 = pass[PASS.double]!;
  const so4 = m[SPECIES.sulfate]! * g2;
  const neutralSO4 = (so4 * g2) / pass[PASS.neutral]!;
  const caSO4 = k[K.calciumSulfate]! * neutralSO4;
  const mgSO4 = k[K.magnesiumSulfate]! * neutralSO4;
  const naSO4 = k[K.sodiumSulfate]! * so4;
  const kSO4 = k[K.potassiumSulfate]! * so4;
  const ca = t[TOTAL.calcium]! / (1 + pass[PASS.calciumPaired]! + pass[PASS.calciumPhosphate]! + caSO4);
  const mg = t[TOTAL.magnesium]! / (1 + pass[PASS.magnesiumPaired]! + pass[PASS.magnesiumPhosphate]! + mgSO4);
  const na = t[TOTAL.sodium]! / (1 + naSO4);
  const ka = t[TOTAL.potassium]! / (1 + kSO4);
  m[SPECIES.calcium] = ca;
  m[SPECIES.magnesium] = mg;
  m[SPECIES.sodium] = na;
  m[SPECIES.potassium] = ka;
  m[SPECIES.calciumSulfate] = caSO4 * ca;
  m[SPECIES.magnesiumSulfate] = mgSO4 * mg;
  m[SPECIES.sodiumSulfate] = naSO4 * na;
  m[SPECIES.potassiumSulfate] = kSO4 * ka;
  note(steer, ca, s[STATE.calcium]!);
  note(steer, mg, s[STATE.magnesium]!);
  note(steer, na, s[STATE.sodium]!);
  note(steer, ka, s[STATE.potassium]!);
  s[STATE.calcium] = ca;
  s[STATE.magnesium] = mg;
  s[STATE.sodium] = na;
  s[STATE.potassium] = ka;
}

/** I = 1/2 sum of m z2 over the free species and charged pairs; organic anions count with charge 1. */
function updateIonicStrength({ totals: t, state: s, species: m, pass, steer }: Workspace): void {
  const single =
    m[SPECIES.sodium]! +
    m[SPECIES.potassium]! +
    m[SPECIES.ammonium]! +
    m[SPECIES.hydrogen]! +
    m[SPECIES.hydroxide]! +
    m[SPECIES.bicarbonate]! +
    m[SPECIES.calciumBicarbonate]! +
    m[SPECIES.magnesiumBicarbonate]! +
    m[SPECIES.sodiumSulfate]! +
    m[SPECIES.potassiumSulfate]! +
    m[SPECIES.hydrogenSulfate]! +
    m[SPECIES.organicAnion]! +
    t[TOTAL.chloride]! +
    t[TOTAL.nitrate]! +
    t[TOTAL.nitrite]!;
  const double = m[SPECIES.calcium]! + m[SPECIES.magnesium]! + m[SPECIES.sulfate]! + m[SPECIES.carbonate]!;
  const strength = 0.5 * (single + 4 * double + pass[PASS.phosphateStrength]!);
  note(steer, strength, s[STATE.ionicStrength]!);
  s[STATE.ionicStrength] = strength;
}

/** Remembers the largest relative change of the pass. */
function note(steer: Float64Array, now: number, before: number): void {
  const change = Math.abs(now - before) / (now + TRACE);
  if (!(change <= steer[STEER.change]!)) steer[STEER.change] = change;
}
