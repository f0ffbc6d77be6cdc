import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { library } from '@shoreglass/library';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LONGEST_FILE } from './parse-yaml.ts';
import { pathText, problemLine, valueText } from './problem.ts';
import { idOf, readEnclosure } from './read-enclosure.ts';

const folder = join(import.meta.dirname, '..', '..', 'testdata');
const read = (name: string) => readEnclosure(readFileSync(join(folder, name), 'utf8'), name);

/** [line, column, path, part of message, part of mend] as counted in the file by eye. */
type Expected = readonly [number, number, string, string, string];

const BROKEN: readonly (readonly [string, readonly Expected[]])[] = [
  [
    'misspelt-keys.yaml',
    [
      [5, 1, 'glass.length', 'is missing', '90 cm'],
      [5, 10, 'glass.lenght', 'not known', "'length'"],
      [9, 11, 'zones[0].kind', 'not one of the words', "'pool'"],
      [24, 1, 'routine', 'not known', "'routines'"],
    ],
  ],
  [
    'units-left-out.yaml',
    [
      [5, 47, 'glass.height', "'fathoms'", 'cm'],
      [16, 10, 'water.level', 'has no unit', 'cm'],
      [20, 24, 'room.temperature.mean', 'cm does not measure temperature', '°C'],
      [21, 21, 'room.humidity.mean', 'has no unit', '%'],
    ],
  ],
  [
    'out-of-range.yaml',
    [
      [4, 8, 'start', 'not a date', '2026-03-01'],
      [5, 18, 'glass.length', 'outside 10 cm to 5 m', '90 cm'],
      [6, 16, 'cover.open', 'outside 0 % to 100 %', '8 %'],
      [23, 53, 'animals[0].adults', 'whole number', 'without unit'],
    ],
  ],
  ['keys-twice.yaml', [[26, 1, '', "'room' stands twice", 'one of them']]],
];

