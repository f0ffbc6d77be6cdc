import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { judgeFile, validate } from './harness/command.ts';
import { readDocument } from './harness/read-document.ts';
import knownMisses from './known-misses.json' with { type: 'json' };
import { KINDS, REFERENCES } from './registry.ts';

/** By reference file and case: why it misses. A miss that is mended must leave the list. */
const KNOWN_MISSES: Readonly<Record<string, Readonly<Record<string, string>>>> = knownMisses;

const here = dirname(fileURLToPath(import.meta.url));

describe.each(REFERENCES)('%s', (reference) => {
  const file = readDocument(join(here, reference), KINDS);
  const verdicts = judgeFile(file);
  it('has a source', () => {
    expect(readFileSync(join(here, dirname(reference), 'SOURCE.md'), 'utf8').length).toBeGreaterThan(200);
  });
  it('misses nothing but what is known to miss, and that still does', () => {
    const known = Object.keys(KNOWN_MISSES[reference] ?? {});
    const misses = verdicts.filter(({ status }) => status === 'miss');
    const unknown = misses.filter(({ id }) => !known.includes(id));
    expect(
      unknown.map(({ id, message, figures }) => ({ id, message, figures: figures.filter(({ ok }) => !ok) })),
    ).toEqual([]);
    expect(misses.map(({ id }) => id).sort()).toEqual(known.sort());
  });
});

it('builds every water family', () => {
  const verdicts = judgeFile(readDocument(join(here, 'water/water-reference.json'), KINDS));
  expect(verdicts).toHaveLength(184);
  expect(verdicts.filter(({ status }) => status !== 'pass')).toEqual([]);
});

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'validate-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

interface Run {
  readonly code: number;
  readonly out: string;
  readonly errors: string;
}

/** Writes a file, runs the command on it and collects what it prints. */
function run(content: unknown, ...more: string[]): Run {
  writeFileSync(join(folder, 'cases.json'), typeof content === 'string' ? content : JSON.stringify(content));
  return runOn(['--file', 'cases.json', ...more]);
}

function runOn(words: readonly string[]): Run {
  const out: string[] = [];
  const errors: string[] = [];
  const code = validate(words, {
    kinds: KINDS,
    references: REFERENCES.map((reference) => join(here, reference)),
    knownMisses: new Map(),
    folder,
    out: (line) => out.push(line),
    error: (line) => errors.push(line),
  });
  return { code, out: out.join('\n'), errors: errors.join('\n') };
}

const q = (value: unknown, unit: string) => ({ value, unit });
const out = (value: unknown, unit: string, tol_abs: number | null, tol_rel: number | null = null) => ({
  value,
  unit,
  tol_abs,
  tol_rel,
});
const made = (family: string, inputs: object, outputs: object) => ({
  id: `made-${family}`,
  family,
  inputs,
  outputs,
});

