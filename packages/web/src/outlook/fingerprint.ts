import type { AheadDocument } from '@shoreglass/engine';

/**
 * Sixteen hexadecimal digits made of every bit of the expected run: two machines that show the same ones computed the
 * same year. Two lanes of FNV-1a over the bytes of all expected values, series by series.
 */
export function fingerprint({ series }: AheadDocument): string {
  let [first, second] = [0x811c9dc5, 0x01234567];
  for (const { expected } of Object.values(series)) {
    for (const byte of bytesOf(expected)) {
      first = Math.imul(first ^ byte, 0x01000193);
      second = Math.imul(second ^ byte, 0x01000193);
    }
  }
  return [first, second].map((lane) => (lane >>> 0).toString(16).padStart(8, '0')).join('');
}

/** Little-endian bytes of the numbers, whatever the machine's own order. */
function bytesOf(values: readonly number[]): Uint8Array {
  const view = new DataView(new ArrayBuffer(values.length * 8));
  for (const [index, value] of values.entries()) view.setFloat64(index * 8, value, true);
  return new Uint8Array(view.buffer);
}
