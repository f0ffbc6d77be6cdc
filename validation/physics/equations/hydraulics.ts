import {
  barbLoss,
  bedLoss,
  bedPermeability,
  belowFall,
  broadLipFlow,
  CARBON_DIOXIDE_SCHMIDT,
  carbonDioxideEfficiency,
  deficitRatioButts1983,
  deficitRatioNakasone1987,
  dutyAtSpeed,
  emptyingTime,
  fittingLoss,
  foamLoss,
  frictionColebrook1939,
  frictionFactor,
  frictionFullyRough,
  frictionHaaland1983,
  frictionLoss,
  frictionSwameeJain1976,
  GRAVITY,
  hydraulicConductivity,
  layerStorage,
  OXYGEN_SCHMIDT,
  operatingPoint,
  orificeFlow,
  type PipeRun,
  pipeLoss,
  pipeSpeed,
  pumpPower,
  reynoldsNumber,
  sandConductivityHazen1892,
  schmidtNumber,
  surfaceTransfer,
  weirFlowFrancis1883,
  weirFlowKindsvaterCarter1957,
  weirFlowRehbock1929,
} from '@shoreglass/engine';
import type { Calculation } from '../../harness/check.ts';
import type { Inputs } from '../../harness/inputs.ts';
import { figure, joined, whenAsked } from './asked.ts';

function readRun(inputs: Inputs): PipeRun {
  return {
    bore: inputs.number('D', 'm'),
    length: inputs.numberOr('L', 'm', 0),
    roughness: inputs.numberOr('roughness', 'm', 0),
    fittings: inputs.numberOr('K_minor', '1', 0),
    viscosity: inputs.number('nu', 'm2/s'),
  };
}

const pipe: Calculation = (inputs) => {
  const run = readRun(inputs);
  const flow = inputs.number('Q', 'm3/s');
  const speed = pipeSpeed(flow, run.bore);
  const reynolds = reynoldsNumber(speed, run.bore, run.viscosity);
  return {
    V: figure(speed, 'm/s'),
    Re: figure(reynolds, '1'),
    f: figure(frictionFactor(reynolds, run.roughness / run.bore), '1'),
    h_f: figure(frictionLoss(run, flow), 'm'),
    h_m: figure(fittingLoss(run.fittings, speed), 'm'),
    h_loss: figure(pipeLoss(run, flow), 'm'),
  };
};

const roughPipe: Calculation = (inputs) => {
  const run = readRun(inputs);
  const speed = pipeSpeed(inputs.number('Q', 'm3/s'), run.bore);
  const factor = frictionFullyRough(run.roughness / run.bore);
  return {
    V: figure(speed, 'm/s'),
    Re: figure(reynoldsNumber(speed, run.bore, run.viscosity), '1'),
    f_rough: figure(factor, '1'),
    h_f: figure((factor * run.length * speed * speed) / (run.bore * 2 * GRAVITY), 'm'),
  };
};

const factors: Calculation = (inputs) => {
  const reynolds = inputs.number('Re', '1');
  const roughness = inputs.numberOr('rel_roughness', '1', 0);
  return {
    f_colebrook: figure(frictionColebrook1939(reynolds, roughness), '1'),
    f_haaland: figure(frictionHaaland1983(reynolds, roughness), '1'),
    f_swamee_jain: figure(frictionSwameeJain1976(reynolds, roughness), '1'),
  };
};
const FACTORS = whenAsked(['f_colebrook', 'f_haaland', 'f_swamee_jain'], factors);
const PIPE = whenAsked(['V', 'Re', 'f', 'h_f', 'h_m', 'h_loss'], pipe);

const barb = whenAsked(['K', 'K_barb'], (inputs) => {
  const K = figure(barbLoss(inputs.number('d_barb', 'm') / inputs.number('D', 'm')), '1');
  return { K, K_barb: K };
});

const operation: Calculation = (inputs) => {
  const curve = {
    shutOffHead: inputs.number('H0', 'm'),
    freeFlow: inputs.number('Q0', 'm3/s'),
    exponent: inputs.numberOr('exponent', '1', 2),
  };
  const point = operatingPoint(curve, readRun(inputs), inputs.numberOr('static_head', 'm', 0));
  return { Q: figure(point.flow, 'm3/s'), H: figure(point.head, 'm') };
};

