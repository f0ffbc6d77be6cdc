import type { JudgedFigure, Kind, Verdict } from './check.ts';

function shown(value: number | readonly number[] | null): string {
  if (value === null) return 'none';
  if (typeof value !== 'number') return value.map(shown).join(' ');
  return Number(value.toPrecision(6)).toString();
}

function tolerated(tolerance: number | readonly number[]): string {
  const list = typeof tolerance === 'number' ? [tolerance] : tolerance;
  const [low, high] = [Math.min(...list), Math.max(...list)].map((x) => Number(x.toPrecision(3)).toString());
  return low === high ? `${low}` : `${low} to ${high}`;
}

function figureLine(id: string, figure: JudgedFigure): string {
  const { name, value, expected, tolerance, unit, ok } = figure;
  const mark = ok ? 'pass' : value === null ? 'not built' : 'MISS';
  return `${mark.padEnd(9)} ${id.padEnd(8)} ${name.padEnd(24)} ${shown(value)}  expected ${shown(expected)} +- ${tolerated(tolerance)} ${unit}`;
}

/** The lines of one case: each figure with what was expected, why a miss is known, and the case's source. */
export function caseLines(verdict: Verdict, knownMiss?: string): string[] {
  const { id, family, status, figures, message, source } = verdict;
  const lines = figures.map((figure) => figureLine(id, figure));
  if (message !== undefined)
    lines.push(`${(status === 'miss' ? 'MISS' : status).padEnd(9)} ${id.padEnd(8)} [${family}] ${message}`);
  if (status === 'miss' && knownMiss !== undefined)
    lines.push(`          ${id.padEnd(8)} known: ${knownMiss}`);
  if (source !== '') lines.push(`          ${id.padEnd(8)} source: ${source}`);
  return lines;
}

export interface Count {
  readonly total: number;
  readonly passed: number;
  readonly failed: number;
  readonly notBuilt: number;
}

export function count(verdicts: readonly Verdict[]): Count {
  const of = (status: Verdict['status']): number =>
    verdicts.filter((verdict) => verdict.status === status).length;
  return { total: verdicts.length, passed: of('pass'), failed: of('miss'), notBuilt: of('not built') };
}

const sums = ({ total, passed, failed, notBuilt }: Count): string =>
  `${passed} of ${total} pass, ${failed} miss, ${notBuilt} not built`;

/** Totals by family of one file. */
export function familyLines(kind: Kind, verdicts: readonly Verdict[]): string[] {
  const families = [...new Set(verdicts.map(({ family }) => family))].sort((a, b) =>
    a.localeCompare(b, 'en', { numeric: true }),
  );
  return families.map((family) => {
    const title = `${family} ${kind.title(family)}`.trim();
    return `  ${title.padEnd(44)} ${sums(count(verdicts.filter((verdict) => verdict.family === family)))}`;
  });
}

export function totalLine(verdicts: readonly Verdict[]): string {
  return `${sums(count(verdicts))}, ${verdicts.reduce((n, { figures }) => n + figures.length, 0)} figures`;
}
