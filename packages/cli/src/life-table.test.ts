import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { lifeTableSchema } from '@shoreglass/contract';
import { expect, it } from 'vitest';

const SLOW = 60_000;

function life(...args: string[]): { status: number | null; stdout: string; stderr: string } {
  const main = join(import.meta.dirname, 'main.ts');
  const { status, stdout, stderr } = spawnSync(process.execPath, ['--import', 'tsx', main, 'life', ...args], {
    encoding: 'utf8',
    env: { ...process.env, NO_COLOR: '1' },
  });
  return { status, stdout, stderr };
}

it(
  'life --animal tells the life table of one animal, in words and as a document',
  () => {
    const { status, stdout } = life('--animal', 'physella-acuta', '--temperature', '77 °F');
    expect(status).toBe(0);
    expect(stdout).toContain('By itself with ample food at 25 °C: first young after');
    expect(stdout).toMatch(/numbers double in [\d.]+ days/);
    const { stdout: json } = life('--animal', 'physella-acuta', '--temperature', '25', '--json');
    const table = lifeTableSchema.strict().parse(JSON.parse(json));
    expect(table.rows[0]).toMatchObject({ age: 0, alive: 1, young: 0 });
    // Of a pond snail by the hundred in its life: Physa acuta lays 30 to 50 eggs a week (common knowledge, no source).
    expect(table.renewal!.netReproduction).toBeGreaterThan(100);
  },
  SLOW,
);

it(
  'life --animal says what it cannot take',
  () => {
    for (const [args, why] of [
      [['--animal', 'hyalella'], 'holds no animal'],
      [['--animal', 'hyalella-azteca', '--temperature', '3 kg'], 'Write it like 24'],
      [['--animal', 'hyalella-azteca', '--temperature', '80'], 'not for 80 °C'],
      [['beck-bank', '--animal', 'hyalella-azteca'], 'not both'],
      [['beck-bank', '--temperature', '20'], 'goes with --animal'],
      [[], 'give an enclosure file'],
    ] as const) {
      const { status, stderr } = life(...args);
      expect(stderr).toContain(why);
      expect(status).toBe(2);
    }
  },
  SLOW,
);
