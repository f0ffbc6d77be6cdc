/** A name up to its first comma: 'gypsum' of 'gypsum, calcium sulfate dihydrate'. `derived`. */
export function shortName(name: string): string {
  return name.split(',')[0] ?? name;
}
