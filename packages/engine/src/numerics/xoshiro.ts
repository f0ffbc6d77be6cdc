// xoshiro128** 1.1 of Blackman & Vigna: state of four 32-bit words, period 2^128 - 1.

/** Steps the state in place and returns the next 32 random bits as a signed whole number. */
export function nextBits(s: Int32Array): number {
  const product = Math.imul(s[1]!, 5);
  const result = Math.imul((product << 7) | (product >>> 25), 9);
  const shifted = s[1]! << 9;
  const third = s[2]! ^ s[0]!;
  const fourth = s[3]! ^ s[1]!;
  s[1] = s[1]! ^ third;
  s[0] = s[0]! ^ fourth;
  s[2] = third ^ shifted;
  s[3] = (fourth << 11) | (fourth >>> 21);
  return result;
}

/** Mixes a 32-bit word so that every bit of it reaches every bit of the result (finaliser of MurmurHash3). */
function mixed(word: number): number {
  let h = word;
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return h ^ (h >>> 16);
}

/** A 128-bit key absorbs a text: every character enters all four words, in its place. */
function absorb(key: Int32Array, text: string): void {
  for (let i = 0; i < text.length; i += 1) {
    const code = text.charCodeAt(i);
    for (let w = 0; w < 4; w += 1) {
      key[w] = mixed(key[w]! ^ Math.imul(code + 1, 0x9e3779b1 + 2 * w)) + key[(w + 1) & 3]!;
    }
  }
  for (let round = 0; round < 2; round += 1) {
    for (let w = 0; w < 4; w += 1)
      key[w] = mixed(key[w]! + Math.imul(text.length + 1, 0x9e3779b9) + w) ^ key[(w + 1) & 3]!;
  }
}

/** The key of a seed, from its decimal text. */
export function keyOfSeed(seed: number): Int32Array {
  const key = Int32Array.of(0x243f6a88, 0x85a308d3, 0x13198a2e, 0x03707344); // first bits of pi
  absorb(key, seed.toString());
  return key;
}

/** The key of a named stream below another key; it does not depend on what was drawn from that one. */
export function keyOfStream(key: Int32Array, name: string): Int32Array {
  const child = key.slice();
  absorb(child, name);
  return child;
}

/** The start state of a key; never all zero, which would stay zero for ever. */
export function stateOfKey(key: Int32Array): Int32Array {
  const state = new Int32Array(4);
  for (let w = 0; w < 4; w += 1) state[w] = mixed(key[w]! + Math.imul(w + 1, 0x9e3779b9));
  if ((state[0]! | state[1]! | state[2]! | state[3]!) === 0) state[0] = 1;
  return state;
}
