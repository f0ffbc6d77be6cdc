import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { openEnclosure } from './check-enclosure.ts';

const SOUND = readFileSync(join(import.meta.dirname, '..', '..', 'testdata', 'small-and-sound.yaml'), 'utf8');

/** The sound file filled with an own water of these lines; the water's id stands in line 16. */
function filledWith(...lines: string[]) {
  const waters = ['waters:', '  - id: my-tap', ...lines.map((line) => `    ${line}`)].join('\n');
  return openEnclosure(
    SOUND.replace('water:\n', `${waters}\nwater:\n`).replace('hard-tap', 'my-tap'),
    'a.yaml',
  );
}

// By hand: 2(90/40.078 + 8/24.305) + 20/22.99 + 2/39.098 = 6.071 meq/L of positive ions.
const CATIONS = ['calcium: 90 mg/L', 'magnesium: 8 mg/L', 'sodium: 20 mg/L', 'potassium: 2 mg/L'];
// 30/35.453 + 2 x 40/96.06 = 1.679 meq/L, which leaves 4.392 meq/L for the alkalinity.
const ANIONS = ['chloride: 30 mg/L', 'sulfate: 40 mg/L'];

describe('waters that cannot be', () => {
  it.each([
    {
      what: 'charges apart by more than 5 %',
      lines: [...CATIONS, ...ANIONS, 'alkalinity: 1.0 meq/L'],
      line: 16,
      value: 'my-tap',
      message: '3.39 meq/L, 38.8 %',
      mend: 'units',
    },
    {
      what: 'a KH above what the ions allow',
      lines: [...CATIONS, ...ANIONS, 'alkalinity: 20 °dKH'],
      line: 23,
      value: '20.0 °dKH',
      message: 'its positive ions carry 6.07 meq/L',
      mend: '°dKH',
    },
    {
      what: 'bicarbonate above what the ions allow',
      lines: [...CATIONS, ...ANIONS, 'bicarbonate: 600 mg/L'],
      line: 23,
      value: '600 mg/L',
      message: 'the KH of my-tap is above what its ions allow',
      mend: 'bicarbonate',
    },
    {
      what: 'a negative ion',
      lines: ['calcium: -4 mg/L', 'alkalinity: 1.0 meq/L'],
      line: 17,
      value: '-4 mg/L',
      message: 'no water holds less than no calcium',
      mend: 'such as 12 mg/L',
    },
    {
      what: 'an acid',
      lines: ['calcium: 10 mg/L', 'chloride: 100 mg/L'],
      line: 16,
      value: undefined,
      // 100/35.453 - 2 x 10/40.078
      message: '2.32 meq/L',
      mend: 'as NO3 or as N',
    },
    {
      what: 'two alkalinities',
      lines: [...CATIONS, ...ANIONS, 'alkalinity: 4.4 meq/L', 'bicarbonate: 100 mg/L'],
      line: 24,
      value: '100 mg/L',
      message: 'makes 1.64 meq/L, its alkalinity is 4.40 meq/L',
      mend: 'keep the one',
    },
    {
      what: 'two hardnesses',
      lines: [...CATIONS, ...ANIONS, 'hardness: 5 °dGH', 'alkalinity: 4.4 meq/L'],
      line: 23,
      value: '5.0 °dGH',
      // 90/40.078 + 8/24.305
      message: 'calcium and magnesium make 2.57 mmol/L',
      mend: 'GH is calcium plus magnesium',
    },
    {
      what: 'nothing known',
      lines: ['chloride: 10 mg/L'],
      line: 16,
      value: undefined,
      message: 'neither its ions nor both hardness and alkalinity',
      mend: 'hardness (GH) and alkalinity (KH)',
    },
  ])('$what', ({ lines, line, value, message, mend }) => {
    const { plan, findings } = filledWith(...lines);
    expect(plan).toBeUndefined();
    const [finding] = findings;
    expect(finding).toMatchObject({ severity: 'blocking', file: 'a.yaml', line });
    if (value) expect(finding?.value).toContain(value);
    expect(finding?.message).toContain(message);
    expect(finding?.mend).toContain(mend);
  });

  it('no volume in a blend', () => {
    const text = SOUND.replace(
      'fill: hard-tap',
      'fill: [{ water: rain, share: 0 % }, { water: hard-tap, share: 100 % }]',
    );
    const [finding] = openEnclosure(text, 'a.yaml').findings;
    expect(finding).toMatchObject({ severity: 'blocking', line: 17, value: '0 %' });
    expect(finding?.message).toContain('no volume of rain');
  });

  it.each(['0 cm', '-3 cm'])('a level of %s', (level) => {
    const [finding] = openEnclosure(SOUND.replace('level: 20 cm', `level: ${level}`), 'a.yaml').findings;
    expect(finding).toMatchObject({ severity: 'blocking', line: 16, path: 'water.level' });
  });
});

describe('waters known in part', () => {
  it('a full analysis needs no remark', () => {
    const { plan, findings } = filledWith(...CATIONS, ...ANIONS, 'alkalinity: 4.39 meq/L');
    expect(plan).toBeDefined();
    expect(findings.filter(({ path }) => path.startsWith('waters'))).toEqual([]);
  });

  it('anions a report does not print follow from the charges, and are told', () => {
    const { plan, findings } = filledWith(...CATIONS, 'alkalinity: 4.39 meq/L');
    const note = findings.find(({ path }) => path === 'waters[0]');
    // 1.681 meq/L are open: half as chloride, 0.8405 x 35.453 = 29.8 mg/L; half as sulfate, 0.42 x 96.06 = 40.4 mg/L.
    expect(note?.message).toMatch(/29\.8 mg\/L of chloride and 40\.4 mg\/L of sulfate/);
    expect(plan?.water.fill.chloride).toBeCloseTo(0.8405, 2);
    expect(plan?.water.fill.sulfate).toBeCloseTo(0.42, 2);
  });

  it('sodium a report does not print follows from the charges', () => {
    const { plan, findings } = filledWith(
      'calcium: 40 mg/L',
      'magnesium: 5 mg/L',
      ...ANIONS,
      'alkalinity: 2 meq/L',
    );
    // 1.679 + 2 - 2(40/40.078 + 5/24.305) = 1.271 meq/L.
    expect(plan?.water.fill.sodium).toBeCloseTo(1.271, 3);
    expect(findings.find(({ path }) => path === 'waters[0]')?.message).toContain('29.2 mg/L of sodium');
  });

  it('magnesium follows from hardness and calcium', () => {
    const { plan } = filledWith('calcium: 90 mg/L', 'hardness: 2.5747 mmol/L', 'alkalinity: 4.39 meq/L');
    // 2.5747 - 90/40.078 = 0.329 mmol/L, 8.0 mg/L.
    expect(plan?.water.fill.magnesium).toBeCloseTo(0.329, 3);
  });

  it('a conductivity that the ions do not explain is a warning', () => {
    const { findings } = filledWith(
      ...CATIONS,
      ...ANIONS,
      'alkalinity: 4.39 meq/L',
      'conductivity: 1000 µS/cm',
    );
    const warning = findings.find(({ path }) => path === 'waters[0].conductivity');
    expect(warning).toMatchObject({ severity: 'warning', line: 24, value: '1000 µS/cm' });
  });
});
