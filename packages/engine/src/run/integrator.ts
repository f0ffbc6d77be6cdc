import { cbrt } from '../numerics/elementary.ts';
import type { ReactionSystem } from '../process/compose.ts';
import { formUpdate, type StageReference, startStage, sumUp } from './patankar-balance.ts';
import {
  type PatankarNetwork,
  type PatankarStage,
  patankarNetwork,
  patankarStage,
} from './patankar-network.ts';
import { policyWorkspace, solveTogether } from './patankar-policy.ts';
import { solveBySweeps } from './patankar-weights.ts';

export interface IntegratorOptions {
  /** Of the scheme: 3, or 2 at half the cost a step. */
  readonly order?: 2 | 3;
  /** Relative error allowed per step [1]. */
  readonly relativeTolerance?: number;
  /** Absolute error allowed per step [unit of the states]. */
  readonly absoluteTolerance?: number;
  /** Sub-steps of `advance` never go below this unless the duration does [s]. */
  readonly leastStep?: number;
  /** First sub-step tried [s]. */
  readonly firstStep?: number;
  /** Relative accuracy to which the weights are solved [1]; a tenth of the relative tolerance, at most 1e-3. */
  readonly weightTolerance?: number;
  /** Largest growth over half a step that is expected to go on in the other half [1]. */
  readonly mostGrowth?: number;
  /** Pools of which a step takes less than this share are left unweighted, 0 to 0.5 [1]. */
  readonly explicitShare?: number;
}

/** What an integrator did since it was made. */
export interface IntegratorCounters {
  steps: number;
  rejected: number;
  /** Evaluations of all rates. */
  evaluations: number;
  /** Steps accepted at the least step although their error was too large. */
  floorHits: number;
  /** Steps in which reactions had to be scaled down beyond their weights to keep a pool from going negative. */
  repairs: number;
  /** Stages whose weights were solved together, because sweeps did not settle. */
  jointSolutions: number;
  /** Stages whose weights were not solved to the tolerance even so; balance and sign hold all the same. */
  unsettled: number;
}

export interface Integrator {
  readonly counters: IntegratorCounters;
  /**
   * Advances the states by one step of h [s] in place, adds each reaction's extent to `extents`, and returns the
   * estimated error of the step relative to what the tolerances allow [1]. Derived values are left stale.
   */
  step(values: Float64Array, h: number, extents: Float64Array): number;
  /**
   * Advances the states by exactly `duration` [s] in as many steps as the tolerances ask for, and adds each reaction's
   * extent to `extents`. Derived values are left stale.
   */
  advance(values: Float64Array, duration: number, extents: Float64Array): void;
}

const DEFAULTS: Required<IntegratorOptions> = {
  order: 3,
  relativeTolerance: 1e-3,
  absoluteTolerance: 1e-9,
  leastStep: 1,
  firstStep: 300,
  weightTolerance: 1e-3,
  mostGrowth: 2,
  explicitShare: 0.5,
};

function checkOptions(options: Required<IntegratorOptions>): void {
  for (const [name, value] of Object.entries(options)) {
    const isAllowed = name === 'explicitShare' ? value >= 0 && value <= 0.5 : value > 0;
    if (!isAllowed || (name === 'order' && value !== 2 && value !== 3))
      throw new RangeError(`${name} = ${value}`);
  }
}

type Rates = Pick<ReactionSystem, 'start' | 'index' | 'coefficient' | 'evaluate'> & {
  readonly reactions: readonly { readonly process?: string; readonly name: string }[];
};

/**
 * Integrator of a reaction system: a modified Patankar-Runge-Kutta scheme of third or second order with one factor per
 * reaction. With R the rates, S the stoichiometry and phi_r the least y_i / sigma_i among the reactants of r, of order 3:
 *   y2      = y^n + h S (1/2 R(y^n) phi)                             sigma = y^n
 *   y3      = y^n + h S (3/4 R(y2) phi)                              sigma = y2^2 / y^n
 *   yp      = y^n + h S (R(y2) phi)                                  sigma = y2^2 / y^n
 *   y^{n+1} = y^n + h S ((2/9 R(y^n) + 1/3 R(y2) + 4/9 R(y3)) phi)   sigma = yp
 * Each is implicit in phi; yp, of second order, gives the error. Of order 2, with yp of first order:
 *   yp      = y^n + h S (R(y^n) phi)                                 sigma = y^n
 *   y^{n+1} = y^n + h S ((1/2 R(y^n) + 1/2 R(yp)) phi)               sigma = yp
 * Pools of which a stage takes no more than
 * `explicitShare` count with y_i / sigma_i = 1. Every linear invariant of S holds to rounding and every state
 * stays >= 0 at any h.
 * @param system reactions with rates >= 0 that vanish with each consumed pool
 * @param stateCount number of states at the head of the value array; what follows them is constant or derived
 * @param options tolerances and step bounds, all > 0
 * @throws RangeError when an option is out of range, a reaction changes something that is not a state, and, in use,
 *   when a rate is negative or not finite, a state is negative or not finite, or a step is not positive
 * @source kopecz-meister-2018-third, MPRK43I(1/2, 3/4), and kopecz-meister-2018, MPRK22(1) (the schemes for single
 *   reactants); broekhuizen-2008 and
 *   radtke-burchard-2015 (factors per reaction); docs/decisions/0002-integrator.md
 */
