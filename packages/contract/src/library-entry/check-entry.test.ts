import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { checkEntry, isLibraryEntry } from './check-entry.ts';

const DATA = join(import.meta.dirname, '../../../library/data');
const text = (path: string): string => readFileSync(join(DATA, path), 'utf8');
const CRAB = text('organisms/geosesarma-dennerle.yaml');

describe('a file of one entry', () => {
  it('is told from an enclosure', () => {
    expect(isLibraryEntry(CRAB, 'geosesarma-dennerle.yaml')).toBe(true);
    expect(isLibraryEntry(text('enclosures/beck-bank.yaml'), 'beck-bank.yaml')).toBe(false);
    expect(isLibraryEntry('a: [', 'x.yaml')).toBe(false);
    for (const path of [
      'plants/lemna-minor',
      'feeds/flake',
      'materials/slate',
      'salts/gypsum',
      'waters/rain',
    ])
      expect(isLibraryEntry(text(`${path}.yaml`), `${path}.yaml`)).toBe(true);
  });
  it('tells which traits come from rules and what becomes of the animal', () => {
    const checked = checkEntry(CRAB, 'geosesarma-dennerle.yaml');
    if (checked.problems || !('animal' in checked)) throw new Error('not sound');
    const { traits, trial, page } = checked.animal;
    expect(traits.find(({ id }) => id === 'growthRate')?.from).toBe('a rule');
    expect(trial.staysFinite && trial.closure < 1e-9).toBe(true);
    expect(trial.young).toBeGreaterThan(10);
    expect(page.known?.level).toBe('poorly');
  });
  it('names line, key and mend of what is missing, misspelt or out of range', () => {
    const wrong = CRAB.replace('adultLength:', 'adultLenght:').replace("lengthMeasure: 'carapace width'", '');
    const { problems = [] } = checkEntry(wrong, 'geosesarma-dennerle.yaml');
    const said = problems.map(({ path, message }) => `${path} ${message}`);
    expect(said).toContain('lifeHistory.adultLength is missing');
    expect(said).toContain('lifeHistory.adultLenght is no key of such a file');
    expect(problems.every(({ line, mend }) => line > 1 && mend.length > 10)).toBe(true);
  });
  it('says in plain words what a value may be, and how it is mended', () => {
    const wrong = CRAB.replace(/habitat: .*/, "habitat: 'sea'")
      .replace("lengthMeasure: 'carapace width'", "lengthMeasure: 'w'")
      .replace(/^brood: .*\n/m, '');
    const { problems = [] } = checkEntry(wrong, 'geosesarma-dennerle.yaml');
    const said = problems.map(({ path, message, mend }) => `${path} ${message}. ${mend}`).join('\n');
    expect(said).toContain(
      "habitat is not one of the words allowed here. Write 'water', 'amphibious' or 'land'.",
    );
    expect(said).toContain("brood is missing. Write 'carried' or 'laid'.");
    expect(said).toMatch(/lifeHistory.lengthMeasure has fewer than \d letters/);
    expect(said).not.toMatch(/Invalid|expected|Too small/);
  });
  it('says when lengths contradict each other, in a sentence', () => {
    const wrong = CRAB.replace('lengthAtPuberty: { value: 9', 'lengthAtPuberty: { value: 40').replace(
      'min: 8, max: 10',
      'min: 8, max: 50',
    );
    const { problems = [] } = checkEntry(wrong, 'geosesarma-dennerle.yaml');
    expect(problems.map(({ message }) => message).join(' ')).toMatch(/lengths must rise from birth/);
  });
  it('asks for the name of the file', () => {
    const { problems = [] } = checkEntry(CRAB, 'vampire-crab.yaml');
    expect(problems[0]?.message).toContain('geosesarma-dennerle');
  });
});
