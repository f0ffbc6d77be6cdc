/** Names in a sentence: 'a', 'a and b', 'a, b and c'; nothing for none. `derived`. */
export function nameList(names: readonly string[]): string {
  return names.length < 2
    ? (names[0] ?? '')
    : `${names.slice(0, -1).join(', ')} and ${names[names.length - 1]}`;
}
