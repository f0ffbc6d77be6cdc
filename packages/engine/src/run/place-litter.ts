import { VARIABLE_INDEX as V } from '../variables/variables.ts';
import type { KindMix } from './kind-mix.ts';

/** Leaves to be put into the water [mol]. */
export interface PlacedLitter {
  readonly carbon: number;
  readonly nitrogen: number;
  readonly phosphorus: number;
  /** Soluble part that leaves within days, not contained in `carbon`. */
  readonly leachable: number;
  /** Breakdown over that of oak [1]. */
  readonly pace: number;
}

/** Fungi that come with fallen leaves, carbon over the leaves' [mol/mol]. @source assumed: a trace from air and ground */
const SPORES = 0.002;

/** Puts leaves and the trace of fungi on them into the water and renews the mean pace. `derived`. */
export function placeLitter(values: Float64Array, litter: PlacedLitter, kinds: KindMix): void {
  const add = (at: number, amount: number): void => {
    values[at] = values[at]! + amount;
  };
  add(V.litterCarbon, litter.carbon);
  add(V.litterNitrogen, litter.nitrogen);
  add(V.litterPhosphorus, litter.phosphorus);
  add(V.litterLeachable, litter.leachable);
  add(V.litterFungi, SPORES * litter.carbon);
  kinds.add(litter.carbon, litter.pace);
  values[V.litterPace] = kinds.pace();
}
