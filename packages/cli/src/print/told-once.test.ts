import { expect, it } from 'vitest';
import { type Told, toldOnce } from './told-once.ts';

const told = (name: string, message: string, more: Partial<Told> = {}): Told => ({
  severity: 'note',
  name,
  message,
  mend: 'Wash hands.',
  source: 'a',
  ...more,
});

it('the same reason for several animals is told once, with all their names', () => {
  const [one, ...others] = toldOnce([
    told('water lice', 'Water lice: Wash hands after work'),
    told('blackworms', 'Blackworms: Wash hands after work'),
    told('cherry shrimp', 'Cherry shrimp: Wash hands after work'),
  ]);
  expect(others).toEqual([]);
  expect(one?.sentences.map(({ text }) => text)).toEqual([
    'Water lice, blackworms and cherry shrimp: Wash hands after work',
  ]);
  expect(one?.sentences[0]?.of).toHaveLength(3);
});

it('different sentences with the same help and source share these', () => {
  const groups = toldOnce([
    told('mudskippers', 'Mudskippers climb and jump'),
    told('fiddler crabs', 'Fiddler crabs climb'),
    told('newts', 'Newts carry poison', { mend: 'Keep them alone.' }),
  ]);
  expect(groups.map(({ sentences }) => sentences.map(({ text }) => text))).toEqual([
    ['Mudskippers climb and jump', 'Fiddler crabs climb'],
    ['Newts carry poison'],
  ]);
});

it('a warning and a note are never one, and what has no help stands by itself in its place', () => {
  const groups = toldOnce([
    told('newts', 'Newts eat worms', { severity: 'warning' }),
    told('newts', 'Newts eat worms'),
    { severity: 'note', message: 'Clay floats', mend: '' },
    { severity: 'note', message: 'Soil brings germs', mend: '' },
  ]);
  expect(groups.map(({ first }) => `${first.severity} ${first.message}`)).toEqual([
    'warning Newts eat worms',
    'note Newts eat worms',
    'note Clay floats',
    'note Soil brings germs',
  ]);
});

it('a name within a sentence is no reason to join two', () => {
  const [one] = toldOnce([
    told('newts', 'Blackworms are eaten by newts'),
    told('frogs', 'Blackworms are eaten by frogs'),
  ]);
  expect(one?.sentences).toHaveLength(2);
});