describe('readEnclosure', () => {
  it('reads a small file into the plan’s units', () => {
    const { document } = read('small-and-sound.yaml');
    expect(document?.id).toBe('small-and-sound');
    expect(document?.content.glass.length).toBeCloseTo(0.6, 12);
    expect(document?.content.room.temperature?.mean).toBe(20);
    expect(document?.content.cover.open).toBeCloseTo(0.1, 12);
    expect(document?.content.animals?.[0]?.after).toBe(30);
    expect(document?.placeOf(['water', 'level'])).toEqual({ line: 16, column: 3 });
  });

  it.each(BROKEN)('tells every problem of %s with its place', (name, expected) => {
    const { problems = [] } = read(name);
    expect(problems.map(({ line, column, path }) => [line, column, path])).toEqual(
      expected.map(([line, column, path]) => [line, column, path]),
    );
    for (const [index, [, , , message, mend]] of expected.entries()) {
      expect(problems[index]?.message).toContain(message);
      expect(problems[index]?.mend).toContain(mend);
      expect(problems[index]?.file).toBe(name);
    }
  });

  it('tells where YAML itself is broken, once for each line', () => {
    const { problems = [] } = read('not-yaml.yaml');
    expect(problems[0]).toMatchObject({ line: 7, message: expect.stringContaining('not sound YAML') });
    expect(new Set(problems.map(({ line }) => line)).size).toBe(problems.length);
  });

  it('says which words a choice takes, and that a file holds one document', () => {
    const text = library.enclosure('beck-bank');
    const astray = text.replace('do: feed,', 'do: feed, place: roof,');
    const [choice] = readEnclosure(astray, 'x.yaml').problems ?? [];
    expect(choice).toMatchObject({ value: 'roof', mend: "Write 'water' or 'land'." });
    expect(choice?.message).toBe('is not one of the words allowed here');
    const [second] = readEnclosure(`${text}---\nname: another\n`, 'x.yaml').problems ?? [];
    expect(second?.line).toBe(text.split('\n').length);
    expect(second?.message).toMatch(/second document/);
  });
  it('does not follow references, however many', () => {
    const { problems = [] } = read('billion-laughs.yaml');
    expect(problems[0]).toMatchObject({ line: 2, column: 8, message: expect.stringContaining('refers') });
    expect(problems.length).toBeLessThanOrEqual(5);
  });

  it.each([
    ['', 'is empty'],
    ['   \n\n', 'is empty'],
    ['x'.repeat(LONGEST_FILE + 1), 'longer than 256 kB'],
    [`a: ${'['.repeat(5000)}`, 'nests brackets'],
    [`${'- '.repeat(3000)}x`, 'nested too deeply'],
    [Array.from({ length: 420 }, (_, depth) => `${' '.repeat(depth)}a:`).join('\n'), 'nested too deeply'],
    ['name: \u0000', 'not text'],
    ['- 1\n- 2\n', 'must be a map'],
    ['just words', 'must be a map'],
    ['null', 'must be a map'],
    ['__proto__: { polluted: 1 }', 'is missing'],
  ])('refuses odd text %#', (text, message) => {
    const { problems = [] } = readEnclosure(text, 'odd.yaml');
    expect(problems.map((problem) => problem.message).join('\n')).toContain(message);
    expect(Object.hasOwn(Object.prototype, 'polluted')).toBe(false);
  });

  it('never throws and never takes long, whatever is cut from, put into or doubled in a file', () => {
    const whole = library.enclosure('beck-bank');
    const mutation = fc.record({
      at: fc.nat(whole.length),
      cut: fc.nat(40),
      put: fc.oneof(
        fc.string({ maxLength: 12 }),
        fc.constantFrom('{', '[', '- ', ': ', '\t', '"', '|', '&a ', '*a', '!!js ', '# '),
      ),
    });
    fc.assert(
      fc.property(mutation, ({ at, cut, put }) => {
        const text = whole.slice(0, at) + put + whole.slice(at + cut);
        const { document, problems } = readEnclosure(text, 'mutated.yaml');
        expect((document === undefined) !== (problems === undefined)).toBe(true);
        for (const { line, column, message } of problems ?? []) {
          expect(line).toBeGreaterThan(0);
          expect(column).toBeGreaterThan(0);
          expect(message).not.toBe('');
        }
      }),
      { numRuns: 150 },
    );
  });

  it('reads any YAML-like noise in bounded time', () => {
    const heavy = [
      '? '.repeat(39).concat('x\n').repeat(2000),
      'a: b\n'.repeat(9_000),
      '"'.repeat(200_000),
      '{a: '.repeat(38).concat('1').repeat(1500),
      `${'k: &x '.repeat(30_000)}`,
    ];
    for (const text of heavy) {
      // Processor time: other work on the machine must not decide.
      const before = process.cpuUsage();
      expect(readEnclosure(text, 'heavy.yaml').document).toBeUndefined();
      const { user, system } = process.cpuUsage(before);
      expect((user + system) / 1000).toBeLessThan(5000);
    }
  });
});

describe('names of files and places', () => {
  it.each([
    ['My Bank.yaml', 'my-bank'],
    ['C:\\glass\\beck-bank.yml', 'beck-bank'],
    ['/home/x/Ü.yaml', 'enclosure'],
    ['--.yaml', 'enclosure'],
  ])('%s is %s', (name, id) => expect(idOf(name)).toBe(id));
  it('paths, values and lines read well', () => {
    expect(pathText(['zones', 1, 'layers', 0])).toBe('zones[1].layers[0]');
    expect(valueText('a\n  b')).toBe('a b');
    expect(valueText('x'.repeat(80))?.length).toBe(60);
    const problem = {
      file: 'a.yaml',
      line: 3,
      column: 5,
      path: 'water.level',
      value: '13',
      message: 'has no unit',
      mend: 'Add cm.',
    };
    expect(problemLine(problem)).toBe('a.yaml:3:5 water.level has no unit (it says: 13). Add cm.');
  });
});
