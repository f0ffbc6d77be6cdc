import type { Kind } from './harness/check.ts';
import { demographyCases } from './kinds/demography-cases.ts';
import { faunaRearings } from './kinds/fauna-rearings.ts';
import { floraExperiments } from './kinds/flora-experiments.ts';
import { integratorCases } from './kinds/integrator-cases.ts';
import { physicsChecks } from './kinds/physics-checks.ts';
import { positivityChecks } from './kinds/positivity-checks.ts';
import { waterCases } from './kinds/water-cases.ts';

/** The forms of reference files that can be checked, tried in this order. */
export const KINDS: readonly Kind[] = [
  integratorCases,
  demographyCases,
  positivityChecks,
  faunaRearings,
  floraExperiments,
  waterCases,
  physicsChecks,
];

/** The reference files checked when none is named, relative to this folder; each has a SOURCE.md beside it. */
export const REFERENCES: readonly string[] = [
  'water/water-reference.json',
  'physics/physics-checks.json',
  'fauna/fauna-checks.json',
  'harm/harm-checks.json',
  'demography/demography.json',
  'flora/flora-checks.json',
  'integrators/integrators.json',
  'integrators/positivity-checks.json',
];
