import {
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { writeWhole } from './write-whole.ts';

const folder = mkdtempSync(join(tmpdir(), 'shoreglass-write-'));
afterAll(() => rmSync(folder, { recursive: true }));

it('replaces a file, through a link too, and leaves nothing beside it', () => {
  const path = join(folder, 'sheet.html');
  writeFileSync(path, 'before');
  symlinkSync(path, join(folder, 'link.html'));
  writeWhole(join(folder, 'link.html'), 'after');
  expect(readFileSync(path, 'utf8')).toBe('after');
  expect(readdirSync(folder).sort()).toEqual(['link.html', 'sheet.html']);
});

it('a file that cannot be written leaves what stood there', () => {
  const path = join(folder, 'kept.html');
  writeFileSync(path, 'before');
  // A folder in the place of the part is as good as a full disk, whoever runs this.
  mkdirSync(`${path}.${process.pid}.part`);
  expect(() => writeWhole(path, 'after')).toThrow();
  expect(readFileSync(path, 'utf8')).toBe('before');
});
