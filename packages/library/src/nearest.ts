/** More edits than this are not counted. */
const MOST_EDITS = 8;

/** Edits (insert, delete, replace, swap neighbours) between two words, given up above `most`. */
export function editDistance(a: string, b: string, most = MOST_EDITS): number {
  if (Math.abs(a.length - b.length) > most) return most + 1;
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let best = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (last[j - 1] ?? 0) + same);
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      if (swapped) best = Math.min(best, (beforeLast[j - 2] ?? 0) + 1);
      row.push(best);
    }
    beforeLast = last;
    last = row;
  }
  return last[b.length] ?? 0;
}

const plain = (word: string): string => word.toLowerCase().replaceAll(/[\s_-]+/g, '');

/** Up to `count` known names close to a word, closest first: by edits, or because one holds the other. */
export function nearest(word: string, known: readonly string[], count = 3): string[] {
  const wanted = plain(word.slice(0, 80));
  return known
    .map((name) => {
      const candidate = plain(name);
      const holds = wanted.length > 2 && (candidate.includes(wanted) || wanted.includes(candidate));
      return { name, distance: holds ? 1 : editDistance(wanted, candidate) };
    })
    .filter(
      ({ name, distance }) =>
        distance <= Math.min(MOST_EDITS, Math.max(1, Math.ceil(plain(name).length * 0.4))),
    )
    .sort((a, b) => a.distance - b.distance || (a.name < b.name ? -1 : 1))
    .slice(0, count)
    .map(({ name }) => name);
}
