import { sparkline } from '@shoreglass/figures';
import colours from 'picocolors';
import { across, wrapped } from './wrapped.ts';

/** A course as it is told: its name, its values day by day, from what to what, and how far the runs spread. */
export interface Course {
  readonly name: string;
  readonly values: readonly number[];
  readonly range: string;
  /** In brackets; nothing when left out. */
  readonly spread?: string;
}

interface Layout {
  readonly width: number;
  readonly indent?: string;
  /** Longest drawing [characters]. */
  readonly longest: number;
  readonly bold?: boolean;
}

/** Shortest drawing that is worth a place beside its figures [characters]. */
const SHORTEST = 16;

/** Courses under each other: name, drawing and figures on one line, or the drawing below them where that is too long. */
export function courseLines(courses: readonly Course[], layout: Layout): string[] {
  const { width, indent = '  ', longest, bold = false } = layout;
  const names = Math.max(0, ...courses.map(({ name }) => across(name)));
  const figures = Math.max(0, ...courses.map(({ range, spread = '' }) => across(`${range} ${spread}`)));
  const room = Math.min(longest, width - indent.length - names - figures - 2);
  const named = (name: string): string => (bold ? colours.bold(name) : name);
  return courses.map(({ name, values, range, spread = '' }) => {
    const dimmed = spread === '' ? '' : ` ${colours.dim(spread)}`;
    if (room >= SHORTEST)
      return `${indent}${named(name)}${' '.repeat(names - across(name))} ${sparkline(values, room)} ${range}${dimmed}`;
    const below = `${indent}  ${sparkline(values, Math.min(longest, width - indent.length - 2))}`;
    return `${wrapped(`${named(name)}: ${range}${dimmed}`, width, `${indent}  `, indent)}\n${below}`;
  });
}
