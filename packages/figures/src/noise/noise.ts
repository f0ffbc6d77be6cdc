/** Repeatable irregularity for hand-drawn strokes: the same seed text always gives the same course. */
export type Noise = () => number;

/** Numbers in [0, 1) from a seed text (FNV-1a hash, then mulberry32). */
export function noiseFrom(seed: string): Noise {
  let state = hashText(seed);
  return () => {
    state = (state + STRIDE) | 0;
    return mixed(state);
  };
}

const STRIDE = 0x6d2b79f5;

/** One step of mulberry32: a number in [0, 1) from a 32-bit state. */
function mixed(state: number): number {
  let bits = Math.imul(state ^ (state >>> 15), 1 | state);
  bits = (bits + Math.imul(bits ^ (bits >>> 7), 61 | bits)) ^ bits;
  return ((bits ^ (bits >>> 14)) >>> 0) / 4294967296;
}

/** Smooth course around 0 within -1 to 1, one free value per unit of `position`, joined by cosine-like easing. */
export function wobbleFrom(seed: string): (position: number) => number {
  const start = hashText(seed);
  const valueAt = (knot: number) => mixed((start + Math.imul(knot + 1, STRIDE)) | 0) * 2 - 1;
  return (position) => {
    const knot = Math.floor(position);
    const t = position - knot;
    const ease = t * t * (3 - 2 * t);
    return valueAt(knot) * (1 - ease) + valueAt(knot + 1) * ease;
  };
}

function hashText(text: string): number {
  let hash = 0x811c9dc5;
  for (let index = 0; index < text.length; index++)
    hash = Math.imul(hash ^ text.charCodeAt(index), 0x01000193);
  return hash >>> 0;
}
