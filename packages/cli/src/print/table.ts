import { terminalWidth } from './width.ts';
import { across, wrapped } from './wrapped.ts';

type Rows = readonly (readonly string[])[];

interface Layout {
  /** Characters across; those of the terminal when left out, and as many as it takes where there is none. */
  readonly width?: number;
  /** Whether the first row names the columns. */
  readonly hasHead?: boolean;
}

const INDENT = '  ';

/**
 * Rows of cells under each other, the first column to the left and the others to the right; where they do not fit, each
 * row becomes a sentence of its own.
 */
export function table(rows: Rows, layout: Layout = {}): string {
  const { width = terminalWidth() ?? Number.POSITIVE_INFINITY, hasHead = false } = layout;
  const columns = Math.max(...rows.map((row) => row.length));
  const widths = Array.from({ length: columns }, (_, k) =>
    Math.max(...rows.map((row) => across(row[k] ?? ''))),
  );
  const needed = widths.reduce((sum, one) => sum + one + INDENT.length, 0);
  if (needed > width) return listed(rows, width, hasHead);
  const pad = (cell: string, k: number): string => {
    const blanks = ' '.repeat(Math.max(0, (widths[k] ?? 0) - across(cell)));
    return k === 0 ? cell + blanks : blanks + cell;
  };
  return rows.map((row) => (INDENT + row.map(pad).join(INDENT)).trimEnd()).join('\n');
}

/** The rows one by one: what a row is called, then each cell after the name of its column. */
function listed(rows: Rows, width: number, hasHead: boolean): string {
  const [head = [], ...below] = rows;
  const names = hasHead ? head : [];
  return (hasHead ? below : rows)
    .map(([title = '', ...cells]) => {
      const told = cells.flatMap((cell, k) =>
        cell === '' || cell === '-' ? [] : [`${names[k + 1] ?? ''} ${cell}`.trim()],
      );
      return wrapped(told.length > 0 ? `${title}: ${told.join(', ')}` : title, width, `${INDENT}  `, INDENT);
    })
    .join('\n');
}
