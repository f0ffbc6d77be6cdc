import type { Library } from '@shoreglass/library';
import { library as bundled } from '@shoreglass/library';
import { problemLine } from './read/problem.ts';
import { type EnclosureDocument, readEnclosure } from './read/read-enclosure.ts';

/** The names of the enclosures that ship with the program. */
export function bundledEnclosures(library: Library = bundled): string[] {
  return Object.keys(library.data.enclosures);
}

/** A shipped enclosure as document. @throws UnknownEntry for a name that is not shipped. */
export function loadBundledEnclosure(
  id: string,
  library: Library = bundled,
): EnclosureDocument & { readonly text: string } {
  const text = library.enclosure(id);
  const { document, problems } = readEnclosure(text, `${id}.yaml`);
  if (!document) throw new Error(problems.map(problemLine).join('\n'));
  return { ...document, text };
}
