import { editEnclosure, listLibrary, openEnclosure } from '@shoreglass/contract';
import { library } from '@shoreglass/library';
import { describe, expect, test } from 'vitest';
import { carryOutLife, type LifeReading } from '../../../worker/life-orders.ts';
import type { Edit } from '../../../worker/messages.ts';
import { type Draft, draftEdits, draftOf, draftProblem, draftWords } from './draft.ts';
import { firstZone, withNewcomer } from './newcomer.ts';

const TEXT = library.enclosure('beck-bank');
const read = (text: string, edits: readonly Edit[] = []): LifeReading =>
  carryOutLife({ do: 'life', text, fileName: 'box.yaml', edits }) as LifeReading;
const nameOf = (list: 'animals' | 'plants', id: string) =>
  list === 'animals' ? library.organism(id).name : library.plant(id).name;
const sound = read(TEXT).sound;
if (!sound) throw new Error('the example has errors');
const base = draftOf(sound, nameOf);

/** The file after the draft's edits, one after the other, as it reads then. */
function after(draft: Draft) {
  const text = draftEdits(base, draft).reduce((so, { path, value }) => editEnclosure(so, path, value), TEXT);
  return { text, content: openEnclosure(text, 'box.yaml').document?.content };
}

describe('a draft of who lives here', () => {
  test('without changes makes no edits', () => {
    expect(draftEdits(base, base)).toEqual([]);
    expect(draftWords(base, base)).toBe('');
  });

  test('numbers, place and day change where they stand; comments stay', () => {
    const [first, ...others] = base.animals;
    if (!first) throw new Error('nobody lives in the example');
    const draft = { ...base, animals: [{ ...first, adults: '40', juveniles: '', after: '' }, ...others] };
    const { text, content } = after(draft);
    expect(content?.animals?.[0]).toEqual({ species: first.species, zone: first.zone, adults: 40 });
    expect(text.match(/#/g)?.length).toBe(TEXT.match(/#/g)?.length);
    expect(draftWords(base, draft)).toMatch(/changed\.$/);
  });

  test('some out and one in at once leaves the others as they were', () => {
    const entry = listLibrary(library).animals.find(({ id }) => id === 'asellus-aquaticus');
    if (!entry) throw new Error('the library has no water slaters');
    const grown = withNewcomer(base, 'animals', entry, sound.zones);
    const draft = { ...grown, animals: grown.animals.filter((_, at) => at !== 1 && at !== 2) };
    const { content } = after(draft);
    expect(content?.animals?.map(({ species }) => species)).toEqual([
      base.animals[0]?.species,
      base.animals[3]?.species,
      'asellus-aquaticus',
    ]);
    expect(content?.animals?.[2]?.zone).toBe('pool');
    expect(draftWords(base, draft)).toMatch(/^.* added; .* and .* taken out\.$/);
  });

  test('everybody out leaves a sound file', () => {
    const { content } = after({ animals: [], plants: [] });
    expect(content).toBeDefined();
    expect(content?.animals ?? []).toEqual([]);
    expect(content?.plants ?? []).toEqual([]);
  });

  test('a guest that may come along is written with its chance, and read back', () => {
    const [first, second, ...others] = base.animals;
    if (!first || !second) throw new Error('too few live in the example');
    const guest = { ...second, after: '', chance: '15' };
    const { text } = after({ ...base, animals: [first, guest, ...others] });
    const again = read(text).sound;
    expect(again && draftOf(again, nameOf).animals[1]).toEqual(guest);
  });

  test('what cannot be written is told with its name', () => {
    const [first, ...others] = base.animals;
    if (!first) throw new Error('nobody lives in the example');
    const wrong = { ...base, animals: [{ ...first, adults: '2.5' }, ...others] };
    expect(draftProblem(wrong)).toContain(`${first.name}: adults must be a whole number`);
    const none = { ...base, animals: [{ ...first, adults: '', juveniles: '' }, ...others] };
    expect(draftProblem(none)).toContain('say how many come');
    expect(draftProblem(base)).toBeUndefined();
  });
});

test('land animals begin on the bank, swimmers in the pool', () => {
  expect(firstZone(sound.zones, 'land')).toBe('bank');
  expect(firstZone(sound.zones, 'water')).toBe('pool');
});
