// Hash of what a build is made from, so that unchanged sources are not built again.
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { ROOT } from './install.mjs';

const LEFT_OUT = new Set(['dist', 'node_modules', 'testdata']);

function* filesBelow(folder) {
  for (const entry of readdirSync(folder, { withFileTypes: true }).sort((a, b) =>
    a.name < b.name ? -1 : 1,
  )) {
    if (LEFT_OUT.has(entry.name)) continue;
    const path = join(folder, entry.name);
    if (entry.isDirectory()) yield* filesBelow(path);
    else if (!entry.name.includes('.test.')) yield path;
  }
}

/** Hash over the packages' sources, the lock and the build script itself. */
export function sourcesHash() {
  const hash = createHash('sha256').update(process.versions.node.split('.')[0]);
  const files = [
    ...filesBelow(join(ROOT, 'packages')),
    join(ROOT, 'package-lock.json'),
    join(ROOT, 'scripts/build.mjs'),
  ];
  for (const path of files)
    hash.update(relative(ROOT, path)).update('\0').update(readFileSync(path)).update('\0');
  return hash.digest('hex');
}
