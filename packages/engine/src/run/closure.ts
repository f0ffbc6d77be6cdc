import type { ReactionSystem } from '../process/compose.ts';
import { ELEMENTS, type ElementId } from '../variables/elements.ts';
import { STATE_IDS, variableSpec } from '../variables/variables.ts';
import type { Book } from './book.ts';
import { CARE_TERMS } from './terms.ts';
import { STATE_COUNT, type World } from './world.ts';

/** Content of each element in each state, per unit of the state: `content[element][state]`. */
const CONTENT: Readonly<Record<ElementId, Float64Array>> = Object.fromEntries(
  ELEMENTS.map((element) => [
    element,
    Float64Array.from(STATE_IDS, (id) => variableSpec(id).content?.[element] ?? 0),
  ]),
) as Record<ElementId, Float64Array>;

/** Total of an element in all states [mol; charge: eq]. `derived`. */
export function totalOf(element: ElementId, values: Float64Array): number {
  const content = CONTENT[element];
  let total = 0;
  for (let i = 0; i < STATE_COUNT; i += 1) total += content[i]! * values[i]!;
  return total;
}

function sizeOf(element: ElementId, values: Float64Array): number {
  const content = CONTENT[element];
  let total = 0;
  for (let i = 0; i < STATE_COUNT; i += 1) total += Math.abs(content[i]! * values[i]!);
  return total;
}

/** What a unit of extent of each reaction brings in of what the states hold by `content`. */
function contentPerExtent(
  { start, index, coefficient }: ReactionSystem,
  content: Float64Array,
): Float64Array {
  const result = new Float64Array(start.length - 1);
  for (let r = 0; r < result.length; r += 1) {
    let net = 0;
    for (let e = start[r]!; e < start[r + 1]!; e += 1) net += coefficient[e]! * content[index[e]!]!;
    result[r] = net;
  }
  return result;
}

/** What reactions and care did over the whole run, summed from the blocks of a book. */
interface Moved {
  /** By reaction [extent]. */
  readonly extents: Float64Array;
  /** By state: net and gross amounts that care brought in [unit of the state]. */
  readonly care: Float64Array;
  readonly careGross: Float64Array;
}

function movedIn({ shape, rows }: Book): Moved {
  const extents = new Float64Array(shape.reactions);
  const care = new Float64Array(STATE_COUNT);
  const careGross = new Float64Array(STATE_COUNT);
  for (let row = 0; row < rows.length; row += shape.rowLength) {
    for (let r = 0; r < shape.reactions; r += 1) extents[r] = extents[r]! + rows[row + r]!;
    for (let k = 0; k < CARE_TERMS.length; k += 1) {
      const offset = row + shape.careOffset + k * STATE_COUNT;
      for (let i = 0; i < STATE_COUNT; i += 1) {
        const amount = rows[offset + i]!;
        care[i] = care[i]! + amount;
        careGross[i] = careGross[i]! + Math.abs(amount);
      }
    }
  }
  return { extents, care, careGross };
}

/**
 * Relative closure error of an element over a run: (end - start - booked net input) / (amount present + moved).
 * For charge this audits alkalinity: its change against what every reaction and care was booked for.
 * @source derived
 */
export type Closure = (element: ElementId) => number;

/** Returns the closure errors of a run from the states at its start, its book and the world at its end. `derived`. */
export function closureOf(start: Float64Array, book: Book, { system, values }: World): Closure {
  const { extents, care, careGross } = movedIn(book);
  return (element) => {
    const content = CONTENT[element];
    const perExtent = contentPerExtent(system, content);
    let net = 0;
    let gross = 0;
    for (let r = 0; r < extents.length; r += 1) {
      net += extents[r]! * perExtent[r]!;
      gross += extents[r]! * Math.abs(perExtent[r]!);
    }
    for (let i = 0; i < STATE_COUNT; i += 1) {
      net += care[i]! * content[i]!;
      gross += careGross[i]! * Math.abs(content[i]!);
    }
    const error = totalOf(element, values) - totalOf(element, start) - net;
    const scale = Math.max(sizeOf(element, start), sizeOf(element, values)) + gross;
    return scale > 0 ? error / scale : 0;
  };
}
