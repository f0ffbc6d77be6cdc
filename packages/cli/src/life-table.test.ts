import { lifeTableSchema } from '@shoreglass/contract';
import { expect, it } from 'vitest';
import { shoreglass } from './cli-test-kit.ts';

const SLOW = 60_000;

it(
  'life --animal tells the life table of one animal, in words and as a document',
  () => {
    const { status, stdout } = shoreglass('life', '--animal', 'physella-acuta', '--temperature', '77 °F');
    expect(status).toBe(0);
    expect(stdout).toContain('By itself with ample food at 25 °C: first young after');
    expect(stdout).toMatch(/numbers double in [\d.]+ days/);
    const { stdout: json } = shoreglass(
      'life',
      '--animal',
      'physella-acuta',
      '--temperature',
      '25',
      '--json',
    );
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
      [[], 'Give an enclosure file'],
    ] as const) {
      const { status, stderr } = shoreglass('life', ...args);
      expect(stderr).toContain(why);
      expect(status).toBe(2);
    }
  },
  SLOW,
);
