import type { KeyPath, Problem } from '../read/problem.ts';
import { pathText } from '../read/problem.ts';
import type { EnclosureDocument } from '../read/read-enclosure.ts';

/** blocking: no plan can be made of it; warning: it will probably go wrong; note: worth knowing. */
export type Severity = 'blocking' | 'warning' | 'note';

/** Something a file says that needs a look, with its place. */
export interface Finding extends Problem {
  readonly severity: Severity;
  readonly source?: string;
  /** Of whom it is told, as the message begins. */
  readonly name?: string;
}

/** A finding before its place in the text is known. */
export interface Remark {
  readonly severity: Severity;
  readonly path: KeyPath;
  /** What stands there, where the message does not say it. */
  readonly value?: string;
  readonly message: string;
  readonly mend: string;
  readonly source?: string;
  /** Of whom it is told, as the message begins. */
  readonly name?: string;
}

export function located(remark: Remark, document: Pick<EnclosureDocument, 'fileName' | 'placeOf'>): Finding {
  const { path, ...rest } = remark;
  return { ...rest, file: document.fileName, ...document.placeOf(path), path: pathText(path) };
}

const ORDER: Readonly<Record<Severity, number>> = { blocking: 0, warning: 1, note: 2 };

/** Worst first, then from top to bottom. */
export function byWeight(a: Finding, b: Finding): number {
  return ORDER[a.severity] - ORDER[b.severity] || a.line - b.line || a.column - b.column;
}
