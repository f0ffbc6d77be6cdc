import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { jsonSchemas } from './json-schemas.ts';

const folder = join(import.meta.dirname, '..', '..', '..', 'docs', 'schema');

describe('the schemas in docs/schema', () => {
  it.each(Object.entries(jsonSchemas()))('%s is current', (name, text) => {
    const kept = readFileSync(join(folder, name), 'utf8');
    expect(kept === text, 'run: npx tsx packages/contract/build/write-schemas.ts, and commit').toBe(true);
  });
  it('name every key of the enclosure file with a description', () => {
    const missing: string[] = [];
    const walk = (node: unknown, path: string): void => {
      if (node === null || typeof node !== 'object') return;
      const { properties, description } = node as {
        properties?: Record<string, unknown>;
        description?: string;
      };
      if (properties && description === undefined) missing.push(path);
      for (const [key, value] of Object.entries(node)) walk(value, `${path}/${key}`);
      for (const [key, value] of Object.entries(properties ?? {}))
        if (!(value as { description?: string }).description) missing.push(`${path}/${key}`);
    };
    walk(JSON.parse(jsonSchemas()['enclosure.schema.json'] ?? '{}'), '');
    expect(missing).toEqual([]);
  });
});
