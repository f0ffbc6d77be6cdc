import { recall, remember } from '../../../app/kept.ts';

/** What this device keeps of an enclosure beside its file. */
const KEPT = ['recipe', 'readings'] as const;

/** Gives a copy what was laid out and read for the enclosure it was made of. */
export function carryOver(from: string, to: string): void {
  for (const what of KEPT) {
    const kept = recall(`${what}.${from}`);
    if (kept !== undefined && recall(`${what}.${to}`) === undefined) remember(`${what}.${to}`, kept);
  }
}
