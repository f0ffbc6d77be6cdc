import {
  clearPaneTransmittance,
  dailyLightIntegral,
  discIlluminance,
  illuminanceOf,
  lightAtDepth,
  lightBehind,
  luxPerPhotonFlux,
  normalReflectance,
  opticalPower,
  PHOTONS_PER_KILOLUMEN,
  panelIlluminance,
  photonFluxDensity,
  pointIlluminance,
} from '@shoreglass/engine';
import type { Calculation } from '../../harness/check.ts';
import type { Inputs } from '../../harness/inputs.ts';
import { figure, joined, whenAsked } from './asked.ts';

const PER_KILOLUMEN = 'umol/s per 1000 lm';
const LUX_PER = 'lux per umol/m2/s';

/** The unit beside a factor is words ('lux per umol/m2/s'); the number is taken in it. */
const asWritten = (inputs: Inputs, name: string): number => inputs.number(name, inputs.unit(name) ?? '1');

const illuminant: Calculation = (inputs) => {
  const name = inputs.text('illuminant');
  if (!(name in PHOTONS_PER_KILOLUMEN)) throw new Error(`illuminant '${name}' is not known`);
  const photons = PHOTONS_PER_KILOLUMEN[name as keyof typeof PHOTONS_PER_KILOLUMEN];
  return {
    umol_per_klm: figure(photons, PER_KILOLUMEN),
    lux_per_umol: figure(luxPerPhotonFlux(photons), LUX_PER),
  };
};

const conversion: Calculation = joined(
  whenAsked(['umol_per_klm', 'lux_per_umol'], illuminant),
  whenAsked(['PPFD'], (inputs) => {
    if (!inputs.has('E_v')) return {};
    return {
      PPFD: figure(photonFluxDensity(inputs.number('E_v', 'lux'), asWritten(inputs, 'factor')), 'umol/m2/s'),
    };
  }),
  whenAsked(['E_v'], (inputs) => {
    if (!inputs.has('PPFD')) return {};
    return {
      E_v: figure(illuminanceOf(inputs.number('PPFD', 'umol/m2/s'), asWritten(inputs, 'factor')), 'lux'),
    };
  }),
);

function readPanel(inputs: Inputs): number {
  if (inputs.has('exitance')) {
    return discIlluminance(
      inputs.number('exitance', 'lm/m2'),
      inputs.number('r', 'm'),
      inputs.number('h', 'm'),
    );
  }
  const [a, b] = [inputs.number('a', 'm'), inputs.number('b', 'm')];
  return panelIlluminance(inputs.number('flux', 'lm'), a, b, inputs.number('h', 'm'));
}

const panel: Calculation = (inputs) => {
  const illuminance = readPanel(inputs);
  const E_v = figure(illuminance, 'lux');
  if (!inputs.has('umol_per_klm')) return { E_v };
  const factor = luxPerPhotonFlux(asWritten(inputs, 'umol_per_klm'));
  return { E_v, PPFD: figure(photonFluxDensity(illuminance, factor), 'umol/m2/s') };
};

const attenuation: Calculation = (inputs) => {
  const loss = inputs.numberOr('surface_loss', '1', 0);
  const light = inputs.number('PPFD_0', 'umol/m2/s');
  const left = lightAtDepth(light, loss, inputs.number('K_d', '1/m'), inputs.number('depth', 'm'));
  return { PPFD_z: figure(left, 'umol/m2/s') };
};

const reflection: Calculation = (inputs) => {
  const reflectance = normalReflectance(inputs.number('n1', '1'), inputs.number('n2', '1'));
  return { R: figure(reflectance, '1'), T: figure(clearPaneTransmittance(reflectance), '1') };
};

const covers: Calculation = (inputs) => {
  const parts = ['T_glass', 'mesh_open', 'dirt', 'T_dirt'].filter((name) => inputs.has(name));
  const light = lightBehind(
    inputs.number('PPFD', 'umol/m2/s'),
    parts.map((name) => inputs.number(name, '1')),
  );
  return { PPFD_out: figure(light, 'umol/m2/s') };
};

const heat: Calculation = (inputs) => {
  const power = inputs.number('P', 'W');
  const optical = opticalPower(power, asWritten(inputs, 'efficacy'), asWritten(inputs, 'LER'));
  return { P_optical: figure(optical, 'W'), P_heat: figure(power - optical, 'W') };
};

export const LIGHT: Readonly<Record<string, Calculation>> = {
  L1: conversion,
  L2: whenAsked(['E_v'], (inputs) => ({
    E_v: figure(
      pointIlluminance(inputs.number('I', 'cd'), inputs.number('d', 'm'), inputs.number('angle', 'rad')),
      'lux',
    ),
  })),
  L3: whenAsked(['E_v', 'PPFD'], panel),
  L4: whenAsked(['PPFD_z'], attenuation),
  L4b: whenAsked(['R', 'T'], reflection),
  L4c: whenAsked(['PPFD_out'], covers),
  L5: whenAsked(['DLI'], (inputs) => ({
    DLI: figure(
      dailyLightIntegral(inputs.number('PPFD', 'umol/m2/s'), inputs.number('hours', 'h')),
      'mol/m2/day',
    ),
  })),
  L6: whenAsked(['P_optical', 'P_heat'], heat),
};
