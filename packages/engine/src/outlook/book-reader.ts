import type { ReactionSystem } from '../process/compose.ts';
import { type BookShape, bookShape } from '../run/block-book.ts';
import { createWorld, STATE_COUNT } from '../run/world.ts';
import { expectedDraw, type PreparedOutlook } from './prepare.ts';

/** What is needed to read a member's book. */
export interface BookReader {
  readonly shape: BookShape;
  readonly system: ReactionSystem;
}

/** Returns the reader of all books of an outlook: reactions are the same in every member. `derived`. */
export function bookReader({ plan, setting }: PreparedOutlook): BookReader {
  const { system } = createWorld(setting, expectedDraw(plan));
  const { length } = plan.populations;
  return { system, shape: bookShape(system.reactions.length, STATE_COUNT, length, setting.stands.length) };
}