const affinity: Calculation = (inputs) => {
  const duty = {
    flow: inputs.number('Q1', 'm3/s'),
    head: inputs.number('H1', 'm'),
    power: inputs.numberOr('P1', 'W', 0),
  };
  const changed = dutyAtSpeed(duty, inputs.number('n2', '1/s') / inputs.number('n1', '1/s'));
  return { Q2: figure(changed.flow, 'm3/s'), H2: figure(changed.head, 'm'), P2: figure(changed.power, 'W') };
};

const power: Calculation = (inputs) => {
  const point = { flow: inputs.number('Q', 'm3/s'), head: inputs.number('H', 'm') };
  return {
    P: figure(pumpPower(point, inputs.numberOr('rho', 'kg/m3', 998.2), inputs.number('eta', '1')), 'W'),
  };
};

type Notch = (head: number, crestHeight: number, width: number) => number;
const notch = (flow: Notch): Calculation =>
  whenAsked(['Q'], (inputs) => ({
    Q: figure(flow(inputs.number('h1', 'm'), inputs.number('h2', 'm'), inputs.number('b', 'm')), 'm3/s'),
  }));

const crest: Calculation = (inputs) => {
  const head = inputs.number('H', 'm');
  if (inputs.has('b')) return { Q: figure(broadLipFlow(inputs.number('b', 'm'), head), 'm3/s') };
  return {
    Q: figure(weirFlowFrancis1883(inputs.number('L', 'm'), head, inputs.numberOr('n', '1', 0)), 'm3/s'),
  };
};

const holeArea = (inputs: Inputs): number => (Math.PI / 4) * inputs.number('d', 'm') ** 2;
const SHARP_EDGE = 0.62;

const orifice: Calculation = (inputs) => ({
  Q: figure(
    orificeFlow(holeArea(inputs), inputs.number('head', 'm'), inputs.numberOr('C_d', '1', SHARP_EDGE)),
    'm3/s',
  ),
});

const emptying: Calculation = (inputs) => ({
  t: figure(
    emptyingTime({
      tankArea: inputs.number('A_tank', 'm2'),
      holeArea: holeArea(inputs),
      startHead: inputs.number('h0', 'm'),
      endHead: inputs.numberOr('h1', 'm', 0),
      discharge: inputs.numberOr('C_d', '1', SHARP_EDGE),
    }),
    's',
  ),
});

/** Speed through a bed or block: stated, or flow by area. */
function readSeepage(inputs: Inputs) {
  const stated = ['v_s', 'v', 'V', 'V_air'].find((name) => inputs.has(name));
  const speed = stated ? inputs.number(stated, 'm/s') : inputs.number('Q', 'm3/s') / inputs.number('A', 'm2');
  return {
    speed,
    length: inputs.number('L', 'm'),
    density: inputs.number('rho', 'kg/m3'),
    viscosity: inputs.number('mu', 'Pa s'),
  };
}

const bed: Calculation = (inputs) => ({
  dp: figure(
    bedLoss(
      readSeepage(inputs),
      inputs.number(inputs.has('d_p') ? 'd_p' : 'd', 'm') * inputs.numberOr('phi', '1', 1),
      inputs.number('eps', '1'),
    ),
    'Pa',
  ),
});

const conductivity: Calculation = (inputs) => {
  const given = inputs.has('k');
  const permeability = given
    ? inputs.number('k', 'm2')
    : bedPermeability(inputs.number('d', 'm'), inputs.number('eps', '1'));
  const k = figure(permeability, 'm2');
  if (!inputs.has('mu')) return { k, k_si: k };
  const K = hydraulicConductivity(permeability, inputs.number('rho', 'kg/m3'), inputs.number('mu', 'Pa s'));
  return { k, k_si: k, K: figure(K, 'm/s') };
};
const CONDUCTIVITY = joined(
  whenAsked(['k', 'k_si'], conductivity),
  whenAsked(['K'], (inputs, wanted) =>
    inputs.has('d10')
      ? { K: figure(sandConductivityHazen1892(inputs.number('d10', 'm')), 'm/s') }
      : conductivity(inputs, wanted),
  ),
);

