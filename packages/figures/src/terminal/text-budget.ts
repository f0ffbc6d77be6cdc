import type { Budget, BudgetTerm } from '@shoreglass/engine';
import { gatheredBudget, type Stretch, termTotal } from '../budget/gathered.ts';

export interface TextBudgetOptions {
  readonly budget: Budget;
  /** Characters across. */
  readonly width: number;
  /** Periods told apart, of equal length as far as the budget's own allow. */
  readonly periods: number;
  /** Terms named one by one; the rest stands together. */
  readonly most: number;
  readonly ascii?: boolean;
}

/** Left-aligned blocks by eighths, for bars to the right; bars to the left come in halves. */
const EIGHTHS = ['', '▏', '▎', '▍', '▌', '▋', '▊', '▉'];
const NAME_SHARE = 0.3;
const LEAST_BAR = 4;

/** A bar of `length` characters from the middle outwards, each side `room` characters wide. */
function bar(length: number, room: number, ascii: boolean): string {
  const axis = ascii ? '|' : '│';
  if (ascii) {
    const marks = (length < 0 ? '-' : '+').repeat(Math.round(Math.abs(length)));
    return length < 0
      ? marks.padStart(room) + axis + ' '.repeat(room)
      : ' '.repeat(room) + axis + marks.padEnd(room);
  }
  if (length < 0) {
    const halves = Math.round(-length * 2);
    return (
      `${'▐'.repeat(halves % 2)}${'█'.repeat(Math.floor(halves / 2))}`.padStart(room) +
      axis +
      ' '.repeat(room)
    );
  }
  const eighths = Math.round(length * 8);
  const marks = '█'.repeat(Math.floor(eighths / 8)) + (EIGHTHS[eighths % 8] ?? '');
  return ' '.repeat(room) + axis + marks.padEnd(room);
}

/** Three figures, with a sign; nothing for what rounds to nothing. */
function signed(amount: number, ascii: boolean): string {
  const size = Math.abs(amount);
  const digits = size >= 100 ? 0 : size >= 10 ? 1 : 2;
  const text = size.toFixed(digits);
  if (Number(text) === 0) return '0';
  return `${amount > 0 ? '+' : ascii ? '-' : '−'}${text}`;
}

const dayRange = ({ from, to }: Stretch): string => (to - from <= 1 ? `${to}` : `${from + 1}-${to}`);

/**
 * A budget as lines of text: one a term, largest mover first, with a bar to the left for what it removes and to the
 * right for what it adds over the whole run, the amount in all, and the amounts by period, of which there are fewer where
 * the lines would get too wide.
 */
export function textBudget(options: TextBudgetOptions): string[] {
  const { budget, width, periods, most, ascii = false } = options;
  const days = budget.periods.at(-1)?.to ?? 0;
  const gathered = gatheredBudget(budget, { days: Math.ceil(days / periods), most });
  const columns = gathered.periods.map(dayRange);
  const numbers = (amounts: readonly number[]) => amounts.map((amount) => signed(amount, ascii));
  const cells = gathered.terms.map((term) => ({
    term,
    all: signed(termTotal(term), ascii),
    parts: numbers(term.amounts),
  }));
  const longest = (texts: readonly string[]): number => Math.max(0, ...texts.map((text) => text.length));
  const allWidth = longest(['in all', ...cells.map(({ all }) => all)]);
  const partWidth = longest([...columns, ...cells.flatMap(({ parts }) => parts)]);
  const nameWidth = Math.min(Math.floor(width * NAME_SHARE), longest(cells.map(({ term }) => term.term)));
  const rest = width - nameWidth - allWidth - (partWidth + 2) * columns.length - 5;
  if (rest < 2 * LEAST_BAR + 1 && periods > 1) return textBudget({ ...options, periods: periods - 1 });
  const room = Math.max(LEAST_BAR, Math.floor((rest - 1) / 2));
  const largest = Math.max(...gathered.terms.map((term) => Math.abs(termTotal(term))), Number.MIN_VALUE);
  const line = (name: string, middle: string, all: string, parts: readonly string[]): string =>
    `${cut(name, nameWidth).padEnd(nameWidth)} ${middle}  ${all.padStart(allWidth)}  ${parts.map((part) => part.padStart(partWidth)).join('  ')}`.trimEnd();
  const heading = `${'takes'.padStart(room)} ${'gives'.padEnd(room)}`;
  return [
    line('', heading, 'in all', columns),
    ...cells.map(({ term, all, parts }) =>
      line(term.term, bar(scaled(term, largest) * room, room, ascii), all, parts),
    ),
  ];
}

const scaled = (term: BudgetTerm, largest: number): number => termTotal(term) / largest;

const cut = (text: string, width: number): string =>
  text.length > width ? `${text.slice(0, width - 1)}.` : text;