export function createIntegrator(
  system: Rates,
  stateCount: number,
  options: IntegratorOptions = {},
): Integrator {
  const relativeTolerance = options.relativeTolerance ?? DEFAULTS.relativeTolerance;
  const weightTolerance = Math.min(DEFAULTS.weightTolerance, 0.1 * relativeTolerance);
  return new PatankarIntegrator(system, stateCount, { ...DEFAULTS, weightTolerance, ...options });
}

class PatankarIntegrator implements Integrator {
  readonly counters: IntegratorCounters = {
    steps: 0,
    rejected: 0,
    evaluations: 0,
    floorHits: 0,
    repairs: 0,
    jointSolutions: 0,
    unsettled: 0,
  };
  private readonly system: Rates;
  private readonly stateCount: number;
  private readonly network: PatankarNetwork;
  private readonly options: Required<IntegratorOptions>;
  private readonly stage: PatankarStage;
  private readonly joint;
  /** Rates at the start, halfway and at three quarters of the step. */
  private readonly first: Float64Array;
  private readonly second: Float64Array;
  private readonly third: Float64Array;
  private readonly halfway: Float64Array;
  private readonly prediction: Float64Array;
  /** What the weights of the four solutions refer to: the start, what halfway points to, the prediction. */
  private readonly fromBegin: StageReference;
  private readonly fromHalfway: StageReference;
  private readonly fromPrediction: StageReference;
  private nextStep: number;

  constructor(system: Rates, stateCount: number, options: Required<IntegratorOptions>) {
    checkOptions(options);
    this.system = system;
    this.stateCount = stateCount;
    this.options = options;
    this.network = patankarNetwork(system, stateCount);
    const { poolCount, reactionCount } = this.network;
    this.stage = patankarStage(this.network);
    this.joint = policyWorkspace(this.network);
    this.first = new Float64Array(reactionCount);
    this.second = new Float64Array(reactionCount);
    this.third = new Float64Array(reactionCount);
    this.halfway = new Float64Array(poolCount);
    this.prediction = new Float64Array(poolCount);
    this.fromBegin = { contents: this.stage.begin, mostGrowth: 0 };
    this.fromHalfway = { contents: this.halfway, mostGrowth: options.mostGrowth };
    this.fromPrediction = { contents: this.prediction, mostGrowth: 0 };
    this.nextStep = options.firstStep;
  }

  step(values: Float64Array, h: number, extents: Float64Array): number {
    if (!(h > 0 && h < Number.POSITIVE_INFINITY)) throw new RangeError(`step of ${h} s`);
    this.check(values);
    this.begin(values);
    const error = this.attempt(values, h);
    this.accept(values, extents);
    return error;
  }

  advance(values: Float64Array, duration: number, extents: Float64Array): void {
    if (!(duration >= 0 && duration < Number.POSITIVE_INFINITY))
      throw new RangeError(`duration of ${duration} s`);
    this.check(values);
    let remaining = duration;
    while (remaining > 0) {
      this.begin(values);
      remaining -= this.acceptableStep(values, remaining, extents);
    }
  }

  /** Tries steps until one is accepted; returns its length [s]. */
  private acceptableStep(values: Float64Array, remaining: number, extents: Float64Array): number {
    const { leastStep } = this.options;
    for (;;) {
      const wanted = Math.max(this.nextStep, leastStep);
      const isLast = wanted >= remaining;
      const h = isLast ? remaining : Math.min(wanted, Math.max(remaining / 2, leastStep));
      const error = this.attempt(values, h);
      const growth = error > 0 ? 0.9 / this.rootOf(error) : 4;
      const isAtFloor = h <= leastStep;
      if (error <= 1 || isAtFloor) {
        if (error > 1) this.counters.floorHits += 1;
        const proposed = h * Math.min(4, Math.max(0.2, growth));
        this.nextStep = growth < 1 ? proposed : Math.max(wanted, proposed);
        this.accept(values, extents);
        return h;
      }
      this.counters.rejected += 1;
      this.nextStep = Math.max(h * Math.min(0.8, Math.max(0.1, growth)), leastStep);
    }
  }

  /** @throws RangeError when a state is negative or not finite. */
  private check(values: Float64Array): void {
    for (let state = 0; state < this.stateCount; state += 1) {
      const content = values[state]!;
      if (!(content >= 0 && content < Number.POSITIVE_INFINITY))
        throw new RangeError(`state ${state} is ${content}`);
    }
  }