/** Cases of each family that are in no file; the numbers are from the works named. */
const UNSEEN = [
  // Stumm & Morgan: pure water in air, pH 5.66; here in Pa and kelvin.
  made('a', { temperature: q(298.15, 'K'), pCO2: q(32.042, 'Pa'), totals: {} }, { pH: out(5.66, '-', 0.02) }),
  // NIST carbonate standard, 25 degC, pH 10.012.
  made(
    'b',
    { temperature: q(77, 'degF'), DIC: q(50_000, 'umol/L'), totals: { Na: q(0.075, 'mol/kgw') } },
    { pH: out(10.012, '-', 0.02), HCO3_total: out(25, 'mmol/L', null, 0.02) },
  ),
  // Textbooks: calcite in air of 10^-3.5 atm, pH 8.28, Ca 0.494 mmol/L.
  made(
    'c',
    { temperature: q(25, 'degC'), mineral: 'calcite', system: 'open', pCO2: q(3.1623e-4, 'atm') },
    { pH: out(8.28, '-', 0.02), Ca: out(19.8, 'mg/L', null, 0.03) },
  ),
  // Emerson et al. 1975: 5.37 % at pH 8 and 25 degC.
  made('d', { temperature: q(25, 'degC'), pH: q(8, '-') }, { NH3_fraction: out(5.37, '%', 0.01) }),
  // ISO 7888: 0.01 mol/L KCl has 1412 uS/cm; molar masses give 745.5 mg/L.
  made(
    'e',
    { temperature: q(25, 'degC'), DIC: q(0, 'mmol/L'), totals: { K: q(390.98, 'mg/L'), Cl: q(10, 'meq/L') } },
    { SC_25C: out(1.412, 'mS/cm', null, 0.02), TDS_sum_of_ions: out(745.5, 'mg/L', 0.1) },
  ),
  // Molar masses: 168.01 mg/L NaHCO3 are 2 meq/L, 5.608 dKH, 100.09 mg/L as CaCO3.
  made(
    'f',
    { temperature: q(25, 'degC'), pCO2: q(42, 'Pa'), salts: { NaHCO3: q(0.16801, 'g/L') } },
    {
      alkalinity: out(2, 'meq/L', 0.002),
      KH: out(5.608, 'dKH', 0.005),
      Na: out(45.98, 'mg/L', 0.01),
      GH: out(0, 'dGH', 0.001),
    },
  ),
  // Mass balance: half of 2 mmol/L Ca evaporated to a half, refilled with pure water.
  made(
    'g',
    {
      temperature: q(25, 'degC'),
      pCO2: q(42, 'Pa'),
      start_water: { Ca: q(2, 'mmol/L'), Cl: q(3, 'mmol/L') },
      water_evaporated: q(50, '%'),
      refill: 'none',
    },
    { alkalinity: out(2, 'meq/L', 1e-6), GH: out(22.43, 'dGH', 0.01) },
  ),
  // Textbook: 7.14 mg nitrogen take 1.02 meq of alkalinity.
  made(
    'h',
    {
      temperature: q(20, 'degC'),
      pCO2: q(42, 'Pa'),
      initial_totals: { Na: q(2, 'mmol/L'), 'NH4+NH3': q(0.6, 'mmol/L'), Cl: q(0.6, 'mmol/L') },
      dose: { N_oxidised: q(7.14, 'mg N/L') },
    },
    { alkalinity_after: out(2 - 1.02, 'meq/L', 0.001) },
  ),
  // Textbook end point of calcite in a closed water: Ca 0.123 mmol/L, pH 9.91, long after the start.
  made(
    'i',
    {
      temperature: q(25, 'degC'),
      area_per_water: q(10, 'm2/m3'),
      system: 'closed',
      initial_totals: {},
      time: q([720], 'h'),
    },
    { Ca_series: out([0.123], 'mmol/L', 0.003), pH_series: out([9.91], '-', 0.02) },
  ),
  // No organic matter: pure water again.
  made(
    'j',
    {
      temperature: q(25, 'degC'),
      pCO2: q(32.042, 'Pa'),
      DOC: q(0, 'ug C/L'),
      mineral_alkalinity: q(0, 'ueq/L'),
      totals: {},
    },
    { pH: out(5.66, '-', 0.02), organic_anion: out(0, 'ueq/L', 1e-6) },
  ),
  // APHA 4500-O: 8.263 mg/L at 25 degC and 1 atm.
  made(
    'k',
    { temperature: q(25, 'degC'), pressure: q(101.325, 'kPa') },
    { O2_saturation: out(8263, 'ug/L', 5), water_vapour_pressure: out(3.169, 'kPa', null, 0.01) },
  ),
];

describe('a file of unseen cases', () => {
  it('is computed by family, whatever the units', () => {
    const { code, out: printed, errors } = run({ cases: UNSEEN });
    expect(errors).toBe('');
    expect(printed).not.toContain('MISS');
    expect(printed).toContain('11 of 11 pass, 0 miss, 0 not built');
    expect(code).toBe(0);
  });

  it.each(UNSEEN)('misses when the expectation of family $family is wrong', (unseen) => {
    const outputs = Object.fromEntries(
      Object.entries(unseen.outputs as Record<string, ReturnType<typeof out>>).map(([name, figure]) => {
        const wrong = Array.isArray(figure.value)
          ? figure.value.map((x) => x * 1.5 + 1)
          : Number(figure.value) * 1.5 + 1;
        return [name, { ...figure, value: wrong }];
      }),
    );
    const { code, out: printed } = run({ cases: [{ ...unseen, outputs }] });
    expect(printed).toContain('MISS');
    expect(code).toBe(1);
  });

  it('is told as one JSON document', () => {
    const { code, out: printed } = run({ cases: UNSEEN.slice(3, 4) }, '--json');
    expect(code).toBe(0);
    const document = JSON.parse(printed) as { cases: { figures: { value: number }[] }[] };
    expect(document).toMatchObject({ total: 1, passed: 1, failed: 0, notBuilt: 0 });
    expect(document.cases[0]).toMatchObject({
      id: 'made-d',
      family: 'd',
      status: 'pass',
      figures: [{ name: 'NH3_fraction', expected: 5.37, tolerance: 0.01, unit: '%', ok: true }],
    });
    expect(document.cases[0]?.figures[0]?.value).toBeCloseTo(5.37, 2);
  });

  it('never passes what is not built', () => {
    const unknown = [
      made('z', {}, { pH: out(7, '-', 1) }),
      made('d', { temperature: q(25, 'degC'), pH: q(8, '-') }, { colour: out(7, '-', 1e9) }),
    ];
    const { code, out: printed } = run({ cases: unknown }, '--json');
    expect(JSON.parse(printed)).toMatchObject({ total: 2, passed: 0, failed: 0, notBuilt: 2 });
    expect(code).toBe(0);
    expect(run([{ id: 'x', equation: 'no such', inputs: {}, expected: { y: q(1, 'm') } }]).out).toContain(
      '1 not built',
    );
  });
});

