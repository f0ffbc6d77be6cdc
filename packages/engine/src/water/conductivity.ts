import type { FreeIons } from './speciate.ts';

/** Fit of one ion's molal conductivity over temperature and ionic strength. */
interface IonConductivity {
  /** Infinite dilution: l2 t2 + l1 t + l0. */
  readonly limiting: readonly [l2: number, l1: number, l0: number];
  /** Falls with sqrt I: a2 t2 + a1 t + a0. */
  readonly falling: readonly [a2: number, a1: number, a0: number];
  readonly damping: number;
}

const ion = (
  limiting: IonConductivity['limiting'],
  falling: IonConductivity['falling'],
  damping: number,
): IonConductivity => ({ limiting, falling, damping });

/**
 * Molal ion conductivities, uS/cm per mmol/kg; t in degC.
 * @source mccleskey-2012, table of coefficients; minus signs memory; hydroxide's limiting part memory, its fall with
 *   ionic strength taken as zero (counts above pH 10 only)
 */
const IONS = {
  potassium: ion([0.003046, 1.261, 40.7], [0.00535, 0.9316, 22.59], 1.5),
  sodium: ion([0.003763, 0.877, 26.23], [0.00027, 1.141, 32.07], 1.7),
  ammonium: ion([0.003341, 1.285, 39.04], [0.00132, 0.607, 11.19], 0.3),
  calcium: ion([0.009645, 1.984, 62.28], [0.03174, 2.334, 132.3], 2.8),
  magnesium: ion([0.01068, 1.695, 57.16], [0.02453, 1.915, 80.5], 2.1),
  chloride: ion([0.003817, 1.337, 40.99], [0.00613, 0.9469, 22.01], 1.5),
  sulfate: ion([0.01037, 2.838, 82.37], [0.03324, 5.889, 193.5], 2.6),
  bicarbonate: ion([0.000614, 0.9048, 21.14], [-0.00503, 0.8957, 10.97], 0.1),
  carbonate: ion([-0.000326, 2.998, 64.03], [-0.00181, 5.542, 120.2], 2.3),
  nitrate: ion([0.001925, 1.214, 39.9], [-0.00118, 0.5045, 23.31], 0.1),
  hydrogen: ion([-0.01414, 5.355, 224.2], [-0.00918, 1.842, 39.26], 0.3),
  hydroxide: ion([0.003396, 2.925, 121.3], [0, 0, 0], 0),
} as const satisfies Partial<Record<keyof FreeIons, IonConductivity>>;

const ION_LIST = Object.entries(IONS).map(([key, ion]) => ({ key: key as keyof typeof IONS, ...ion }));

const polynomial = (c: readonly [number, number, number], t: number): number => (c[0] * t + c[1]) * t + c[2];

/**
 * Electrical conductivity of a water [uS/cm] at a temperature.
 * kappa = sum of lambda m; lambda = l(t) - a(t) sqrt I / (1 + B sqrt I)
 * @param free unpaired ions [mol/m3]; nitrite counts as nitrate; pairs, phosphate and organic anions carry little
 *   and are left out
 * @param ionicStrength [mol/kg]
 * @param temperature at which it is measured [degC], 5 to 90
 * @validity I < 1 mol/kg; 2 to 3 % in ordinary fresh waters, 5 to 10 % with much sulfate.
 * @source mccleskey-2012
 */
export function conductivityAt(free: FreeIons, ionicStrength: number, temperature: number): number {
  const root = Math.sqrt(ionicStrength);
  let sum = 0;
  for (const { key, limiting, falling, damping } of ION_LIST) {
    const molal =
      polynomial(limiting, temperature) - (polynomial(falling, temperature) * root) / (1 + damping * root);
    const amount = key === 'nitrate' ? free.nitrate + free.nitrite : free[key];
    sum += Math.max(0, molal) * amount;
  }
  return sum;
}

/**
 * Conductivity a meter shows at 25 degC from what it measured at another temperature [uS/cm].
 * EC25 = EC / (1 + 0.0191 (t - 25))
 * @param measured [uS/cm]
 * @param temperature [degC], 0 to 40
 * @source apha-2510, temperature compensation (memory)
 */
export function compensatedTo25(measured: number, temperature: number): number {
  return measured / (1 + 0.0191 * (temperature - 25));
}
