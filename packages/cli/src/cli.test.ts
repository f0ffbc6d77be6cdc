import { existsSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { aheadDocumentSchema, shapeDocumentSchema, waterDocumentSchema } from '@shoreglass/contract';
import { library } from '@shoreglass/library';
import { afterAll, describe, expect, test } from 'vitest';
import { shoreglass, shoreglassInto, shoreglassWith } from './cli-test-kit.ts';

const folder = mkdtempSync(join(tmpdir(), 'shoreglass-cli-'));
afterAll(() => rmSync(folder, { recursive: true }));

function file(name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

describe('ahead', () => {
  const args = ['--days', '20', '--members', '4', '--seed', '3', '--json'];
  test('--json prints one document that its schema accepts, and nothing else', () => {
    const { status, stdout } = shoreglass('demo', ...args);
    expect(status).toBe(0);
    const document = aheadDocumentSchema.parse(JSON.parse(stdout));
    expect(document.run).toMatchObject({ days: 20, members: 4, seed: 3 });
  });
  test('the same file and seed give the same document', () => {
    const path = file('own-bank.yaml', library.enclosure('beck-bank'));
    const [first, second] = [shoreglass('ahead', path, ...args), shoreglass('ahead', path, ...args)];
    expect(first.status).toBe(0);
    expect(second.stdout).toBe(first.stdout);
  });
  test('prints the horizon, turning points and what is not modelled for people', () => {
    const { status, stdout } = shoreglass('demo', '--days', '20', '--members', '4');
    expect(status).toBe(0);
    expect(stdout).toMatch(/left to itself/);
    expect(stdout).toMatch(/What turns, and when/);
    expect(stdout).toMatch(/Not yet modelled/);
  });
});

describe('water', () => {
  const args = ['--days', '20', '--members', '2', '--seed', '3'];
  test('--json prints one document that its schema accepts, a buffer and a change among it', () => {
    const asked = [
      '--buffer',
      'coral',
      '--grain',
      '3 mm',
      '--for',
      '20 d',
      '--sure',
      '75',
      '--hold',
      'KH 1 to',
    ];
    const change = ['--change-to', 'rain', '--share', '60 %'];
    const { status, stdout } = shoreglass('water', 'beck-bank', ...args, ...asked, ...change, '--json');
    expect(status).toBe(0);
    const document = waterDocumentSchema.parse(JSON.parse(stdout));
    expect(document.buffer?.verdict).toBe('not needed');
    expect(document.change?.steps.length).toBeGreaterThan(1);
    expect(document.pieces.map(({ piece }) => piece)).toEqual(['branch', 'leaves']);
    expect(document.waters.map(({ id }) => id)).toEqual(['hard-tap', 'rain']);
  });
  test('starts from readings and shows course, budgets and pieces to people', () => {
    const { status, stdout } = shoreglass('water', 'beck-bank', ...args, '--now', 'KH 71 ppm, GH 7 °dGH');
    expect(status).toBe(0);
    expect(stdout).toMatch(/Started from readings: KH 71 ppm, GH 7 °dGH/);
    expect(stdout).toMatch(/KH 4\.0\s°dKH,\s+GH 7\.0\s°dGH/);
    expect(stdout).toMatch(/ammonia oxidation +.*│/);
    expect(stdout).toMatch(/Alder branch: /);
  });
  test.each([
    [['--now', 'KH 4'], /KH/],
    [['--buffer', 'granite'], /no carbonate of the library; there are: .*crushed-coral/],
    [['--buffer', 'coral', '--hold', 'KH strong'], /not a band/],
    [['--buffer', 'coral', '--for', '200 kg'], /does not measure time/],
    [['--change-to', 'sea'], /no water of the file or the library/],
  ])('bad input %j ends with 2 and says the mend', (more, message) => {
    const { status, stderr } = shoreglass('water', 'beck-bank', ...args, ...more);
    expect(status).toBe(2);
    expect(stderr).toMatch(message);
  });
});

describe('shape', () => {
  test('--json prints one document that its schema accepts, with the answer about the cover', () => {
    const { status, stdout } = shoreglass(
      'shape',
      'fern-island',
      '--humidity',
      '80 %',
      '--fog',
      '120 min',
      '--json',
    );
    expect(status).toBe(0);
    const document = shapeDocumentSchema.parse(JSON.parse(stdout));
    expect(document.cover?.goal).toEqual({ humidity: 0.8, fog: 2 });
    expect(document.climate.months).toHaveLength(12);
  });
  test('shows water, weight, glass, flow, light, climate and cautions to people, and prints a page', () => {
    const { status, stdout } = shoreglass('shape', 'fern-island');
    expect(status).toBe(0);
    for (const heading of [
      'Water and land',
      'Zones',
      'Weight',
      'Glass, 10.0 mm, rimmed',
      'Flow',
      'Light',
      'Climate through the year',
      'Cautions',
    ])
      expect(stdout).toContain(heading);
    const page = join(folder, 'sheet.html');
    expect(shoreglass('shape', 'fern-island', '--print', page).status).toBe(0);
    expect(readFileSync(page, 'utf8')).toMatch(/<svg[\s\S]*<svg[\s\S]*Climate through the year/);
  });
  test.each([
    [['--humidity', '80'], /--humidity: '80' cannot be read/],
    [['--humidity', '120 %'], /give 0 to 100 %/],
    [['--print', 'sheet.pdf'], /must end in .html/],
  ])('bad input %j ends with 2 and says the mend', (more, message) => {
    const { status, stderr } = shoreglass('shape', 'beck-bank', ...more);
    expect(status).toBe(2);
    expect(stderr).toMatch(message);
  });
});

describe('check', () => {
  test('an example can be run and shows its cautions', () => {
    const { status, stdout } = shoreglass('check', 'beck-bank');
    expect(status).toBe(0);
    expect(stdout).toMatch(/never release/i);
  });
  test('--json gives the findings with their places', () => {
    const { stdout } = shoreglass('check', 'beck-bank', '--json');
    const { canBeRun, findings } = JSON.parse(stdout);
    expect(canBeRun).toBe(true);
    expect(findings[0]).toMatchObject({ file: 'beck-bank.yaml', line: expect.any(Number) });
  });
  test('a plan that cannot work ends with 1 and says where and why', () => {
    const text = library
      .enclosure('beck-bank')
      .replace('species: hyalella-azteca', 'species: hyalela-azteca');
    const { status, stdout } = shoreglass('check', file('unknown.yaml', text));
    expect(status).toBe(1);
    expect(stdout).toMatch(/unknown\.yaml:\d+:\d+ .*hyalela-azteca/);
    expect(stdout).toMatch(/hyalella-azteca/);
  });
});

describe('mix', () => {
  const asked = ['mix', '--from', 'rain,hard-tap', '--gh', '6 °dGH', '--kh', '4 °dKH', '--volume', '40 L'];
  test('says what to take, in which order and what to mind', () => {
    const { status, stdout } = shoreglass(...asked, '--max-sodium', '10 mg/L');
    expect(status).toBe(0);
    expect(stdout).toMatch(/Take[\s\S]*rain[\s\S]*In this order[\s\S]*To mind[\s\S]*chloramine/);
  });
  test('--json prints one document with all ways', () => {
    const { status, stdout } = shoreglass(...asked, '--json');
    expect(status).toBe(0);
    const { recipes } = JSON.parse(stdout);
    expect(recipes[0]).toMatchObject({ id: 'closest', litres: 40 });
    expect(recipes[0].targets[0]).toMatchObject({ quantity: 'GH', unit: '°dGH', met: true });
  });
});

describe('bad input ends with 2 and says the mend', () => {
  test.each([
    [['ahead', 'no-such-file.yaml'], /no file .*no-such-file\.yaml/],
    [['ahead', 'beck-bank', '--days', '0'], /whole number from 1 to 1500/],
    [['ahead', 'beck-bank', '--days', 'abc'], /whole number from 1 to 1500/],
    [['ahead', 'beck-bank', '--members', '1000000000'], /whole number from 2 to 2000/],
    [['ahead', 'beck-bank', '--seed', '-1'], /seed/],
    [['mix', '--gh', '6 dGH', '--volume', '0 L'], /--volume: is outside/],
    [['mix', '--gh', '6 dGH', '--volume', '4 L', '--from', 'rian'], /Did you mean 'rain'/],
    [['ahead'], /missing required argument/],
    [['aheda'], /unknown command/],
    [['demo', '--colour'], /unknown option/],
    [['water', 'beck-bank', '--buffer', 'coral', '--sure', '150'], /--sure 150 is outside 50 % to 99 %/],
    [['water', 'beck-bank', '--grain', '1 mm'], /--grain says more about --buffer/],
    [['life', 'beck-bank', '--from', '5'], /--from goes with --pest/],
    [
      ['life', '--animal', 'hydra-viridissima', '--days', '9', '--members', '2'],
      /--days and --members ask about an/,
    ],
    [['life', '--animal', 'hydra-viridissima', '--seed', '1'], /--seed asks about an enclosure file/],
    [
      ['life', 'beck-bank', '--pest', 'planorbella-duryi', '--from', '300'],
      /after the last day of a run of 300/,
    ],
    [
      ['life', 'beck-bank', '--add', 'hyalella-azteca:1', '--add', 'physella-acuta:2'],
      /--add is given twice/,
    ],
    [
      ['life', 'beck-bank', '--hold', 'hyalella-azteca:1', '--hold', 'hyalella-azteca:2'],
      /names hyalella-azteca twice/,
    ],
    [['ahead', 'beck-bank', '--days', '5', '--days', '6'], /--days is given twice, as 5 and as 6/],
    [['water', 'beck-bank', '--grain', '1 mm', '--sure', '90'], /--grain and --sure say more about --buffer/],
    [['shape', 'beck-bank', '--fog', '-2 h'], /--fog: '-2 h' cannot be: give 0 to 24 h/],
    [['life', '--animal', '/no/such.yaml'], /There is no file \/no\/such\.yaml/],
    [['life', '--animal', 'hydra-viridissima', '--pest', 'hydra-viridissima'], /cannot go with --animal/],
  ])('%j', (args, message) => {
    const { status, stderr, stdout } = shoreglass(...args);
    expect(status).toBe(2);
    expect(stderr).toMatch(message);
    expect(stdout).toBe('');
  });
  test('YAML that cannot be read names file, line and column', () => {
    const { status, stderr } = shoreglass('check', file('broken.yaml', 'shoreglass: 1\nname: [unclosed\n'));
    expect(status).toBe(2);
    expect(stderr).toMatch(/broken\.yaml:\d+:\d+/);
  });
  test('every problem of a file is listed, each on a line', () => {
    const text = library
      .enclosure('beck-bank')
      .replace('length: 90 cm', 'length: 90')
      .replace('level: 16.5 cm', 'level: 16.5 kg');
    const { status, stderr } = shoreglass('check', file('two.yaml', text));
    expect(status).toBe(2);
    expect(stderr.trim().split('\n').length).toBeGreaterThanOrEqual(2);
    expect(stderr).toMatch(/glass\.length/);
    expect(stderr).toMatch(/water\.level/);
  });
  test('--json tells the problems of a file that cannot be read as well', () => {
    const text = library.enclosure('beck-bank').replace('level: 16.5 cm', 'level: 16.5 kg');
    const { status, stdout } = shoreglass('check', file('json.yaml', text), '--json');
    expect(status).toBe(2);
    expect(JSON.parse(stdout)).toMatchObject({
      canBeRun: false,
      findings: [{ severity: 'blocking', path: 'water.level', value: '16.5 kg' }],
    });
  });
  test('a folder is no enclosure, an enclosure is no animal, and a file is no folder', () => {
    expect(shoreglass('check', folder).status).toBe(2);
    const path = file('a-box.yaml', library.enclosure('beck-bank'));
    const animal = shoreglass('life', '--animal', path);
    expect(animal.status).toBe(2);
    expect(animal.stderr).toMatch(/is not a file of one animal/);
    const served = shoreglass('serve', '--data', path);
    expect(served.status).toBe(2);
    expect(served.stderr).toMatch(/is not a folder/);
  });
});

describe('what is written', () => {
  test('drawings alone lie below each other by their own heights', () => {
    const path = join(folder, 'drawings.svg');
    expect(shoreglass('shape', 'beck-bank', '--print', path).status).toBe(0);
    const svg = readFileSync(path, 'utf8');
    const [section = 0] = [...svg.matchAll(/<svg y="0"[^>]* height="([\d.]+)"/g)].map(([, height]) =>
      Number(height),
    );
    expect(section).toBeGreaterThan(100);
    expect(svg).toContain(`<svg y="${section + 20}"`);
  });
  test.runIf(existsSync('/dev/full'))(
    'a full disk is told and no success, and leaves what stood there',
    () => {
      const path = join(folder, 'full.html');
      symlinkSync('/dev/full', path);
      const sheet = shoreglass('shape', 'beck-bank', '--print', path);
      expect(sheet.status).toBe(2);
      expect(sheet.stderr).toMatch(/cannot be written: no space left on device\. Name a file/);
      const answer = shoreglassInto('/dev/full', 'check', 'beck-bank', '--json');
      expect(answer.status).toBe(3);
      expect(answer.stderr).toMatch(/could not be written: no space left/);
    },
  );
  test('own waters that nothing names are told', () => {
    const path = file('tank.yaml', 'calcium: 50 mg/L\nalkalinity: 2 meq/L\n');
    const asked = ['mix', '--own', path, '--gh', '3 °dGH', '--volume', '4 L', '--from'];
    const idle = shoreglass(...asked, 'rain');
    expect(idle.status).toBe(2);
    expect(idle.stderr).toMatch(/holds tank, which neither --from nor --keep names/);
    expect(shoreglass(...asked, 'rain,tank').status).toBe(0);
  });
});

describe('a crowded check', () => {
  test('tells what several animals share once, fits a narrow terminal, and --json tells all', () => {
    const shrimp = 'animals:\n  - { species: neocaridina-davidi, zone: pool, adults: 9, after: 40 d }';
    const path = file('crowd.yaml', library.enclosure('beck-bank').replace('animals:', shrimp));
    const narrow = shoreglassWith({ COLUMNS: '60' }, 'check', path).stdout;
    for (const line of narrow.split('\n').filter((text) => text.includes(' ')))
      expect(line.length).toBeLessThanOrEqual(60);
    const { findings } = JSON.parse(shoreglass('check', path, '--json').stdout);
    const washed = findings.filter(({ message }: { message: string }) =>
      /Wash hands after work/.test(message),
    );
    expect(washed.length).toBeGreaterThan(1);
    expect(shoreglass('check', path).stdout.match(/Wash hands after work/g)).toHaveLength(1);
  });
});

describe('help', () => {
  test.each([[], ['check'], ['ahead'], ['mix'], ['demo'], ['serve']])(
    '%s --help ends with 0',
    (...command) => {
      const { status, stdout } = shoreglass(...command.filter(Boolean), '--help');
      expect(status).toBe(0);
      expect(stdout).toMatch(/Usage: shoreglass/);
    },
  );
});