describe('what cannot be read', () => {
  const good = UNSEEN[3]!;
  it.each([
    ['{ "cases": [', 'is not JSON'],
    ['{ "numbers": [] }', 'none of the known forms'],
    ['{ "cases": [] }', 'holds no cases'],
    ['[1, 2]', 'none of the known forms'],
    ['null', 'none of the known forms'],
  ])('a file of %s', (content, message) => {
    const { code, errors } = run(content);
    expect(errors).toContain('cases.json');
    expect(errors).toContain(message);
    expect(code).toBe(2);
  });

  it('a file that is not there, and arguments that are none', () => {
    expect(runOn(['--file', 'nowhere.json'])).toMatchObject({
      code: 2,
      errors: expect.stringContaining('nowhere.json: cannot be read'),
    });
    expect(runOn(['--file'])).toMatchObject({
      code: 2,
      errors: expect.stringContaining('needs a file name'),
    });
    expect(runOn(['--files'])).toMatchObject({ code: 2, errors: expect.stringContaining("'--files'") });
  });

  it.each([
    [{ ...good, family: undefined }, "'family' is missing"],
    [{ ...good, id: undefined }, "'id' is missing"],
    [{ ...good, outputs: undefined }, "'outputs' is missing"],
    [{ ...good, outputs: {} }, 'expects nothing'],
    [{ ...good, inputs: 7 }, "'inputs' is not a group"],
    [{ ...good, outputs: { pKa: out('nine', '-', 1) } }, "'pKa' is not a finite number"],
    [{ ...good, outputs: { pKa: out(9, '-', -1) } }, "tolerance of 'pKa'"],
    ['a text', 'not a group of values'],
  ])('a case, while the others are still judged: %#', (bad, message) => {
    const { code, out: printed, errors } = run({ cases: [bad, good] });
    expect(errors).toContain('cases.json');
    expect(errors).toContain(message);
    expect(printed).toContain('1 of 2 pass, 1 miss');
    expect(code).toBe(2);
  });

  it.each([
    [made('d', { pH: q(8, '-') }, good.outputs), "input 'temperature' is missing"],
    [made('d', { temperature: q('warm', 'degC'), pH: q(8, '-') }, good.outputs), 'not a finite number'],
    [
      made('d', { temperature: q(25, 'furlong'), pH: q(8, '-') }, good.outputs),
      "'furlong' is not a known unit",
    ],
    [made('d', { temperature: q(25, 'kg'), pH: q(8, '-') }, good.outputs), 'cannot be converted'],
    [made('a', { temperature: q(25, 'degC') }, { pH: out(7, '-', 1) }), 'which carbon is fixed'],
    [
      made(
        'a',
        { temperature: q(25, 'degC'), pCO2: q(1, 'Pa'), totals: { Fe: q(1, 'mmol/L') } },
        { pH: out(7, '-', 1) },
      ),
      "'Fe'",
    ],
    [
      made(
        'a',
        { temperature: q(25, 'degC'), pCO2: q(1, 'Pa'), totals: { Ca: q(-1, 'mmol/L') } },
        { pH: out(7, '-', 1) },
      ),
      'negative',
    ],
    [
      made('c', { temperature: q(25, 'degC'), pCO2: q(1, 'Pa'), mineral: 'talc' }, { pH: out(7, '-', 1) }),
      "'talc'",
    ],
    [
      made(
        'f',
        { temperature: q(25, 'degC'), pCO2: q(1, 'Pa'), salts: { Xy: q(1, 'mg/L') } },
        { pH: out(7, '-', 1) },
      ),
      "'Xy'",
    ],
    [
      made(
        'h',
        { temperature: q(25, 'degC'), pCO2: q(1, 'Pa'), dose: { H2SO4: q(1, 'mmol/L') } },
        { pH_initial: out(7, '-', 1) },
      ),
      'H2SO4',
    ],
    [
      made(
        'i',
        { temperature: q(25, 'degC'), area_per_water: q(1, 'm2/m3') },
        { Ca_series: out([1], 'mmol/L', 1) },
      ),
      "'time'",
    ],
  ])('a computation that cannot be done counts as failed: %#', (bad, message) => {
    const { code, out: printed } = run({ cases: [bad] });
    expect(printed).toContain(message);
    expect(printed).toContain('0 of 1 pass, 1 miss');
    expect(code).toBe(1);
  });
});

it('runs as npm run validate does, from anywhere', () => {
  writeFileSync(join(folder, 'two.json'), JSON.stringify({ cases: UNSEEN.slice(0, 2) }));
  const script = join(here, '../scripts/validate.mjs');
  const env = { ...process.env };
  delete env.INIT_CWD;
  const { status, stdout } = spawnSync(process.execPath, [script, '--file', 'two.json'], {
    cwd: folder,
    encoding: 'utf8',
    env,
  });
  expect(stdout).toContain('2 of 2 pass');
  expect(status).toBe(0);
});
