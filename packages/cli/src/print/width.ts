const NARROWEST = 40;

/** Characters across of the terminal, or as COLUMNS says where there is none; undefined where neither tells. */
export function terminalWidth(): number | undefined {
  const said = Number(process.env.COLUMNS);
  const across = process.stdout.columns ?? (Number.isInteger(said) && said > 0 ? said : undefined);
  return across === undefined ? undefined : Math.max(NARROWEST, across);
}

/** Room for a drawing beside its figures: as much as it takes where nothing tells a width. */
export const roomWithin = (width: number): number =>
  terminalWidth() === undefined ? Number.POSITIVE_INFINITY : width;

/** Characters across that text may take: the terminal's, at most `widest`; `otherwise` where nothing tells. */
export function widthUpTo(widest: number, otherwise = 80): number {
  return Math.min(terminalWidth() ?? otherwise, widest);
}
