import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { bundleText } from './bundle.ts';
import { readData } from './read-data.ts';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const target = join(root, 'src', 'generated', 'library.ts');

function present(): string | undefined {
  try {
    return readFileSync(target, 'utf8');
  } catch {
    return undefined;
  }
}

/** Checks the data and writes the bundle when it differs; run with tsx. */
try {
  const text = bundleText(readData(join(root, 'data')));
  if (text !== present()) {
    mkdirSync(dirname(target), { recursive: true });
    writeFileSync(target, text);
    console.log('library: bundle written');
  }
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
