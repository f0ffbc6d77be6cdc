import {
  breakageFactor,
  designStrengthEuropean,
  durationFactor,
  durationFactorEuropean,
  EDGE_STRENGTH,
  floorPressure,
  GLASS_MODULUS,
  jointBite,
  lastingStrength,
  leastThickness,
  netUplift,
  type PaneUnderWater,
  paneDeflection,
  paneLoad,
  paneMass,
  paneStress,
  plateCoefficients,
  plateDeflection,
  plateStress,
  SURFACE_STRENGTH,
  seamLoad,
  submergedWeight,
  waterPressure,
  waterPush,
} from '@shoreglass/engine';
import type { Calculation, Figure } from '../../harness/check.ts';
import type { Inputs } from '../../harness/inputs.ts';
import { figure, joined, whenAsked } from './asked.ts';

const WATER = 998.2;
const readDensity = (inputs: Inputs): number => inputs.numberOr('rho', 'kg/m3', WATER);

const hydrostatics: Calculation = joined(
  whenAsked(['p', 'p_base'], (inputs) => {
    const p = figure(waterPressure(inputs.number('depth', 'm'), readDensity(inputs)), 'Pa');
    return { p, p_base: p };
  }),
  whenAsked(['F', 'lever'], (inputs) => {
    const push = waterPush(inputs.number('L', 'm'), inputs.number('depth', 'm'), readDensity(inputs));
    return { F: figure(push.force, 'N'), lever: figure(push.height, 'm') };
  }),
);

const plate: Calculation = (inputs) => {
  const ratio = inputs.has('a_over_b')
    ? inputs.number('a_over_b', '1')
    : inputs.number('a', 'm') / inputs.number('b', 'm');
  const { stress, deflection } = plateCoefficients(ratio);
  const figures = { beta: figure(stress, '1'), alpha: figure(deflection, '1') };
  if (!inputs.has('t')) return figures;
  const pressure = inputs.has('q')
    ? inputs.number('q', 'Pa')
    : waterPressure(inputs.number('depth', 'm'), readDensity(inputs));
  const loaded = { pressure, shortSide: inputs.number('b', 'm'), thickness: inputs.number('t', 'm') };
  return {
    ...figures,
    sigma: figure(plateStress(loaded, stress), 'Pa'),
    y: figure(plateDeflection(loaded, deflection, inputs.numberOr('E', 'Pa', GLASS_MODULUS)), 'm'),
  };
};

function readPane(inputs: Inputs): PaneUnderWater {
  return {
    length: inputs.number('L', 'm'),
    height: inputs.number('H', 'm'),
    waterDepth: inputs.number('water_depth', 'm'),
    topEdge: inputs.textOr('top_edge', 'free').startsWith('free') ? 'free' : 'braced',
    density: readDensity(inputs),
  };
}

const pane: Calculation = (inputs) => {
  const held = readPane(inputs);
  const load = paneLoad(held);
  const figures: Record<string, Figure> = {
    p_base: figure(load.basePressure, 'Pa'),
    beta_H: figure(load.stressCoefficient, '1'),
    alpha_H: figure(load.deflectionCoefficient, '1'),
  };
  if (!inputs.has('t')) return figures;
  const thickness = inputs.number('t', 'm');
  return {
    ...figures,
    sigma_max: figure(paneStress(held, thickness), 'Pa'),
    deflection: figure(paneDeflection(held, thickness, inputs.numberOr('E', 'Pa', GLASS_MODULUS)), 'm'),
  };
};

const european: Calculation = joined(
  whenAsked(['k_mod'], (inputs) => ({ k_mod: figure(durationFactorEuropean(inputs.number('t', 's')), '1') })),
  whenAsked(['f_gd'], (inputs) => ({
    f_gd: figure(
      designStrengthEuropean({
        characteristic: inputs.number('f_gk', 'Pa'),
        edge: inputs.numberOr('k_e', '1', 1),
        duration: inputs.number('k_mod', '1'),
        surface: inputs.numberOr('k_sp', '1', 1),
        material: inputs.numberOr('gamma_MA', '1', 1.8),
      }),
      'Pa',
    ),
  })),
);

/** Duration factors, named after the durations ('k_10yr' for 10 years) in the order of the inputs. */
const durations: Calculation = (inputs, wanted) => {
  const times = inputs.names().filter((name) => /^t\d*$/.test(name));
  const names = [...wanted.keys()].filter((name) => name.startsWith('k_'));
  return Object.fromEntries(
    names.flatMap((name, i) => {
      const time = times[i];
      return time ? [[name, figure(durationFactor(inputs.number(time, 's')), '1')]] : [];
    }),
  );
};

