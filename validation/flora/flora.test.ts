import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { judgeFile } from '../harness/command.ts';
import { readDocument } from '../harness/read-document.ts';
import { floraExperiments } from '../kinds/flora-experiments.ts';
import knownMisses from '../known-misses.json' with { type: 'json' };
import { slopeOf, temperaturesIn } from './experiment.ts';
import { familyOf } from './families.ts';

const path = fileURLToPath(new URL('flora-checks.json', import.meta.url));
const verdicts = judgeFile(readDocument(path, [floraExperiments]));
const known: ReadonlySet<string> = new Set(Object.keys(knownMisses['flora/flora-checks.json']));

describe('experiments against published outcomes', () => {
  it('computes at least half of them', () => {
    const built = verdicts.filter(({ status }) => status !== 'not built');
    expect(built.length).toBeGreaterThanOrEqual(verdicts.length / 2);
  });

  it.each(
    verdicts.filter(({ status }) => status !== 'not built').map(({ id, status }) => [id, status] as const),
  )('%s', (id, status) => {
    expect(status).toBe(known.has(id) ? 'miss' : 'pass');
  });

  it('prints the published value, the range and the work beside each', () => {
    const start = verdicts.find(({ id }) => id === 'F11')!;
    expect(start.source).toMatch(/^13 d, accepted 9 to 20 \(page\) .*Appl\. Sci\. 2020/);
  });
});

describe('reading of cases', () => {
  it.each([
    ['solid feed residue in closed bottle, 20 C, first 6 h', [20]],
    ['Egeria najas, dark, 27 C and 17 C', [27, 17]],
    ['S. molesta at 25, 30, 35 C', [25, 30, 35]],
    ['lake sediment slurry 5 to 20 C', [5, 20]],
    ['moving bed after long exposure to 1 C; rate relative to 20 C', [1, 20]],
    ['constant temperature', []],
  ] as const)('%s', (text, temperatures) => {
    expect(temperaturesIn(text)).toEqual(temperatures);
  });

  it.each([
    ['duckweed growth', 'relative growth rate, dry mass', 'growth of duckweed'],
    ['duckweed warmth', 'growth of fronds at 15 C over that at 30 C', 'warmth for duckweed'],
    ['hornwort growth', 'greatest relative growth rate', 'growth of submerged plants in a lake'],
    ['duckweed crowding', 'dry mass at which growth stops', 'crowding of duckweed'],
    ['nitrification, cold', 'rate relative to 20 C', 'nitrification in the cold'],
    ['denitrification and temperature', 'activity ratio 20 C / 5 C', 'denitrification and temperature'],
    ['denitrification rate', 'littoral average', 'denitrification of lake sediment'],
    ['oxygen per N', 'oxygen used', 'alkalinity and oxygen for nitrification'],
    ['periphyton after 45 d', 'dry mass at day 45', 'stock of attached algae'],
    ['moss mat', 'cover after four months', 'cover of moss mats'],
    ['mould on wood', 'days to first mould visible to the eye', 'mould on bare wood'],
  ] as const)('%s: %s', (topic, quantity, family) => {
    expect(familyOf(topic, quantity)).toBe(family);
  });

  it('fits a line as by hand', () => {
    // (0,1), (1,3), (2,5): slope 2
    expect(
      slopeOf([
        [0, 1],
        [1, 3],
        [2, 5],
      ]),
    ).toBeCloseTo(2, 12);
  });
});
