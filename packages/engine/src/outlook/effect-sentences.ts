import { capital } from './capital.ts';
import type { EffectCourse, EffectSeries } from './piece-effects.ts';

interface Wording {
  /** Least median effect worth a word, in the series' unit: what a keeper's test can tell. */
  readonly least: number;
  readonly digits: number;
  readonly unit: string;
  readonly up: string;
  readonly down: string;
}

/** @source assumed: half a drop of a drop test, the finest step of a pH chart, colour just seen against white */
const WORDING: Readonly<Record<EffectSeries, Wording>> = {
  KH: { least: 0.1, digits: 1, unit: '°dKH', up: 'adds', down: 'takes' },
  pH: { least: 0.05, digits: 2, unit: 'pH', up: 'raises pH by', down: 'lowers pH by' },
  dissolvedOrganicCarbon: {
    least: 0.3,
    digits: 1,
    unit: 'mg C/L',
    up: 'colours the water with',
    down: 'takes colour out of the water,',
  },
};

const ORDER: readonly EffectSeries[] = ['KH', 'pH', 'dissolvedOrganicCarbon'];

/** The interval in the direction of the effect, smaller size first; a member that goes the other way keeps its sign. */
function interval({ largest }: EffectCourse, digits: number): string {
  const sign = largest.q50 < 0 ? -1 : 1;
  const ends = [sign * largest.q05, sign * largest.q95].sort((a, b) => a - b);
  return ends.map((end) => end.toFixed(digits).replace('-', '−')).join(' to ');
}

function clause(course: EffectCourse): string {
  const { digits, unit, up, down } = WORDING[course.series];
  const { q50 } = course.largest;
  const amount = Math.abs(q50).toFixed(digits);
  const shownUnit = course.series === 'pH' ? '' : ` ${unit}`;
  const when = `most of it by day ${course.mostlyBy + 1}`;
  return `${q50 < 0 ? down : up} ${amount}${shownUnit} (${interval(course, digits)}; ${when})`;
}

function joined(parts: readonly string[]): string {
  return parts.length < 2 ? (parts[0] ?? '') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;
}

/**
 * One sentence on what a piece does, naming only what a keeper could measure; effects at their largest.
 * @source derived
 */
export function effectSentence(name: string, courses: readonly EffectCourse[]): string {
  const told = ORDER.flatMap((id) => {
    const course = courses.find(({ series }) => series === id);
    return course && Math.abs(course.largest.q50) >= WORDING[id].least ? [course] : [];
  });
  if (told.length === 0)
    return `${capital(name)}: nothing on pH, carbonate hardness or colour that a test at home would show.`;
  return `${capital(name)}: ${joined(told.map(clause))}.`;
}
