import { editEnclosure, openEnclosure } from '@shoreglass/contract';
import type { BufferOption } from '@shoreglass/engine';
import { library } from '@shoreglass/library';
import { expect, test } from 'vitest';
import { bufferEdits } from './buffer-edits.ts';

const TEXT = library.enclosure('beck-bank');
const share = { share: 0.95, low: 0.9, high: 0.98, runs: 120 };
const option: BufferOption = {
  material: 'crushed-coral',
  name: 'crushed coral, 2 to 4 mm',
  grain: 0.003,
  verdict: 'found',
  mass: 0.06,
  inBand: share,
  fresh: true,
  left: 0.4,
  tried: [],
  monotone: true,
  portions: [
    { day: 0, mass: 0.02 },
    { day: 1, mass: 0.02 },
    { day: 2, mass: 0.02 },
  ],
  gentle: true,
  sentence: '',
};

test('the first portion becomes a piece, the others work on their days, and the file stays sound', () => {
  const { document, plan: before } = openEnclosure(TEXT, 'beck-bank.yaml');
  const shelf = {
    pieces: (document?.content.hardscape ?? []).map(({ id }) => id),
    actions: document?.content.actions?.length ?? 0,
  };
  const text = bufferEdits(option, shelf).reduce(
    (so, { path, value }) => editEnclosure(so, path, value),
    TEXT,
  );
  const { plan, findings } = openEnclosure(text, 'beck-bank.yaml');
  expect(findings.filter(({ severity }) => severity === 'blocking')).toEqual([]);
  expect(plan?.hardscape.find(({ id }) => id === 'buffer')).toMatchObject({ mass: 0.02, kind: 'carbonate' });
  const added = plan?.actions.filter(({ kind }) => kind === 'add carbonate');
  expect(added?.map(({ day }) => day)).toEqual([1, 2]);
  expect(plan?.actions.length).toBe((before?.actions.length ?? 0) + 2);
  expect(text).toContain('# a sponge from a running tank');
});

test('a second buffer gets a name of its own', () => {
  const [piece] = bufferEdits(option, { pieces: ['buffer'], actions: 0 });
  expect(piece?.value).toMatchObject({ id: 'buffer-2' });
});
