import type { Figures } from '../harness/check.ts';

/** Named answers without units. */
export type Answers = Readonly<Record<string, number | readonly number[] | undefined>>;

/** As figures, those left undefined out. */
export function figuresOf(answers: Answers): Figures {
  return Object.fromEntries(
    Object.entries(answers).flatMap(([name, value]) =>
      value === undefined ? [] : [[name, { value, unit: '-' }]],
    ),
  );
}

/** A list of numbers as rows of a square. */
export function square(elements: readonly number[]): number[][] {
  const n = Math.round(Math.sqrt(elements.length));
  if (n * n !== elements.length) throw new Error(`${elements.length} elements are no square matrix`);
  return Array.from({ length: n }, (_, i) => elements.slice(i * n, (i + 1) * n));
}
