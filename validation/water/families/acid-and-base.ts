import {
  alkalinityOf,
  type CarbonSupply,
  MOLAR_MASS,
  nitrified,
  speciate,
  withHydrochloricAcid,
  withSodiumHydroxide,
} from '@shoreglass/engine';
import type { Calculation } from '../../harness/check.ts';
import type { Inputs } from '../../harness/inputs.ts';
import { type Composition, carryingAlkalinity, readAlkalinity, readTotals } from '../read-water.ts';
import { alkalinityFigure, figure } from '../water-figures.ts';

function nitrogenOf(dose: Inputs, name: string): number {
  if (dose.measures(name, 'mol/m3')) return dose.number(name, 'mol/m3');
  const unit = dose.measures(name, 'g N/m3') ? 'g N/m3' : 'g/m3';
  return dose.number(name, unit) / MOLAR_MASS.nitrogen;
}

function readDosed(start: Composition, dose: Inputs): Composition {
  let water = start;
  for (const name of dose.names()) {
    if (name === 'HCl') water = withHydrochloricAcid(water, dose.number(name, 'mol/m3'));
    else if (name === 'NaOH') water = withSodiumHydroxide(water, dose.number(name, 'mol/m3'));
    else if (name === 'N_oxidised') water = nitrified(water, nitrogenOf(dose, name));
    else throw new Error(`dose '${name}' is none of HCl, NaOH, N_oxidised`);
  }
  return water;
}

/** A water in balance with the gas, dosed, then with its carbon kept and with the gas again. */
export const acidAndBase: Calculation = (inputs) => {
  const temperature = inputs.number('temperature', 'degC');
  const totals = readTotals(inputs.groupOrEmpty('initial_totals'));
  const start = inputs.has('alkalinity_initial')
    ? carryingAlkalinity(totals, readAlkalinity(inputs, 'alkalinity_initial'))
    : totals;
  const open: CarbonSupply = { kind: 'open', pressure: inputs.number('pCO2', 'Pa') };
  const initial = speciate({ temperature, composition: start, carbon: open });
  const composition = readDosed(start, inputs.group('dose'));
  const { dissolvedInorganicCarbon } = initial;
  const closed = speciate({ temperature, composition, carbon: { kind: 'closed', dissolvedInorganicCarbon } });
  const afterOpen = speciate({ temperature, composition, carbon: open });
  const pressure = closed.carbonDioxidePressure / 101325;
  return {
    pH_initial: figure(initial.pH, '-'),
    DIC_initial: figure(dissolvedInorganicCarbon, 'mol/m3'),
    alkalinity_after: alkalinityFigure(alkalinityOf(composition)),
    pH_after_closed: figure(closed.pH, '-'),
    pCO2_after_closed: figure(pressure, 'atm'),
    log10_pCO2_after_closed: figure(Math.log10(pressure), 'log10(atm)'),
    pH_after_open: figure(afterOpen.pH, '-'),
    DIC_after_open: figure(afterOpen.dissolvedInorganicCarbon, 'mol/m3'),
  };
};