  /** Remembers the state and evaluates its rates. */
  private begin(values: Float64Array): void {
    const { begin } = this.stage;
    const { pools } = this.network;
    for (let pool = 0; pool < begin.length; pool += 1) begin[pool] = values[pools[pool]!]!;
    this.evaluate(values, this.first);
  }

  private evaluate(values: Float64Array, rates: Float64Array): void {
    this.system.evaluate(values, rates);
    this.counters.evaluations += 1;
    for (let reaction = 0; reaction < rates.length; reaction += 1) {
      const rate = rates[reaction]!;
      if (rate >= 0 && rate < Number.POSITIVE_INFINITY) continue;
      const { process = '', name } = this.system.reactions[reaction]!;
      throw new RangeError(`rate of ${process} ${name} is ${rate}`);
    }
  }

  /** What a step's error shrinks as, when the step does. */
  private rootOf(error: number): number {
    return this.options.order === 2 ? Math.sqrt(error) : cbrt(error);
  }

  /** Computes a step of h into the workspace; `values` holds a stage afterwards. Returns the relative error. */
  private attempt(values: Float64Array, h: number): number {
    if (this.options.order === 2) this.proposeSecondOrder(values, h);
    else this.proposeThirdOrder(values, h);
    this.solve(this.fromPrediction);
    if (formUpdate(this.network, this.stage) > 0) this.counters.repairs += 1;
    return this.error();
  }

  /** Leaves the prediction yp in `prediction` and the step's unweighted extents in the stage. */
  private proposeSecondOrder(values: Float64Array, h: number): void {
    const { nominal } = this.stage;
    const { first, second, prediction } = this;
    this.propose(h, first);
    this.solveStage(this.fromBegin, prediction);
    this.evaluateAt(prediction, values, second);
    for (let r = 0; r < nominal.length; r += 1) nominal[r] = 0.5 * h * (first[r]! + second[r]!);
  }

  private proposeThirdOrder(values: Float64Array, h: number): void {
    const { nominal } = this.stage;
    const { first, second, third, halfway, prediction } = this;
    this.propose(0.5 * h, first);
    this.solveStage(this.fromBegin, halfway);
    this.evaluateAt(halfway, values, second);

    this.propose(0.75 * h, second);
    this.solveStage(this.fromHalfway, prediction);
    this.evaluateAt(prediction, values, third);

    this.propose(h, second);
    this.solveStage(this.fromHalfway, prediction);

    for (let r = 0; r < nominal.length; r += 1) {
      nominal[r] = h * ((2 / 9) * first[r]! + (1 / 3) * second[r]! + (4 / 9) * third[r]!);
    }
  }

  /** Sets the unweighted extents of a stage [extent]: rates over a duration [s]. */
  private propose(duration: number, rates: Float64Array): void {
    const { nominal } = this.stage;
    for (let r = 0; r < nominal.length; r += 1) nominal[r] = duration * rates[r]!;
  }

  private solve(reference: StageReference): void {
    const { network, stage, options } = this;
    stage.extent.set(stage.nominal);
    startStage(network, stage, options.explicitShare, reference);
    if (stage.weightedCount === 0) return;
    if (solveBySweeps(network, stage, options.weightTolerance)) return;
    this.counters.jointSolutions += 1;
    if (!solveTogether(network, stage, this.joint)) this.counters.unsettled += 1;
  }

  /** Solves a stage; the contents, of weighted pools from their weights and so > 0, go into `result`. */
  private solveStage(from: StageReference, result: Float64Array): void {
    this.solve(from);
    const { reference, weight, weighted, weightedCount } = this.stage;
    const { drawn } = this.network;
    sumUp(this.network, this.stage, result);
    for (let k = 0; k < weightedCount; k += 1) {
      const pool = drawn[weighted[k]!]!;
      result[pool] = weight[pool]! * reference[pool]!;
    }
  }

  private evaluateAt(contents: Float64Array, values: Float64Array, rates: Float64Array): void {
    const { pools } = this.network;
    for (let pool = 0; pool < contents.length; pool += 1) values[pools[pool]!] = contents[pool]!;
    this.evaluate(values, rates);
  }

  private error(): number {
    const { relativeTolerance, absoluteTolerance } = this.options;
    const { begin, content } = this.stage;
    let largest = 0;
    for (let pool = 0; pool < begin.length; pool += 1) {
      const allowed = absoluteTolerance + relativeTolerance * Math.max(content[pool]!, begin[pool]!);
      const difference = Math.abs(content[pool]! - this.prediction[pool]!);
      if (difference > largest * allowed) largest = difference / allowed;
    }
    return largest;
  }

  private accept(values: Float64Array, extents: Float64Array): void {
    const { extent, content } = this.stage;
    const { pools } = this.network;
    for (let pool = 0; pool < content.length; pool += 1) values[pools[pool]!] = content[pool]!;
    for (let reaction = 0; reaction < extent.length; reaction += 1) {
      extents[reaction] = extents[reaction]! + extent[reaction]!;
    }
    this.counters.steps += 1;
  }
}
