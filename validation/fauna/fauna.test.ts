import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { library } from '@shoreglass/library';
import { describe, expect, it } from 'vitest';
import { judgeFile } from '../harness/command.ts';
import { readDocument } from '../harness/read-document.ts';
import { faunaRearings } from '../kinds/fauna-rearings.ts';
import { familyOf, temperaturesIn } from './families.ts';

/** Cases that are known not to pass, each explained in SOURCE.md. */
const KNOWN: Readonly<Record<string, 'miss' | 'not built'>> = {
  'hyalella-young': 'miss',
  'folsomia-food-ratio': 'miss',
  'daphnia-low-food': 'miss',
  'moina-size-food': 'miss',
  'melanoides-first': 'miss',
  'melanoides-growth': 'miss',
  'gnat-r': 'miss',
  'neo-stream': 'miss',
};

const path = fileURLToPath(new URL('fauna-checks.json', import.meta.url));
const cases = JSON.parse(readFileSync(path, 'utf8')) as { id: string; taxonId: string }[];
/** Whether the library holds the species of a case. */
function isHeld(id: string): boolean {
  const found = cases.find((each) => each.id === id);
  return found !== undefined && Object.hasOwn(library.data.organisms, found.taxonId);
}

const verdicts = judgeFile(readDocument(path, [faunaRearings]));

describe('rearings against published figures', () => {
  it.each(verdicts.map(({ id, status }) => [id, status] as const))('%s', (id, status) => {
    expect(status).toBe(KNOWN[id] ?? (isHeld(id) ? 'pass' : 'not built'));
  });
});

describe('reading of cases', () => {
  it.each([
    ['22 C', [22]],
    ['20-22 C', [20, 22]],
    ['15 and 25 C', [15, 25]],
    ['23 C, started at age 7-9 d', [23]],
    ['constant temperature', []],
  ] as const)('%s', (conditions, temperatures) => {
    expect(temperaturesIn(conditions)).toEqual(temperatures);
  });

  it.each([
    ['egg development time', 'egg time'],
    ['incubation time', 'egg time'],
    ['egg time', 'egg time'],
    ['egg carrying time', 'egg time'],
    ['shell length at age', 'length at age'],
    ['shell diameter at age', 'length at age'],
    ['female wet mass at age', 'wet mass at age'],
    ['hatching to maturity', 'age at maturity'],
    ['age at first brood', 'age at first brood'],
    ['eggs per brood against female length', 'brood size'],
    ['survival of starved juveniles', 'survival without food'],
    ['survival', 'survival'],
    ['intrinsic rate of increase', 'growth rate of a population'],
    ['96 h median lethal copper', 'lethal copper'],
    ['colour of the shell', 'colour of the shell'],
  ])('%s is %s', (quantity, family) => {
    expect(familyOf(quantity)).toBe(family);
  });
});
