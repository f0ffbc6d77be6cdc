import { flow, sink, source, type Transfer } from './transfer-system.ts';

export interface PositivityProblem {
  readonly transfers: readonly Transfer[];
  /** True when the rates read the time, as the state after the last. */
  readonly hasClock?: true;
}

/** Production and destruction problems by id; every flow is a reaction of its own with a single reactant. */
export const POSITIVITY_PROBLEMS: Readonly<Record<string, PositivityProblem>> = {
  linear: { transfers: [flow(0, 1, (y) => 5 * y[0]!), flow(1, 0, (y) => y[1]!)] },
  nonlinear: {
    transfers: [flow(0, 1, (y) => (y[0]! * y[1]!) / (y[0]! + 1)), flow(1, 2, (y) => 0.3 * y[1]!)],
  },
  robertson: {
    transfers: [
      flow(0, 1, (y) => 0.04 * y[0]!),
      flow(1, 0, (y) => 1e4 * y[1]! * y[2]!),
      flow(1, 2, (y) => 3e7 * y[1]! * y[1]!),
    ],
  },
  brusselator6: {
    transfers: [
      flow(1, 2, (y) => y[1]! * y[4]!),
      flow(4, 5, (y) => y[1]! * y[4]!),
      flow(4, 3, (y) => y[4]!),
      flow(0, 4, (y) => y[0]!),
      flow(5, 4, (y) => y[4]! * y[4]! * y[5]!),
    ],
  },
  npzd: {
    transfers: [
      flow(0, 1, (y) => (y[1]! * y[0]!) / (0.01 + y[0]!)),
      flow(1, 2, (y) => 0.5 * (1 - Math.exp(-1.21 * y[1]! * y[1]!)) * y[2]!),
      flow(1, 0, (y) => 0.01 * y[1]!),
      flow(2, 0, (y) => 0.01 * y[2]!),
      flow(3, 0, (y) => 0.003 * y[3]!),
      flow(1, 3, (y) => 0.05 * y[1]!),
      flow(2, 3, (y) => 0.02 * y[2]!),
    ],
  },
  'open-nitrogen-chain': {
    hasClock: true,
    transfers: [
      flow(0, 1, (y) => (1.2 * y[0]!) / (0.6 + y[0]!)),
      flow(1, 2, (y) => (0.9 * y[1]!) / (0.4 + y[1]!)),
      source(0, (y) => 0.5 + 0.3 * Math.sin((2 * Math.PI * y[3]!) / 10)),
      sink(2, (y) => 0.08 * y[2]!),
      source(3, () => 1),
    ],
  },
};
