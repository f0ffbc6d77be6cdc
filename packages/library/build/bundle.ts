import type { LibraryData } from '../src/schema/entries.ts';

/** The typed bundle as TypeScript text; the same data gives the same text. */
export function bundleText(data: LibraryData): string {
  return [
    '// Written by packages/library/build/build-library.ts from packages/library/data; edit the data, not this file.',
    "import type { LibraryData } from '../schema/entries.ts';",
    '',
    `export const LIBRARY_DATA: LibraryData = ${JSON.stringify(data, null, 1)};`,
    '',
  ].join('\n');
}
