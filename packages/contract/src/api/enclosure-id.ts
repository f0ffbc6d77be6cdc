/** Largest enclosure file that is read or kept [bytes of UTF-8]. */
export const MAX_ENCLOSURE_BYTES = 256 * 1024;

export const LONGEST_ENCLOSURE_ID = 64;
/** Lower-case words, digits and single hyphens: a file name on every system, and never a path. */
export const ENCLOSURE_ID = /^[a-z0-9]+(?:-[a-z0-9]+)*$/;

export function isEnclosureId(text: string): boolean {
  return text.length <= LONGEST_ENCLOSURE_ID && ENCLOSURE_ID.test(text);
}
