import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { pageFiles } from '../../library/build/page-text.ts';
import { readData } from '../../library/build/read-data.ts';
import { aloneOf } from '../src/index.ts';

const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..', '..');
const target = join(root, 'docs', 'library');

function present(path: string): string | undefined {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return undefined;
  }
}

/** Writes the pages of docs/library from the data and what the engine makes of animals alone, and takes away those whose entry is gone; run with tsx. */
try {
  const files = pageFiles(readData(join(root, 'packages', 'library', 'data')), aloneOf);
  let written = 0;
  for (const [name, text] of files) {
    const path = join(target, name);
    if (present(path) === text) continue;
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, text);
    written += 1;
  }
  for (const name of readdirSync(target, { recursive: true, encoding: 'utf8' })) {
    if (name.endsWith('.md') && !files.has(name.replaceAll('\\', '/'))) rmSync(join(target, name));
  }
  if (written > 0) console.log(`library: ${written} pages written of ${files.size}`);
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
