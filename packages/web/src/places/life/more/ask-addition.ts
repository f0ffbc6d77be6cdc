import {
  type AdditionEffect,
  type AdditionOptions,
  additionInquiry,
  type Inquiry,
  type Plan,
} from '@shoreglass/engine';
import { newcomerOf } from '../../../engine-client.ts';

/** Who is added, how many, where, and on which day of the run. */
export interface AdditionWish {
  readonly species: string;
  readonly adults: number;
  readonly zone: string;
  readonly day: number;
}

/** Asks what an addition changes; loaded only when the question is asked. */
export async function askAddition(
  plan: Plan,
  { species, adults, zone, day }: AdditionWish,
  options: AdditionOptions,
): Promise<Inquiry<AdditionEffect[]>> {
  const population = plan.populations.find(({ id }) => id === species) ?? (await newcomerOf(species, zone));
  return additionInquiry(plan, { population, adults, day }, options);
}