const american: Calculation = joined(
  durations,
  whenAsked(['factor'], (inputs) => ({
    factor: figure(breakageFactor(inputs.number('Pb', '1'), inputs.numberOr('cov', '1', 0.22)), '1'),
  })),
  whenAsked(['allow_surface', 'allow_edge'], (inputs) => {
    const duration = inputs.number('duration', 's');
    const breakage = inputs.number('Pb', '1');
    const surface = inputs.numberOr('sigma_surface_3s', 'Pa', SURFACE_STRENGTH);
    const edge = inputs.numberOr('sigma_edge_3s', 'Pa', EDGE_STRENGTH);
    return {
      allow_surface: figure(lastingStrength(surface, duration, breakage), 'Pa'),
      allow_edge: figure(lastingStrength(edge, duration, breakage), 'Pa'),
    };
  }),
);

/** Everything that stands there: masses as given, and water by its volume. */
function totalMass(inputs: Inputs): number {
  const masses = inputs.names().filter((name) => name.startsWith('m_'));
  const stated = masses.reduce((sum, name) => sum + inputs.number(name, 'kg'), 0);
  return stated + inputs.numberOr('V_water', 'm3', 0) * WATER;
}

const masses: Calculation = joined(
  whenAsked(['m'], (inputs) => ({
    m: figure(paneMass(inputs.number('L', 'm') * inputs.number('H', 'm'), inputs.number('t', 'm')), 'kg'),
  })),
  whenAsked(['m_total'], (inputs) => ({ m_total: figure(totalMass(inputs), 'kg') })),
);

const floor: Calculation = joined(
  whenAsked(['pressure'], (inputs) => {
    const footprint = inputs.number('footprint_L', 'm') * inputs.number('footprint_W', 'm');
    const mass = inputs.has('m') ? inputs.number('m', 'kg') : totalMass(inputs);
    return { pressure: figure(floorPressure(mass, footprint), 'Pa') };
  }),
  // A floor's allowance told in SI: the value itself, the harness converts its unit.
  (inputs, wanted) =>
    Object.fromEntries(
      inputs
        .names()
        .filter((name) => wanted.has(`${name}_si`))
        .map((name) => [`${name}_si`, figure(inputs.number(name, 'Pa'), 'Pa')]),
    ),
);

const seams: Calculation = (inputs) => {
  const depth = inputs.number(inputs.has('d') ? 'd' : 'depth', 'm');
  const base = inputs.has('p0') ? inputs.number('p0', 'Pa') : waterPressure(depth, readDensity(inputs));
  const { bottom, top } = seamLoad(base, depth);
  return { bottom: figure(bottom, 'N/m'), top: figure(top, 'N/m') };
};

const buoyancy: Calculation = joined(
  whenAsked(['net_uplift'], (inputs) => ({
    net_uplift: figure(
      netUplift(
        inputs.number('V', 'm3'),
        inputs.number('rho_body', 'kg/m3'),
        inputs.numberOr('rho_water', 'kg/m3', WATER),
      ),
      'N',
    ),
  })),
  whenAsked(['submerged_weight'], (inputs) => ({
    submerged_weight: figure(
      submergedWeight(
        inputs.number('m', 'kg'),
        inputs.number('rho_s', 'kg/m3'),
        inputs.numberOr('rho_water', 'kg/m3', WATER),
      ),
      'N',
    ),
  })),
);

export const STRUCTURE: Readonly<Record<string, Calculation>> = {
  S1: hydrostatics,
  S2: whenAsked(['beta', 'alpha', 'sigma', 'y'], plate),
  S3: whenAsked(['p_base', 'beta_H', 'alpha_H', 'sigma_max', 'deflection'], pane),
  S4: whenAsked(['t_min'], (inputs) => ({
    t_min: figure(leastThickness(readPane(inputs), inputs.number('sigma_allow', 'Pa')), 'm'),
  })),
  S5: european,
  S6: american,
  S8: masses,
  S9: floor,
  S10: whenAsked(['bite'], (inputs) => ({
    bite: figure(
      jointBite(
        inputs.number('short_side', 'm'),
        inputs.number('pressure', 'Pa'),
        inputs.number('design_strength', 'Pa'),
      ),
      'm',
    ),
  })),
  S11: whenAsked(['bottom', 'top'], seams),
  S12: buoyancy,
};
