import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { library } from '@shoreglass/library';
import { expect, it } from 'vitest';
import { pageFiles } from '../../../library/build/page-text.ts';
import { aloneOf } from './life-alone.ts';

const DOCS = join(import.meta.dirname, '../../../../docs/library');

it('the pages of docs/library are made from the data', () => {
  const files = pageFiles(library.data, aloneOf);
  for (const [name, text] of files) {
    const path = join(DOCS, name);
    expect(existsSync(path) && readFileSync(path, 'utf8') === text, `${name}: run npm run build`).toBe(true);
  }
  const kept = readdirSync(DOCS, { recursive: true, encoding: 'utf8' }).filter((name) =>
    name.endsWith('.md'),
  );
  expect(kept).toHaveLength(files.size);
});
