import type { Plan } from '@shoreglass/engine';
import { library as bundled, type Library } from '@shoreglass/library';
import { checkEnclosure } from './check/check-enclosure.ts';
import type { Finding } from './check/finding.ts';
import { problemLine } from './read/problem.ts';
import { type EnclosureDocument, readEnclosure } from './read/read-enclosure.ts';

/** A shipped enclosure: its text, what it says, and its plan. */
export interface BundledEnclosure {
  readonly text: string;
  readonly document: EnclosureDocument;
  readonly plan: Plan;
  readonly findings: readonly Finding[];
}

/** The names of the enclosures that ship with the program. */
export function bundledEnclosures(library: Library = bundled): string[] {
  return Object.keys(library.data.enclosures);
}

/** A shipped enclosure. @throws UnknownEntry for a name that is not shipped. */
export function loadBundledEnclosure(id: string, library: Library = bundled): BundledEnclosure {
  const text = library.enclosure(id);
  const { document, problems } = readEnclosure(text, `${id}.yaml`);
  if (!document) throw new Error(problems.map(problemLine).join('\n'));
  const { plan, findings } = checkEnclosure(document, { library });
  if (!plan) throw new Error(findings.map(problemLine).join('\n'));
  return { text, document, plan, findings };
}
