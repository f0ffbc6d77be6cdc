import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { type Called, shoreglass } from './cli-test-kit.ts';

const SLOW = 120_000;
const ANIMALS = join(import.meta.dirname, '../../library/data/organisms');
const folder = mkdtempSync(join(tmpdir(), 'shoreglass-entry-'));
afterAll(() => rmSync(folder, { recursive: true }));

const check = (...args: string[]): Called => shoreglass('check', ...args);

describe('check on a file of the library', () => {
  it(
    'tells how well the animal is known, which traits are ruled, and what its trial shows',
    () => {
      const path = join(ANIMALS, 'folsomia-candida.yaml');
      const [, block = ''] = /\ntraits:\n((?: .*\n)+)/.exec(readFileSync(path, 'utf8')) ?? [];
      const stated = block.match(/^ {2}\w+:/gm)?.length;
      const { status, stdout } = check(path);
      expect(status).toBe(0);
      expect(stdout).toMatch(/Known well:/);
      expect(stdout).toMatch(/traits from a rule/);
      expect(stdout).toContain(`${stated} traits from the file`);
      expect(stdout).toMatch(/first young on day/);
    },
    SLOW,
  );
  it(
    'names line and key of what is missing, and gives exit code 2',
    () => {
      const path = join(folder, 'folsomia-candida.yaml');
      const text = readFileSync(join(ANIMALS, 'folsomia-candida.yaml'), 'utf8');
      writeFileSync(path, text.replace(/ {2}lifespan: .*\n/, ''));
      const { status, stderr } = check(path);
      expect(status).toBe(2);
      expect(stderr).toMatch(/folsomia-candida\.yaml:\d+:\d+ lifeHistory\.lifespan is missing/);
    },
    SLOW,
  );
  it(
    '--json prints one document for a plant',
    () => {
      const { status, stdout } = check(join(ANIMALS, '../plants/lemna-minor.yaml'), '--json');
      expect(status).toBe(0);
      expect(JSON.parse(stdout)).toMatchObject({ kind: 'plants', page: { id: 'lemna-minor' } });
    },
    SLOW,
  );
});
