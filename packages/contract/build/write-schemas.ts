import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { jsonSchemas } from '../src/json-schemas.ts';

/** Rewrites docs/schema; run with tsx. */
const folder = join(dirname(fileURLToPath(import.meta.url)), '..', '..', '..', 'docs', 'schema');
mkdirSync(folder, { recursive: true });
for (const [name, text] of Object.entries(jsonSchemas())) writeFileSync(join(folder, name), text);
