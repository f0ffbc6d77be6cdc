import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { library } from '@shoreglass/library';
import { describe, expect, it } from 'vitest';
import { bundledEnclosures, loadBundledEnclosure } from '../bundled.ts';
import { openEnclosure } from './check-enclosure.ts';

const folder = join(import.meta.dirname, '..', '..', 'testdata');
const textOf = (name: string) => readFileSync(join(folder, name), 'utf8');
const open = (name: string) =>
  openEnclosure(textOf(name), name, {
    readBeside: (path) => (path.includes('/') ? undefined : textOf(path)),
  });
const changed = (from: string, to: string) =>
  openEnclosure(textOf('small-and-sound.yaml').replace(from, to), 'changed.yaml', {
    readBeside: (path) => (path === 'room-with-holes.csv' ? textOf(path) : undefined),
  });

describe('enclosures that ship', () => {
  it.each(bundledEnclosures())('%s makes a plan without a warning', (id) => {
    const { plan, findings } = loadBundledEnclosure(id);
    expect(findings.filter(({ severity }) => severity !== 'note')).toEqual([]);
    expect(plan.id).toBe(id);
    expect(plan.zones.length).toBeGreaterThan(1);
  });
});

describe('blocking findings', () => {
  it.each([
    [
      'unknown-names.yaml',
      [
        [14, 'coarse-sand'],
        [17, 'hard-tap'],
        [23, 'hyalella-azteca'],
        [23, 'pool'],
      ],
    ],
    [
      'impossible-section.yaml',
      [
        [11, '60 cm'],
        [16, '36 cm'],
      ],
    ],
  ] as const)('%s', (name, expected) => {
    const { plan, findings } = open(name);
    expect(plan).toBeUndefined();
    expect(findings.map(({ severity, line }) => [severity, line])).toEqual(
      expected.map(([line]) => ['blocking', line]),
    );
    for (const [index, [, hint]] of expected.entries()) expect(findings[index]?.mend).toContain(hint);
  });

  it('a water whose charges do not add up is refused with its imbalance', () => {
    const { plan, findings } = open('impossible-water.yaml');
    expect(plan).toBeUndefined();
    // By hand: 2(90/40.078 + 8/24.305) + 20/22.99 + 2/39.098 = 6.071 meq/L; 30/35.453 + 2 x 40/96.06 + 1 = 2.679.
    const [finding] = findings;
    expect(finding).toMatchObject({ severity: 'blocking', line: 16, path: 'waters[0]' });
    expect(finding?.message).toContain('3.39 meq/L, 38.8 %');
  });

  it.each([
    ['to: 60 cm', 'to: 60 cm\n    name: x', 'plan'],
    [
      'fill: hard-tap',
      'fill: [{ water: rain, share: 60 % }, { water: hard-tap, share: 60 % }]',
      'add up to 120.0 %',
    ],
    ['  humidity: { mean: 55 % }', '', 'no humidity'],
    ['  temperature: { mean: 20 °C }', '  series: nowhere', 'no room series'],
    ['  temperature: { mean: 20 °C }', '  series: cellar.csv', 'no file'],
    ['material: coarse-sand', 'material: alder-wood', 'is wood and cannot be used here'],
    [
      'routines:',
      'actions:\n  - { do: add-animals, species: gammarus-pulex, adults: 3, after: 9 d }\nroutines:',
      'not listed under animals',
    ],
    [
      'routines:',
      'routines:\n  - { do: top-off, every: 4 d, after: 60 d, until: 30 d }',
      'until (30 d) is before after (60 d)',
    ],
    ['routines:', '  - { species: hyalella-azteca, zone: pool }\nroutines:', 'is there twice'],
  ])('%s as %s', (from, to, message) => {
    const { plan, findings } = changed(from, to);
    if (message === 'plan') expect(plan).toBeDefined();
    else {
      expect(plan).toBeUndefined();
      expect(findings[0]?.severity).toBe('blocking');
      expect(findings[0]?.message).toContain(message);
    }
  });

  it('problems of a series are told in the series’ own lines', () => {
    const { findings } = changed('  temperature: { mean: 20 °C }', '  series: room-with-holes.csv');
    expect(findings.map(({ file, line }) => `${file}:${line}`)).toEqual([
      'room-with-holes.csv:4',
      'room-with-holes.csv:5',
      'room-with-holes.csv:6',
      'room-with-holes.csv:7',
    ]);
  });
});

describe('a room by its record', () => {
  const text = library.enclosure('espoo-window');
  it('tells how long the record is', () => {
    const { plan, findings } = openEnclosure(text, 'espoo-window.yaml');
    expect(plan?.room.series?.temperature).toHaveLength(125 * 24);
    expect(plan?.room.series?.temperature[3]).toBeCloseTo(21.8, 9);
    expect(plan?.room.series?.humidity[4]).toBeCloseTo(0.348 + (0.345 - 0.348) / 3, 9);
    expect(findings.find(({ path }) => path === 'room.series')?.message).toContain('125 days');
  });
  it('warns of a record used out of its season', () => {
    const { findings } = openEnclosure(text.replace('2026-02-21', '2026-08-21'), 'late.yaml');
    expect(findings[0]).toMatchObject({ severity: 'warning', path: 'room.series' });
  });
});

describe('warnings and notes', () => {
  it('tell of founders, heat, lamp, pump and missing top-off, each at its place', () => {
    const { plan, findings } = open('few-and-unfit.yaml');
    expect(plan).toBeDefined();
    const warnings = findings.filter(({ severity }) => severity === 'warning');
    expect(warnings.map(({ path }) => path)).toEqual([
      'routines',
      'animals[0].species',
      'animals[0].adults',
      'animals[1].species',
      'devices.lamps[0].photons',
      'devices.lamps[0].lit',
      'devices.pump.flow',
    ]);
  });

  it('remind of electricity, weight and release', () => {
    const text = loadBundledEnclosure('beck-bank')
      .findings.map(({ message }) => message)
      .join('\n');
    expect(text).toContain('Mains electricity');
    expect(text).toContain('weigh about');
    expect(text).toContain('Never release animals');
  });

  it('tell of species that need what another cannot bear', () => {
    const both = 'hyalella-azteca, zone: pool, adults: 12, after: 30 d }';
    const { findings } = changed(
      both,
      `${both}\n  - { species: neocaridina-davidi, zone: pool, adults: 20, after: 40 d }\n  - { species: gammarus-pulex, zone: pool, adults: 20, after: 40 d }`,
    );
    const needy = library.organism('neocaridina-davidi').tolerances?.waterTemperature?.low?.value ?? 0;
    const frail = library.organism('gammarus-pulex').tolerances?.waterTemperature?.high?.value ?? 0;
    const conflict = findings.find(({ message }) => message.includes('do not fit together'));
    expect(conflict !== undefined).toBe(needy > frail);
  });

  it('tell when the fill water is too soft for a snail', () => {
    const { findings } = changed(
      'hyalella-azteca, zone: pool, adults: 12',
      'planorbella-duryi, zone: pool, adults: 12',
    );
    expect(findings.some(({ message }) => message.includes('general hardness'))).toBe(false);
    const soft = openEnclosure(
      textOf('small-and-sound.yaml')
        .replace('hyalella-azteca', 'planorbella-duryi')
        .replace('fill: hard-tap', 'fill: rain'),
      'soft.yaml',
    );
    expect(soft.findings.find(({ message }) => message.includes('general hardness'))).toMatchObject({
      severity: 'warning',
      path: 'animals[0].species',
    });
  });
});
