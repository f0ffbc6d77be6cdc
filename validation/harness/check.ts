import type { Inputs } from './inputs.ts';

/** A computed figure: a number or a course of numbers, with its unit. */
export interface Figure {
  readonly value: number | readonly number[];
  readonly unit: string;
  /** The same told as something else, a mass instead of an amount; taken when the reference asks for that. */
  readonly also?: readonly Figure[];
}
export type Figures = Readonly<Record<string, Figure>>;

/** A reference value and how far from it still passes: max(absolute, relative |value|), element by element. */
export interface Expected extends Figure {
  readonly absolute: number;
  readonly relative: number;
}

/** One reference case, read. */
export interface Check {
  readonly id: string;
  /** Family or equation: what is computed. Never the case's id. */
  readonly key: string;
  readonly inputs: Inputs;
  readonly expected: ReadonlyMap<string, Expected>;
  readonly source: string;
}

/**
 * Computes figures by name from a case's inputs. It may return more than is wanted and less: a wanted figure that
 * is missing counts as not built. `wanted` is there for what a case states among its outputs, such as times.
 * @throws Error with a sentence on what is wrong with the inputs.
 */
export type Calculation = (inputs: Inputs, wanted: ReadonlyMap<string, Expected>) => Figures;

/** A form of reference file and who computes its cases. */
export interface Kind {
  /** Read in totals and errors: 'water', 'physics'. */
  readonly name: string;
  /** The raw cases of a document of this form; undefined when it has another form. */
  cases(document: unknown): readonly unknown[] | undefined;
  /** @throws Error with a sentence on what is wrong with the case. */
  read(raw: unknown): Check;
  /** Undefined when nothing computes this family or equation. */
  calculation(key: string): Calculation | undefined;
  /** Names of figures that only say where others hold, such as times, and are not judged. */
  readonly abscissae: ReadonlySet<string>;
  /** A family's or equation's title. */
  title(key: string): string;
}

export type Status = 'pass' | 'miss' | 'not built';

export interface JudgedFigure {
  readonly name: string;
  readonly value: number | readonly number[] | null;
  readonly expected: number | readonly number[];
  readonly tolerance: number | readonly number[];
  readonly unit: string;
  readonly ok: boolean;
}

export interface Verdict {
  readonly id: string;
  readonly family: string;
  readonly status: Status;
  readonly figures: readonly JudgedFigure[];
  readonly source: string;
  /** What is wrong with the case or its computation. */
  readonly message?: string;
  /** True when the case itself cannot be read. */
  readonly unreadable?: true;
}
