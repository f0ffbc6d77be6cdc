import { K, PASS, SPECIES, STATE, STEER, TOTAL } from './layout.ts';
import type { Workspace } from './workspace.ts';

/**
 * Divides phosphate over its four acids and bases and their pairs with calcium and magnesium [mol/kg], adding its
 * part to alkalinity (zero level H2PO4-), slope and ionic strength of the pass.
 * @source derived: law of mass action
 */
export function sharePhosphate({
  constants: k,
  totals: t,
  state: s,
  species: m,
  pass,
  steer,
}: Workspace): void {
  const total = t[TOTAL.phosphate]!;
  const h = pass[PASS.hydrogen]!;
  const g = pass[PASS.single]!;
  const g2 = pass[PASS.double]!;
  const n = pass[PASS.neutral]!;
  const g3 = g2 * g2 * g;
  const ca = s[STATE.calcium]!;
  const mg = s[STATE.magnesium]!;

  // Shares per free PO4 3-
  const hydrogen = (k[K.hydrogenPhosphate]! * h * g3) / g2;
  const dihydrogen = (k[K.dihydrogenPhosphate]! * h * h * g3) / g;
  const trihydrogen = (k[K.trihydrogenPhosphate]! * h * h * h * g3) / n;
  const withPO4 = (g2 * g3) / g;
  const withHPO4 = (hydrogen * g2 * g2) / n;
  const withH2PO4 = dihydrogen * g2;
  const ca0 = k[K.calciumPhosphate]! * withPO4;
  const ca1 = k[K.calciumHydrogenPhosphate]! * withHPO4;
  const ca2 = k[K.calciumDihydrogenPhosphate]! * withH2PO4;
  const mg0 = k[K.magnesiumPhosphate]! * withPO4;
  const mg1 = k[K.magnesiumHydrogenPhosphate]! * withHPO4;
  const mg2 = k[K.magnesiumDihydrogenPhosphate]! * withH2PO4;
  const paired0 = ca0 * ca + mg0 * mg;
  const paired1 = ca1 * ca + mg1 * mg;
  const paired2 = ca2 * ca + mg2 * mg;
  const free = total / (1 + paired0 + hydrogen + paired1 + dihydrogen + paired2 + trihydrogen);

  const charge = (2 * (1 + paired0) + hydrogen + paired1 - trihydrogen) * free;
  pass[PASS.otherAlkalinity]! += charge;
  if (total > 0) {
    steer[STEER.slope]! +=
      (4 * (1 + paired0) + hydrogen + paired1 + trihydrogen) * free - (charge * charge) / total;
  }
  pass[PASS.calciumPhosphate] = (ca0 + ca1 + ca2) * free;
  pass[PASS.magnesiumPhosphate] = (mg0 + mg1 + mg2) * free;
  pass[PASS.phosphateStrength] = (9 + paired0 + 4 * hydrogen + dihydrogen + paired2) * free;
  m[SPECIES.phosphate] = free;
  m[SPECIES.hydrogenPhosphate] = hydrogen * free;
  m[SPECIES.dihydrogenPhosphate] = dihydrogen * free;
  m[SPECIES.trihydrogenPhosphate] = trihydrogen * free;
  m[SPECIES.calciumPhosphate] = ca0 * ca * free;
  m[SPECIES.calciumHydrogenPhosphate] = ca1 * ca * free;
  m[SPECIES.calciumDihydrogenPhosphate] = ca2 * ca * free;
  m[SPECIES.magnesiumPhosphate] = mg0 * mg * free;
  m[SPECIES.magnesiumHydrogenPhosphate] = mg1 * mg * free;
  m[SPECIES.magnesiumDihydrogenPhosphate] = mg2 * mg * free;
}
