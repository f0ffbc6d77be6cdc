import {
  type BufferAnswer,
  type BufferQuestion,
  type Inquiry,
  type Plan,
  sizeBuffer,
} from '@shoreglass/engine';

/** Asks how much of which carbonate holds the band; loaded only when the question is asked. */
export function askBuffer(plan: Plan, question: BufferQuestion): Inquiry<BufferAnswer> {
  return sizeBuffer(plan, question);
}
