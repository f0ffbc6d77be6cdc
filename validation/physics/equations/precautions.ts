import {
  energyUsed,
  fumeConcentration,
  type Lift,
  liftingMultipliers,
  loadCurrent,
  longestTripTime,
  MOLAR_VOLUME,
  neededAirChanges,
  recommendedLift,
} from '@shoreglass/engine';
import type { Calculation } from '../../harness/check.ts';
import type { Inputs } from '../../harness/inputs.ts';
import { figure, joined, whenAsked } from './asked.ts';

function readLift(inputs: Inputs): Lift {
  return {
    reach: inputs.number('H', 'm'),
    startHeight: inputs.number('V', 'm'),
    travel: inputs.number('D', 'm'),
    twist: inputs.numberOr('A', 'rad', 0),
    frequency: inputs.numberOr('FM', '1', 1),
    grip: inputs.numberOr('CM', '1', 1),
  };
}

const lifting: Calculation = (inputs) => {
  const lift = readLift(inputs);
  const multipliers = liftingMultipliers(lift);
  const most = recommendedLift(lift);
  const figures = {
    HM: figure(multipliers.reach, '1'),
    VM: figure(multipliers.height, '1'),
    DM: figure(multipliers.travel, '1'),
    AM: figure(multipliers.twist, '1'),
    RWL: figure(most, 'kg'),
  };
  return inputs.has('load') ? { ...figures, LI: figure(inputs.number('load', 'kg') / most, '1') } : figures;
};

const load: Calculation = joined(
  whenAsked(['I'], (inputs) => ({
    I: figure(
      loadCurrent(inputs.number('P', 'W'), inputs.number('V', 'V'), inputs.numberOr('pf', '1', 1)),
      'A',
    ),
  })),
  whenAsked(['E', 'energy'], (inputs) => {
    const used = figure(
      energyUsed(inputs.number('P', 'W'), inputs.number(inputs.has('t') ? 't' : 'hours', 's')),
      'J',
    );
    return { E: used, energy: used };
  }),
);

/** Air changes against the fumes of a cartridge, or of a stated release. */
const ventilation: Calculation = (inputs) => {
  const release = inputs.has('G')
    ? inputs.number('G', 'kg/s')
    : (inputs.number('cartridge', 'm3') *
        inputs.number('sg', '1') *
        1000 *
        inputs.number('acetic_fraction', '1')) /
      inputs.number('release_time', 's');
  const changes = neededAirChanges(
    release,
    inputs.number('limit', 'kg/m3'),
    inputs.number('room_volume', 'm3'),
  );
  return { ACH_needed: figure(changes, '1/s'), ACH: figure(changes, '1/s') };
};

export const PRECAUTIONS: Readonly<Record<string, Calculation>> = {
  E1: whenAsked(['t_max'], (inputs) => ({ t_max: figure(longestTripTime(inputs.number('I', 'A')), 's') })),
  E2: load,
  E4: whenAsked(['HM', 'VM', 'DM', 'AM', 'RWL', 'LI'], lifting),
  E5: whenAsked(['C_mass'], (inputs) => ({
    C_mass: figure(
      fumeConcentration(
        inputs.number('C_ppm', '1'),
        inputs.number('M', 'kg/mol'),
        inputs.numberOr('V_m', 'm3/mol', MOLAR_VOLUME),
      ),
      'kg/m3',
    ),
  })),
  E6: whenAsked(['ACH_needed', 'ACH'], ventilation),
};