const foam: Calculation = (inputs) => ({
  dp: figure(foamLoss(readSeepage(inputs), inputs.number('K', 'm2'), inputs.number('f_inertial', '1')), 'Pa'),
});

function readFall(inputs: Inputs) {
  return {
    height: inputs.number(inputs.has('H') ? 'H' : 'h', 'm'),
    temperature: inputs.number(inputs.has('T') ? 'T' : 't', 'degC'),
    quality: inputs.number('a', '1'),
    edge: inputs.number('b', '1'),
  };
}

function fallFigures(inputs: Inputs, ratio: number) {
  const figures = { r: figure(ratio, '1'), E: figure(1 - 1 / ratio, '1') };
  if (!inputs.has('C_up')) return figures;
  const below = belowFall(inputs.number('C_up', 'g/m3'), inputs.number('C_sat', 'g/m3'), ratio);
  return { ...figures, C_down: figure(below, 'g/m3') };
}

const hybridFall: Calculation = (inputs) => {
  const flow = inputs.number('q', 'm2/h');
  return fallFigures(inputs, deficitRatioNakasone1987(readFall(inputs), flow, inputs.number('d', 'm')));
};

const surface: Calculation = (inputs) => {
  const t = inputs.number(inputs.has('T') ? 'T' : 't', 'degC');
  const oxygen = schmidtNumber(OXYGEN_SCHMIDT, t);
  const carbonDioxide = schmidtNumber(CARBON_DIOXIDE_SCHMIDT, t);
  const figures = { Sc_O2: figure(oxygen, '1'), Sc_CO2: figure(carbonDioxide, '1') };
  if (!inputs.has('k600')) return figures;
  const k600 = inputs.number('k600', 'm/day');
  const exponent = inputs.numberOr('n', '1', 0.5);
  const kOxygen = surfaceTransfer(k600, oxygen, exponent);
  const velocities = {
    k_O2: figure(kOxygen, 'm/day'),
    k_CO2: figure(surfaceTransfer(k600, carbonDioxide, exponent), 'm/day'),
  };
  if (!inputs.has('depth')) return { ...figures, ...velocities };
  return { ...figures, ...velocities, K2: figure(kOxygen / inputs.number('depth', 'm'), '1/day') };
};

export const HYDRAULICS: Readonly<Record<string, Calculation>> = {
  H1: PIPE,
  H2: PIPE,
  H2a: FACTORS,
  H2b: FACTORS,
  H2c: FACTORS,
  H2d: whenAsked(['V', 'Re', 'f_rough', 'h_f'], roughPipe),
  H3: joined(PIPE, barb),
  H4: whenAsked(['Q', 'H'], operation),
  H5: whenAsked(['Q', 'H'], operation),
  H6: whenAsked(['Q'], crest),
  H6b: notch(weirFlowKindsvaterCarter1957),
  H6c: notch(weirFlowRehbock1929),
  H7: whenAsked(['Q'], orifice),
  H7b: whenAsked(['t'], emptying),
  H8: whenAsked(['Q2', 'H2', 'P2'], affinity),
  H9: whenAsked(['P'], power),
  H10: whenAsked(['dp'], bed),
  H11: CONDUCTIVITY,
  H11b: CONDUCTIVITY,
  H12: whenAsked(['dp'], foam),
  H13: whenAsked(['r', 'E', 'C_down'], (inputs) =>
    fallFigures(inputs, deficitRatioButts1983(readFall(inputs))),
  ),
  H13b: whenAsked(['r', 'E', 'C_down'], hybridFall),
  H14: whenAsked(['Sc_CO2', 'Sc_O2', 'k_O2', 'k_CO2', 'K2'], surface),
  H15: whenAsked(['E_CO2'], (inputs) => {
    const t = inputs.number(inputs.has('T') ? 'T' : 't', 'degC');
    return { E_CO2: figure(carbonDioxideEfficiency(inputs.number('E_O2', '1'), t), '1') };
  }),
  H16: whenAsked(['V'], (inputs) => {
    const area = inputs.number('L', 'm') * inputs.number('W', 'm');
    return {
      V: figure(layerStorage(area, inputs.number('depth', 'm'), inputs.number('void_fraction', '1')), 'm3'),
    };
  }),
};
