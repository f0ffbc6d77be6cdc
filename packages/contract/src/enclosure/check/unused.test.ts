import { library } from '@shoreglass/library';
import { describe, expect, it } from 'vitest';
import { readEnclosure } from '../read/read-enclosure.ts';
import { checkEnclosure } from './check-enclosure.ts';

const DEMO = library.enclosure('beck-bank');

function notesOf(text: string) {
  const { document, problems } = readEnclosure(text, 'a.yaml');
  if (!document) throw new Error(problems.map(({ message }) => message).join('; '));
  return checkEnclosure(document).findings.filter(({ severity }) => severity === 'note');
}

const WELL = 'waters:\n  - { id: well, hardness: 20 °dGH, alkalinity: 14 °dKH }\n';

describe('what is described and used nowhere', () => {
  it('the demo has nothing of it', () => {
    expect(
      notesOf(DEMO).filter(({ message }) => /nowhere|ever comes|nothing is done|covers 0 %/.test(message)),
    ).toEqual([]);
  });
  it('a water is told at its line, and one that a water-change names is not', () => {
    const [told] = notesOf(`${DEMO}\n${WELL}`).filter(({ message }) => message.includes('nowhere'));
    expect(told).toMatchObject({
      path: 'waters[0].id',
      message: 'the water well is described and used nowhere',
    });
    expect(told?.line).toBe(`${DEMO}\n`.split('\n').length + 1);
    const used = DEMO.replace(
      'routines:',
      'routines:\n  - { do: water-change, share: 10 %, water: well, every: 30 d }',
    );
    expect(notesOf(`${used}\n${WELL}`).some(({ message }) => message.includes('nowhere'))).toBe(false);
  });
  it('animals of whom none is there or comes, and care that touches nobody', () => {
    const text = DEMO.replace('animals:', 'animals:\n  - { species: physella-acuta, zone: pool }').replace(
      'routines:',
      'routines:\n  - { do: remove-animals, species: physella-acuta, every: 7 d }',
    );
    const messages = notesOf(text).map(({ message }) => message);
    expect(messages).toContain('bladder snails are listed, and none is there or ever comes');
    expect(messages).toContain(
      'remove-animals of physella-acuta names no adults and no juveniles, so that nothing is done',
    );
    const coming = text.replace(
      'remove-animals, species: physella-acuta, every: 7 d',
      'remove-animals, species: physella-acuta, adults: 3, every: 7 d',
    );
    expect(notesOf(coming).some(({ message }) => message.includes('nothing is done'))).toBe(false);
  });
});

describe('law and poison of plants', () => {
  it('are told with their source, and no caution repeats them', () => {
    const text = DEMO.replace('plants:', 'plants:\n  - { plant: elodea-nuttallii, zone: pool, cover: 1 % }');
    const told = notesOf(text).filter(({ name }) => name === "Nuttall's waterweed");
    expect(told).toHaveLength(1);
    expect(told[0]).toMatchObject({
      message: expect.stringMatching(/Union list/),
      source: expect.stringMatching(/1143\/2014/),
    });
  });
});
