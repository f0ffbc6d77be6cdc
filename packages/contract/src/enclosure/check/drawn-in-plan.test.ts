import { shapeSheet } from '@shoreglass/engine';
import { library } from '@shoreglass/library';
import { describe, expect, it } from 'vitest';
import { shapeDocumentSchema } from '../../shape/shape-document.ts';
import { sheetSchema } from '../../shape/sheet-schema.ts';
import { bundledEnclosures, loadBundledEnclosure } from '../bundled.ts';
import { openEnclosure } from './check-enclosure.ts';

const text = library.enclosure('fern-island');
const told = (from: string, to: string) =>
  openEnclosure(text.replace(from, to), 'fern.yaml').findings.filter(({ severity }) => severity !== 'note');

describe('a file drawn in plan', () => {
  it('takes its ground from corners, from ends, or from front and back', () => {
    const { plan } = openEnclosure(text, 'fern.yaml');
    const ground = (id: string) =>
      plan?.zones.find((zone) => zone.id === id)?.outline?.map((corner) => corner.ground);
    expect(ground('bank')).toEqual([0.2, 0.12, 0.1, 0.12, 0.3]);
    // the isle slopes from 17 cm at x = 26 cm to 22 cm at x = 50 cm
    expect(ground('isle')?.[1]).toBeCloseTo(0.17 + (0.05 * 18) / 24, 12);
    expect(ground('pool')).toEqual([0.03, 0.03, 0.06, 0.06]);
    expect(plan?.devices.pump?.flow).toBeGreaterThan(0);
    expect(plan?.devices.lamps[0]?.power).toBeCloseTo(24, 12);
  });
  it('turns lumens into photons by the colour of the lamp', () => {
    const flux = (colour: string) =>
      openEnclosure(text.replace('lumens: 3600 lm', `lumens: 3600 lm${colour}`), 'fern.yaml').plan?.devices
        .lamps[0]?.photonFlux;
    // CIE LED illuminants: 14.9 at 2733 K, 14.3 at 4103 K, 13.955 at 5109 K; 85 % reach the cover, dimmed to 80 %
    const of = (perKilolumen: number) => 3.6 * perKilolumen * 0.85 * 0.8;
    expect(flux('')).toBeCloseTo(of(14.4), 9);
    expect(flux('\n      colour: 2000 K')).toBeCloseTo(of(14.9), 9);
    expect(flux('\n      colour: 4606 K')).toBeCloseTo(of((14.3 + 13.955) / 2), 9);
    expect(flux('\n      colour: 9000 K')).toBeCloseTo(of(14.4), 9);
  });
  it.each([
    ['    from: 0 cm\n', '', 'zones[0].from', 'is missing'],
    [
      'ground: { front: 3 cm, back: 6 cm }',
      'ground: { front: 3 cm, left: 6 cm }',
      'zones[0].ground',
      'slopes both ways',
    ],
    [
      '{ x: 84 cm, y: 26 cm, ground: 12 cm }',
      '{ x: 84 cm, y: 26 cm }',
      'zones[1].outline',
      'gives some of its corners a ground',
    ],
    ['    ground: { left: 17 cm, right: 22 cm }\n', '', 'zones[2].ground', 'is missing'],
    [
      '{ x: 100 cm, y: 12 cm, ground: 10 cm }',
      '{ x: 130 cm, y: 12 cm, ground: 10 cm }',
      'zones[1].outline[2]',
      'outside the glass',
    ],
    ['level: 14 cm', 'level: 31 cm', 'water.level', 'the lower edge of Front slot at 30 cm'],
    [
      'roof: { bottom: 12 cm, top: 15 cm }',
      'roof: { bottom: 12 cm, top: 11 cm }',
      'zones[3].roof',
      'not a slab above its ground',
    ],
    [
      'roof: { bottom: 12 cm, top: 15 cm }',
      'roof: { bottom: 48 cm, top: 52 cm }',
      'zones[3].roof',
      'above the glass at 50 cm',
    ],
    [
      'roof: { bottom: 12 cm, top: 15 cm }',
      'roof: { bottom: 12 cm, top: 15 cm, material: oak-wood }',
      'zones[3].roof.material',
      'cannot be used here',
    ],
    ['height: 30 cm\n', 'height: 49.5 cm\n', 'glass.vents[0].height', 'above the glass at 50 cm'],
    ['length: 60 cm\n', 'length: 160 cm\n', 'glass.vents[0].length', '160 cm long in a pane of 120 cm'],
    [
      'top: rimmed',
      'top: rimmed\n  overflow: { height: 55 cm, bore: 25 mm }',
      'glass.overflow.height',
      'above the glass',
    ],
    [
      'z: 8 cm, thick: 5 cm, y: 30 cm',
      'z: 8 cm, thick: 5 cm, y: 90 cm',
      'hardscape[0].course[0]',
      'outside the glass',
    ],
    [
      'curve: { head: 90 cm, flow: 420 L/h }',
      'curve: { head: 15 cm, flow: 420 L/h }',
      'devices.pump.outlet',
      'cannot reach its outlet',
    ],
    ['    curve: { head: 90 cm, flow: 420 L/h }\n', '', 'devices.pump.flow', 'is missing'],
    ['protection: IP65', 'protection: wet', 'devices.lamps[0].protection', 'is not a degree of protection'],
    [
      'z: 54 cm, length: 50 cm, breadth: 6 cm }\n      protection: IP65',
      'z: 40 cm, length: 50 cm, breadth: 6 cm }',
      'devices.lamps[0].panel',
      'inside the mist',
    ],
  ])('%j as %j is told at %s', (from, to, path, message) => {
    const [finding] = told(from, to);
    expect(finding?.path).toBe(path);
    expect(finding?.message).toContain(message);
    expect(finding?.mend).not.toBe('');
  });
});

describe('the shape sheet of what ships', () => {
  it.each(bundledEnclosures())('%s is as its schema says, without a warning', (id) => {
    const sheet = shapeSheet(loadBundledEnclosure(id).plan);
    expect(sheetSchema.parse(JSON.parse(JSON.stringify(sheet)))).toEqual(sheet);
    expect(sheet.remarks.filter(({ severity }) => severity !== 'note')).toEqual([]);
    expect(shapeDocumentSchema.shape.sheet).toBeDefined();
  });
});
