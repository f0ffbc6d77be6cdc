import {
  beadLength,
  capillaryRise,
  capillaryRiseInGrains,
  curingTime,
  curingTimeByDiffusion,
  FOAM_YIELD,
  foamMass,
  foamVolume,
  heldWater,
  moistDensity,
  moisteningWater,
  poreRadiusOfRise,
} from '@shoreglass/engine';
import type { Calculation, Figure } from '../../harness/check.ts';
import type { Inputs } from '../../harness/inputs.ts';
import { figure, joined, whenAsked } from './asked.ts';

const WATER = 998.2;

function readSection(inputs: Inputs): number {
  if (inputs.has('leg')) return inputs.number('leg', 'm') ** 2 / 2;
  return inputs.number('w', 'm') * inputs.number('d', 'm');
}

const foam: Calculation = joined(
  whenAsked(['water'], (inputs) => ({
    water: figure(moisteningWater(inputs.number('cans', '1'), inputs.number('water_per_can', 'm3')), 'm3'),
  })),
  whenAsked(['V', 'volume', 'm', 'mass'], (inputs) => {
    const cans = inputs.number('can', 'm3') * inputs.numberOr('cans', '1', 1);
    const volume = foamVolume(cans, inputs.numberOr('yield', 'L/L', FOAM_YIELD));
    const [V, m] = [figure(volume, 'm3'), figure(foamMass(volume), 'kg')];
    return { V, volume: V, m, mass: m };
  }),
);

const held: Calculation = (inputs) => {
  const dry = inputs.has('m_dry')
    ? inputs.number('m_dry', 'kg')
    : inputs.number('V', 'm3') * inputs.number('bulk_density', 'kg/m3');
  const figures: Record<string, Figure> = { m_dry: figure(dry, 'kg') };
  const holdings = { WHC: 'm_water', factor: 'water', factor_low: 'water_low', factor_high: 'water_high' };
  for (const [input, output] of Object.entries(holdings)) {
    if (inputs.has(input)) figures[output] = figure(heldWater(dry, inputs.number(input, 'kg/kg')), 'kg');
  }
  return figures;
};

const media: Calculation = joined(
  whenAsked(['m_dry', 'm_water', 'water', 'water_low', 'water_high'], held),
  whenAsked(['wet_density'], (inputs) => ({
    wet_density: figure(
      moistDensity(inputs.number('dry_density', 'kg/m3'), inputs.number('water_retention', 'L/L'), WATER),
      'kg/m3',
    ),
  })),
  whenAsked(['total_porosity'], (inputs) => ({
    total_porosity: figure(
      inputs.number('water_retention', 'L/L') + inputs.number('air_filled_porosity', 'L/L'),
      'L/L',
    ),
  })),
  whenAsked(['rho_sat'], (inputs) => ({
    rho_sat: figure(
      moistDensity(
        inputs.number('rho_bulk_dry', 'kg/m3'),
        inputs.number('porosity', '1'),
        inputs.numberOr('rho_w', 'kg/m3', WATER),
      ),
      'kg/m3',
    ),
  })),
);

const capillarity: Calculation = joined(
  whenAsked(['r_effective'], (inputs) => ({
    r_effective: figure(
      poreRadiusOfRise(
        inputs.number('h_c', 'm'),
        inputs.number('sigma', 'N/m'),
        inputs.number('rho', 'kg/m3'),
      ),
      'm',
    ),
  })),
  whenAsked(['h', 'h_c'], (inputs) => {
    if (!inputs.has('r')) return {};
    const rise = capillaryRise(
      inputs.number('r', 'm'),
      inputs.number('sigma', 'N/m'),
      inputs.number('rho', 'kg/m3'),
    );
    return { h: figure(rise, 'm'), h_c: figure(rise, 'm') };
  }),
);

export const MATERIALS: Readonly<Record<string, Calculation>> = {
  T1: whenAsked(['t'], (inputs) => ({
    t: figure(curingTime(inputs.number('thickness', 'm'), inputs.number('rate', 'm/s')), 's'),
  })),
  T1b: whenAsked(['t'], (inputs) => ({
    t: figure(
      curingTimeByDiffusion(
        inputs.number('depth', 'm'),
        inputs.numberOr('depth_ref', 'm', 0.003),
        inputs.numberOr('t_ref', 's', 86400),
      ),
      's',
    ),
  })),
  T2: whenAsked(['L'], (inputs) => ({
    L: figure(beadLength(inputs.number('volume', 'm3'), readSection(inputs)), 'm'),
  })),
  T3: foam,
  T4: media,
  T5: capillarity,
  T5b: whenAsked(['h_c'], (inputs) => ({
    h_c: figure(capillaryRiseInGrains(inputs.number('n', '1'), inputs.number('d', 'm')), 'm'),
  })),
};
