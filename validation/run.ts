import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { validate } from './harness/command.ts';
import knownMisses from './known-misses.json' with { type: 'json' };
import { KINDS, REFERENCES } from './registry.ts';

const here = dirname(fileURLToPath(import.meta.url));
process.exitCode = validate(process.argv.slice(2), {
  kinds: KINDS,
  references: REFERENCES.map((file) => join(here, file)),
  knownMisses: new Map(Object.entries(knownMisses).map(([file, reasons]) => [join(here, file), reasons])),
  folder: process.env.INIT_CWD ?? process.cwd(),
  out: (line) => console.log(line),
  error: (line) => console.error(line),
});
