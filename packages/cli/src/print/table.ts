/** Rows of cells under each other, the first column to the left and the others to the right; no colour codes inside. */
export function table(rows: readonly (readonly string[])[], indent = '  ', gap = 2): string {
  const columns = Math.max(...rows.map((row) => row.length));
  const widths = Array.from({ length: columns }, (_, k) =>
    Math.max(...rows.map((row) => [...(row[k] ?? '')].length)),
  );
  const pad = (cell: string, k: number): string => {
    const blanks = ' '.repeat(Math.max(0, (widths[k] ?? 0) - [...cell].length));
    return k === 0 ? cell + blanks : blanks + cell;
  };
  return rows.map((row) => (indent + row.map(pad).join(' '.repeat(gap))).trimEnd()).join('\n');
}
