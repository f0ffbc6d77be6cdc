import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { countsDocumentSchema } from '@shoreglass/contract';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { shoreglass } from './cli-test-kit.ts';

const SLOW = 240_000;

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'counts-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

function file(text: string, name = 'mine.csv'): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

// Grizzly bears of Yellowstone, 1959 on (Dennis, Munholland & Scott 1991): years as days.
const BEARS = [
  44, 47, 46, 44, 46, 45, 46, 40, 39, 39, 42, 39, 41, 40, 33, 36, 34, 39, 35, 34, 38, 36, 37, 41, 39, 51,
];
const bears = (): string => file(BEARS.map((count, year) => `${year} ${count}`).join('\n'));

it(
  'life --counts tells growth and risk, in words and as a document',
  () => {
    const { status, stdout } = shoreglass('life', '--counts', bears(), '--below', '20', '--within', '30');
    expect(status).toBe(0);
    expect(stdout).toContain('mine.csv: 26 counts in 25 days');
    expect(stdout).toContain('Whether numbers grow or fall cannot be said');
    expect(stdout).toMatch(/Chance of falling to 20 within 30 days/);
    const { stdout: json } = shoreglass(
      'life',
      '--counts',
      bears(),
      '--below',
      '20',
      '--within',
      '30',
      '--json',
    );
    const answer = countsDocumentSchema.parse(JSON.parse(json));
    expect(answer.growth!.rate).toBeCloseTo(Math.log(51 / 44) / 25, 10);
    expect(answer.falling).toMatchObject({ from: 51, below: 20, days: 30 });
  },
  SLOW,
);

it(
  'life --counts sets them beside the species and beside the enclosure',
  () => {
    const counts = file('date,count\n2026-04-10,20\n2026-04-20,24\n2026-05-02,33\n2026-05-12,30');
    const { stdout, status } = shoreglass(
      ...['life', 'beck-bank', '--counts', counts, '--animal', 'hyalella-azteca', '--members', '4'],
    );
    expect(status).toBe(0);
    expect(stdout).toContain('nine runs in ten');
    expect(stdout).toMatch(/Of 4 counts [0-4] lies? where nine runs in ten do/);
    expect(stdout).toContain('By itself with ample food at');
  },
  SLOW,
);

it(
  'life --counts says what it cannot take',
  () => {
    for (const [args, why] of [
      [['--counts', join(folder, 'nowhere.csv')], 'There is no file'],
      [
        ['--counts', file('2026-03-01 12\n2026-03-02 many', 'bad.csv')],
        "bad.csv:2:1 has no number under 'count'",
      ],
      [['--counts', bears(), '--below', '0'], "'0' is no number of animals"],
      [['--counts', bears(), '--threshold', '10'], "no columns 'coldest' and 'warmest'"],
      [['--counts', bears(), '--temperature', '20'], 'goes with --animal'],
      [['--counts', bears(), '--pest', 'hyalella-azteca'], 'cannot go with --counts'],
      [['--counts', bears(), '--members', '5'], 'Give the file as well'],
      [['beck-bank', '--counts', bears()], 'Say with --animal'],
      [['beck-bank', '--counts', bears(), '--animal', 'physella-acuta'], 'does not live in this enclosure'],
      [['beck-bank', '--below', '3'], 'goes with --counts'],
    ] as const) {
      const { status, stderr } = shoreglass('life', ...args);
      expect(stderr).toContain(why);
      expect(status).toBe(2);
    }
  },
  SLOW,
);
