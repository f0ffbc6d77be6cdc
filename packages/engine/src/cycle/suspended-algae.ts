import type { Process } from '../process/contract.ts';
import { SECONDS_PER_DAY } from '../units/constants.ts';
import { COMPOSITIONS } from '../variables/compositions.ts';
import { lossToDetritus, producer } from './producer.ts';
import type { ProducerParameters } from './producer-group.ts';

export type SuspendedAlgaeParameters = Omit<Required<ProducerParameters>, 'fullStock'> & {
  readonly settlingVelocity: number;
  readonly washOff: number;
};

const growing = producer<SuspendedAlgaeParameters>({
  id: 'suspended-algae',
  name: 'suspended algae',
  pool: 'suspendedAlgae',
  composition: COMPOSITIONS.algae,
  kept: 'keptBySuspendedAlgae',
  light: 'lightOnSuspendedAlgae',
  parameters: {
    maximumGrowth: { unit: '1/d', min: 0.2, max: 5, meaning: 'highest growth at 20 degC' },
    growthTheta: { unit: '1', min: 1, max: 1.15, meaning: 'temperature factor of growth per degree' },
    heatLimit: { unit: '°C', min: 20, max: 45, meaning: 'temperature at which heat halves growth' },
    lightHalf: { unit: 'µmol/m²/s', min: 10, max: 300, meaning: 'light at half the highest growth' },
    nitrogenHalf: { unit: 'mg N/L', min: 0.001, max: 0.5, meaning: 'ammonium and nitrate at half the rate' },
    phosphorusHalf: {
      unit: 'mg P/L',
      min: 0.0002,
      max: 0.05,
      meaning: 'phosphate at half the highest growth',
    },
    carbonHalf: {
      unit: 'mmol/L',
      min: 0.001,
      max: 0.2,
      meaning: 'inorganic carbon at half the highest growth',
    },
    preferenceHalf: {
      unit: 'mg N/L',
      min: 0.005,
      max: 2,
      meaning: 'half-saturation of the choice of ammonium',
    },
    respirationRate: { unit: '1/d', min: 0.01, max: 0.5, meaning: 'respiration at 20 degC' },
    lossRate: { unit: '1/d', min: 0.005, max: 1, meaning: 'death, small grazers included, at 20 degC' },
    lossTheta: {
      unit: '1',
      min: 1,
      max: 1.15,
      meaning: 'temperature factor of respiration and loss per degree',
    },
    oxygenHalf: { unit: 'mg/L', min: 0.02, max: 2, meaning: 'oxygen at which respiration is halved' },
    settlingVelocity: { unit: 'm/d', min: 0, max: 1, meaning: 'velocity at which cells sink' },
    washOff: { unit: '1/d', min: 0, max: 0.1, meaning: 'attached algae washed into the water' },
  },
});

/**
 * Algae in the water itself (green water): grow and die as `producer` says, in the mean light of the water column that
 * they dim for themselves and for all others, and sink: settling = v / z B to detritus. Cells washed off the surfaces,
 * w B_attached, start them anew, so that a bloom needs no inoculum.
 * @validity the water is mixed through its depth; one kind of alga that sinks slowly; small grazers are in the loss
 * @source chapra-1997 (phytoplankton kinetics, settling as velocity over depth); `assumed`: the wash-off
 */
export const suspendedAlgae: Process<SuspendedAlgaeParameters> = {
  ...growing,
  reads: [...growing.reads, 'attachedAlgae', 'waterDepth'],
  changes: [...growing.changes, 'attachedAlgae'],
  prepare(parameters, setting) {
    const growth = growing.prepare(parameters, setting);
    const stock = setting.index('suspendedAlgae');
    const attached = setting.index('attachedAlgae');
    const depth = setting.index('waterDepth');
    const settling = parameters.settlingVelocity / SECONDS_PER_DAY;
    const washOff = parameters.washOff / SECONDS_PER_DAY;
    const next = growth.reactions.length;
    return {
      reactions: [
        ...growth.reactions,
        {
          name: 'settling of suspended algae',
          stoichiometry: lossToDetritus('suspendedAlgae', COMPOSITIONS.algae),
        },
        {
          name: 'algae washed off the surfaces',
          stoichiometry: { attachedAlgae: -1, suspendedAlgae: 1 },
        },
      ],
      evaluate(values, rates, offset) {
        growth.evaluate(values, rates, offset);
        const z = values[depth]!;
        rates[offset + next] = z > 0 ? (settling * values[stock]!) / z : 0;
        rates[offset + next + 1] = washOff * values[attached]!;
      },
    };
  },
};
