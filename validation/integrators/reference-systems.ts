import { flow, sink, source, type Transfer } from './transfer-system.ts';

export type Parameters = Readonly<Record<string, number>>;

/** A reference system as reactions between its states. With `kinkEvery`, a clock is the state after the last. */
export interface ReferenceSystem {
  readonly title: string;
  readonly parameters: readonly string[];
  /** Longest step of the coarsest grid [time unit of the system]; with `growth`, at the start. */
  readonly step: number;
  /** Share of the time gone by that steps may grow with. */
  readonly growth?: number;
  /** Grids, each of half the steps of the one before. */
  readonly levels: number;
  /** Relative accuracy the scheme can show here, where it is less than the reference's digits; SOURCE.md says why. */
  readonly reach?: number;
  /** Length between moments at which a rate has a kink; steps end there [time unit of the system]. */
  readonly kinkEvery?: number;
  transfers(p: Parameters): readonly Transfer[];
}

const robertson: ReferenceSystem = {
  title: 'Robertson, three species over eleven decades of time',
  step: 1e-4,
  growth: 0.03,
  levels: 6,
  reach: 1e-3,
  parameters: ['k1', 'k2', 'k3'],
  transfers: ({ k1 = 0, k2 = 0, k3 = 0 }) => [
    flow(0, 1, (y) => k1 * y[0]!),
    flow(1, 0, (y) => k3 * y[1]! * y[2]!),
    flow(1, 2, (y) => k2 * y[1]! * y[1]!),
  ],
};

const brusselator: ReferenceSystem = {
  title: 'Brusselator, a limit cycle',
  step: 0.01,
  levels: 6,
  parameters: ['A', 'B'],
  transfers: ({ A = 0, B = 0 }) => [
    source(0, () => A),
    flow(1, 0, (y) => y[0]! * y[0]! * y[1]!),
    flow(0, 1, (y) => B * y[0]!),
    sink(0, (y) => y[0]!),
  ],
};

const hires: ReferenceSystem = {
  title: 'HIRES, eight species, stiff',
  step: 0.04,
  levels: 5,
  reach: 1e-5,
  parameters: [],
  transfers: () => [
    source(0, () => 0.0007),
    flow(0, 1, (y) => 1.71 * y[0]!),
    flow(1, 0, (y) => 0.43 * y[1]!),
    flow(1, 3, (y) => 8.32 * y[1]!),
    flow(2, 0, (y) => 8.32 * y[2]!),
    flow(2, 3, (y) => 1.71 * y[2]!),
    flow(3, 2, (y) => 0.43 * y[3]!),
    flow(3, 5, (y) => 0.69 * y[3]!),
    flow(4, 2, (y) => 0.035 * y[4]!),
    flow(4, 5, (y) => 1.71 * y[4]!),
    flow(5, 4, (y) => 0.43 * y[5]!),
    { moves: { 5: -1, 7: -1, 6: 1 }, rate: (y) => 280 * y[5]! * y[7]! },
    { moves: { 6: -1, 4: 1, 7: 1 }, rate: (y) => 0.43 * y[6]! },
    { moves: { 6: -1, 5: 1, 7: 1 }, rate: (y) => 0.69 * y[6]! },
    { moves: { 6: -1, 7: 1 }, rate: (y) => 0.69 * y[6]! },
  ],
};

const lotkaVolterra: ReferenceSystem = {
  title: 'Lotka and Volterra, prey and predator',
  step: 0.1,
  levels: 6,
  parameters: ['a', 'b', 'c', 'd'],
  transfers: ({ a = 0, b = 1, c = 0, d = 0 }) => [
    source(0, (y) => a * y[0]!),
    { moves: { 0: -1, 1: d / b }, rate: (y) => b * y[0]! * y[1]! },
    sink(1, (y) => c * y[1]!),
  ],
};

const streeterPhelps: ReferenceSystem = {
  title: 'Streeter and Phelps, oxygen deficit',
  step: 0.05,
  levels: 5,
  parameters: ['kd', 'ka'],
  transfers: ({ kd = 0, ka = 0 }) => [flow(0, 1, (y) => kd * y[0]!), sink(1, (y) => ka * y[1]!)],
};

