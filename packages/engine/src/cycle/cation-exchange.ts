import { exp10 } from '../numerics/elementary.ts';
import type { Process, Reaction, Setting } from '../process/contract.ts';
import { SECONDS_PER_DAY } from '../units/constants.ts';
import type { VariableId } from '../variables/variables.ts';
import { exchangeQuotient } from './exchange-equilibrium.ts';

export interface CationExchangeParameters {
  readonly grainRate: number;
  readonly bedVelocity: number;
  readonly looseFlow: number;
  readonly calciumHold: number;
  readonly magnesiumHold: number;
  readonly potassiumHold: number;
  readonly ammoniumHold: number;
}

interface Cation {
  readonly name: string;
  readonly dissolved: VariableId;
  readonly held: VariableId;
  readonly charge: 1 | 2;
  /** log10 of the hold over that on sodium. */
  readonly hold: (parameters: CationExchangeParameters) => number;
}

const CATIONS: readonly Cation[] = [
  {
    name: 'calcium',
    dissolved: 'calcium',
    held: 'exchangeableCalcium',
    charge: 2,
    hold: ({ calciumHold }) => calciumHold,
  },
  {
    name: 'magnesium',
    dissolved: 'magnesium',
    held: 'exchangeableMagnesium',
    charge: 2,
    hold: ({ magnesiumHold }) => magnesiumHold,
  },
  { name: 'sodium', dissolved: 'sodium', held: 'exchangeableSodium', charge: 1, hold: () => 0 },
  {
    name: 'potassium',
    dissolved: 'potassium',
    held: 'exchangeablePotassium',
    charge: 1,
    hold: ({ potassiumHold }) => potassiumHold,
  },
  {
    name: 'ammonium',
    dissolved: 'ammonium',
    held: 'exchangeableAmmonium',
    charge: 1,
    hold: ({ ammoniumHold }) => ammoniumHold,
  },
];

/** mol/m3 in mol/L. */
const PER_LITRE = 1e-3;
/** Where less than this part of the sites holds hydrogen ions, uptake of other cations dwindles with it. */
const LAST_SITES = 1e-3;

function reactionsOf({ name, dissolved, held, charge }: Cation): [Reaction, Reaction] {
  return [
    {
      name: `${name} bound by ground and moss`,
      stoichiometry: { [dissolved]: -1, exchangeableAcid: -charge, [held]: 1 },
    },
    {
      name: `${name} given up by ground and moss`,
      stoichiometry: { [held]: -1, [dissolved]: 1, exchangeableAcid: charge },
    },
  ];
}

/**
 * Exchange of cations against the hydrogen ions of substrate, peat and moss. Each cation moves toward what the water
 * leaves to the exchanger in balance, held_eq = beta_i S / z (Gaines-Thomas, see `exchangeFractions`; S: all sites):
 *   rate = kappa |held_eq - held|,  kappa = k G / (k w + G),  w = held_eq / c,
 * so that the grain (k) and the way of the water to it (G = velocity x bed + flow per site x loose sites) resist in
 * series. Hydrogen ions let go are the charge that leaves the water: alkalinity falls by what is bound.
 * @validity all exchangers together count as one of mean hold on hydrogen ions; dilute water; aluminium is left out
 * @source appelo-postma-2005 (equilibrium and constants), glueckauf-1955 (linear driving force)
 */
export const cationExchange: Process<CationExchangeParameters> = {
  id: 'cation-exchange',
  parameters: {
    grainRate: { unit: '1/d', min: 0.02, max: 100, meaning: 'exchange of a grain in ample water' },
    bedVelocity: {
      unit: 'cm/d',
      min: 0.05,
      max: 1000,
      meaning: 'water that a bed of substrate takes in, per area',
    },
    looseFlow: {
      unit: 'L/eq/d',
      min: 1,
      max: 1e5,
      meaning: 'water that reaches moss and peat lying loose, per site',
    },
    calciumHold: { unit: 'log10', min: -0.5, max: 2, meaning: 'hold on calcium over that on sodium' },
    magnesiumHold: { unit: 'log10', min: -0.5, max: 2, meaning: 'hold on magnesium over that on sodium' },
    potassiumHold: { unit: 'log10', min: -0.5, max: 2, meaning: 'hold on potassium over that on sodium' },
    ammoniumHold: { unit: 'log10', min: -0.5, max: 3, meaning: 'hold on ammonium over that on sodium' },
  },
  reads: [
    ...CATIONS.flatMap(({ dissolved, held }) => [dissolved, held]),
    'exchangeableAcid',
    'hydrogenActivity',
    'waterVolume',
    'exchangeArea',
    'looseExchanger',
    'exchangeAcidStrength',
  ],
  changes: [...CATIONS.flatMap(({ dissolved, held }) => [dissolved, held]), 'exchangeableAcid'],
  prepare(parameters, setting) {
    return { reactions: CATIONS.flatMap(reactionsOf), evaluate: evaluation(parameters, setting) };
  },
};

function evaluation(parameters: CationExchangeParameters, setting: Setting) {
  const count = CATIONS.length;
  const dissolved = Int32Array.from(CATIONS, (cation) => setting.index(cation.dissolved));
  const held = Int32Array.from(CATIONS, (cation) => setting.index(cation.held));
  const charge = Int32Array.from(CATIONS, (cation) => cation.charge);
  const hold = Float64Array.from(CATIONS, (cation) => exp10(cation.hold(parameters)) * PER_LITRE);
  const acidAt = setting.index('exchangeableAcid');
  const activityAt = setting.index('hydrogenActivity');
  const volumeAt = setting.index('waterVolume');
  const areaAt = setting.index('exchangeArea');
  const looseAt = setting.index('looseExchanger');
  const strengthAt = setting.index('exchangeAcidStrength');
  const k = parameters.grainRate / SECONDS_PER_DAY;
  const velocity = parameters.bedVelocity / 100 / SECONDS_PER_DAY;
  const perSite = (parameters.looseFlow * PER_LITRE) / SECONDS_PER_DAY;

  return (values: Float64Array, rates: Float64Array, offset: number): void => {
    const acid = values[acidAt]!;
    const volume = values[volumeAt]!;
    const flow = velocity * values[areaAt]! + perSite * values[looseAt]!;
    let sites = acid;
    for (let i = 0; i < count; i += 1) sites += charge[i]! * values[held[i]!]!;
    if (!(sites > 0 && volume > 0 && flow > 0)) {
      rates.fill(0, offset, offset + 2 * count);
      return;
    }
    let single = values[strengthAt]! * values[activityAt]!;
    let double = 0;
    for (let i = 0; i < count; i += 1) {
      const pull = (hold[i]! * values[dissolved[i]!]!) / volume;
      if (charge[i] === 2) double += pull;
      else single += pull;
    }
    const q = exchangeQuotient(single, double);
    const free = acid / (acid + LAST_SITES * sites);
    for (let i = 0; i < count; i += 1) {
      const amount = values[dissolved[i]!]!;
      // Held in balance, per concentration in the water [m3].
      const w = charge[i] === 2 ? 0.5 * hold[i]! * q * q * sites : hold[i]! * q * sites;
      const lacking = (w * amount) / volume - values[held[i]!]!;
      const kappa = (k * flow) / (k * w + flow);
      rates[offset + 2 * i] = lacking > 0 ? kappa * lacking * free : 0;
      rates[offset + 2 * i + 1] = lacking < 0 ? -kappa * lacking : 0;
    }
  };
}
