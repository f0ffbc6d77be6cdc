/** Parts of an entry that only its page shows. */
const PAGE_ONLY = new Set([
  'note',
  'known',
  'portions',
  'properties',
  'energy',
  'leached',
  'tissue',
  'calcium',
]);
/** Parts of an entry whose sources a finding or a conflict names. */
const SOURCED = new Set(['tolerances', 'leastFounders', 'space', 'risks']);
/** Parts where a word of the list above is data, not something for the page. */
const KEPT_WHOLE = new Set(['ions', 'exchange', 'enclosures', 'series']);

type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };

function slimmed(part: Json, isSourced: boolean): Json {
  if (Array.isArray(part)) return part.map((each: Json) => slimmed(each, isSourced));
  if (typeof part !== 'object' || part === null) return part;
  const kept = Object.entries(part as { readonly [key: string]: Json }).flatMap(
    ([key, inner]): [string, Json][] => {
      if (KEPT_WHOLE.has(key)) return [[key, inner]];
      if (PAGE_ONLY.has(key)) return [];
      if (key === 'source' && !isSourced) return [[key, '']];
      return [[key, slimmed(inner, isSourced || SOURCED.has(key))]];
    },
  );
  return Object.fromEntries(kept);
}

/**
 * The library's data without what only the pages of its entries show: notes, sources of values no sentence names, and
 * the like. Every number the engine takes stays.
 */
export function slimData<T>(data: T): T {
  return slimmed(data as Json, false) as T;
}

/** The generated bundle as JavaScript with slim data, parsed as JSON, which browsers read faster than code. */
export function slimBundle(code: string): string {
  const start = code.indexOf('= {') + 2;
  const end = code.lastIndexOf(';');
  const data = slimData(JSON.parse(code.slice(start, end)));
  return `export const LIBRARY_DATA = JSON.parse(${JSON.stringify(JSON.stringify(data))});\n`;
}