const nitrification: ReferenceSystem = {
  title: 'two-step nitrification by growing biomass, with oxygen',
  step: 0.02,
  levels: 5,
  parameters: 'muA KA KOA YA bA muN KN KON YN bN load kLa O2sat'.split(' '),
  transfers: (p) => {
    const { muA = 0, KA = 0, KOA = 0, YA = 1, bA = 0, muN = 0, KN = 0 } = p;
    const { KON = 0, YN = 1, bN = 0, load = 0, kLa = 0, O2sat = 0 } = p;
    const [NH4, NO2, NO3, XA, XN, O2] = [0, 1, 2, 3, 4, 5] as const;
    const monod = (amount: number, half: number) => amount / (half + amount);
    return [
      source(NH4, () => load),
      {
        moves: { [NH4]: -1, [NO2]: 1, [O2]: -3.43, [XA]: YA },
        rate: (y) => ((muA * monod(y[NH4]!, KA) * monod(y[O2]!, KOA)) / YA) * y[XA]!,
      },
      {
        moves: { [NO2]: -1, [NO3]: 1, [O2]: -1.14, [XN]: YN },
        rate: (y) => ((muN * monod(y[NO2]!, KN) * monod(y[O2]!, KON)) / YN) * y[XN]!,
      },
      sink(XA, (y) => bA * y[XA]!),
      sink(XN, (y) => bN * y[XN]!),
      source(O2, () => kLa * O2sat),
      sink(O2, (y) => kLa * y[O2]!),
    ];
  },
};

const droopChemostat: ReferenceSystem = {
  title: 'Droop, algae with a nutrient quota in a chemostat',
  step: 0.004,
  levels: 6,
  reach: 1e-10,
  parameters: ['mum', 'Q0', 'vmax', 'K', 'D', 'Sin'],
  transfers: ({ mum = 0, Q0 = 0, vmax = 0, K = 0, D = 0, Sin = 0 }) => {
    const uptake = (y: Float64Array) => (vmax * y[0]!) / (K + y[0]!);
    return [
      source(0, () => D * Sin),
      sink(0, (y) => D * y[0]!),
      sink(0, (y) => uptake(y) * y[2]!),
      source(1, uptake),
      // mu Q = mum Q - mum Q0
      source(1, () => mum * Q0),
      sink(1, (y) => mum * y[1]!),
      source(2, (y) => mum * y[2]!),
      sink(2, (y) => (mum * Q0 * y[2]!) / y[1]!),
      sink(2, (y) => D * y[2]!),
    ];
  },
};

const npzdDiel: ReferenceSystem = {
  title: 'nutrient, algae, grazers and detritus under day and night',
  step: 0.025,
  levels: 6,
  parameters: ['mum', 'kN', 'kL', 'Lmax', 'mP', 'g', 'kP', 'gam', 'mZ', 'r'],
  kinkEvery: 0.25,
  transfers: (p) => {
    const { mum = 0, kN = 0, kL = 0, Lmax = 0, mP = 0, g = 0, kP = 0, gam = 0, mZ = 0, r = 0 } = p;
    const [N, P, Z, D, clock] = [0, 1, 2, 3, 4] as const;
    const light = (t: number) => Lmax * Math.max(0, Math.sin(2 * Math.PI * (t - 0.25)));
    const growth = (y: Float64Array) => {
      const L = light(y[clock]!);
      return ((mum * y[N]!) / (kN + y[N]!)) * (L / (kL + L)) * y[P]!;
    };
    const grazing = (y: Float64Array) => ((g * y[P]! ** 2) / (kP ** 2 + y[P]! ** 2)) * y[Z]!;
    return [
      source(clock, () => 1),
      flow(N, P, growth),
      flow(D, N, (y) => r * y[D]!),
      flow(P, D, (y) => mP * y[P]!),
      { moves: { [P]: -1, [Z]: gam, [D]: 1 - gam }, rate: grazing },
      flow(Z, D, (y) => mZ * y[Z]! ** 2),
    ];
  },
};

/** Systems by id. Those whose states change sign, as van der Pol and Lorenz, are no transfers between pools. */
export const REFERENCE_SYSTEMS: Readonly<Record<string, ReferenceSystem>> = {
  robertson,
  brusselator,
  hires,
  'lotka-volterra': lotkaVolterra,
  'streeter-phelps': streeterPhelps,
  nitrification,
  'droop-chemostat': droopChemostat,
  'npzd-diel': npzdDiel,
};
