import { type EnclosureFile, editEnclosureAll, openEnclosure } from '@shoreglass/contract';
import { shapeSheet } from '@shoreglass/engine';
import { library } from '@shoreglass/library';
import { expect, test } from 'vitest';
import type { ShapeReading } from '../../../worker/shape-orders.ts';
import { forgetDraft, recallDraft } from '../../enclosures/draft.ts';
import { type Command, createDesk, type Desk } from './shape-desk-store.ts';
import type { ShapeReader } from './shape-reader.ts';

const TEXT = library.data.enclosures['beck-bank'] ?? '';
const FILE: EnclosureFile = {
  id: 'desk-under-test',
  name: 'Beck bank',
  origin: 'own',
  text: TEXT,
  version: 'v1',
  findings: [],
};

function readingOf(text: string): ShapeReading {
  const { document, plan, findings } = openEnclosure(text, 'a.yaml');
  if (!document || !plan) return { text, findings };
  const sheet = shapeSheet(plan);
  return { text, findings, sound: { name: 'a', content: document.content, plan, sheet, materials: [] } };
}

/** Reads in this thread; glances are answered when the test says so. */
function readerByHand() {
  const answers: (() => void)[] = [];
  const reader: ShapeReader = {
    read: async ({ text, edits }) => readingOf(editEnclosureAll(text, edits)),
    glance: ({ text, edits }) =>
      new Promise((answer) => answers.push(() => answer(readingOf(editEnclosureAll(text, edits))))),
    end: () => undefined,
  };
  return { reader, answers };
}

const level = (value: string): Command => ({
  words: 'Water level',
  about: 'water',
  edits: () => [{ path: ['water', 'level'], value }],
});

/** Waits until the desk is as wished; a desk that failed never will be. */
async function when(desk: Desk, test: (state: ReturnType<Desk['getState']>) => boolean): Promise<void> {
  await new Promise<void>((done, fail) => {
    const look = (state: ReturnType<Desk['getState']>) => {
      if (state.failure) fail(state.failure);
      else if (test(state)) done();
    };
    desk.subscribe(look);
    look(desk.getState());
  });
}

const levelOf = (reading: ShapeReading | undefined) => reading?.sound?.content.water.level;

test('a change is read, kept on the device and undone to the letter', async () => {
  const desk = createDesk(FILE, readerByHand().reader);
  desk.run(level('18 cm'));
  await when(desk, ({ reading }) => levelOf(reading) === 0.18);
  expect(recallDraft(FILE.id)).toEqual({ text: desk.getState().history.text, basedOn: 'v1' });
  desk.undo();
  await when(desk, ({ history }) => history.text === TEXT);
  expect(recallDraft(FILE.id), 'nothing is left to save').toBeUndefined();
  desk.redo();
  await when(desk, ({ reading }) => levelOf(reading) === 0.18);
  forgetDraft(FILE.id);
});

test('changes in quick succession are made one after the other, each on what the one before left', async () => {
  const desk = createDesk(FILE, readerByHand().reader);
  const higher: Command = {
    words: 'Water level',
    merge: 'step',
    edits: ({ content }) => [
      { path: ['water', 'level'], value: `${Math.round(content.water.level * 1000 + 10) / 10} cm` },
    ],
  };
  for (let step = 0; step < 3; step++) desk.run(higher);
  await when(desk, ({ reading }) => Math.abs((levelOf(reading) ?? 0) - 0.195) < 1e-9);
  expect(desk.getState().history.past).toHaveLength(1);
  forgetDraft(FILE.id);
});

test('a change that would leave the text unsound is refused with its reason and changes nothing', async () => {
  const desk = createDesk(FILE, readerByHand().reader);
  desk.run(level('70 cm'));
  await when(desk, ({ refusal }) => refusal !== undefined);
  const { refusal, history } = desk.getState();
  expect(refusal?.about).toBe('water');
  expect(refusal?.findings[0]?.message).toContain('run over the rim');
  expect(history.text).toBe(TEXT);
});

test('a glance that is answered after letting go says nothing any more', async () => {
  const { reader, answers } = readerByHand();
  const desk = createDesk(FILE, reader);
  await when(desk, ({ reading }) => reading !== undefined);
  desk.look(level('17 cm'));
  answers.shift()?.();
  await when(desk, ({ glance }) => levelOf(glance) === 0.17);
  desk.look(level('19 cm'));
  desk.lookAway();
  answers.shift()?.();
  // The answer goes through promises alone; the next turn of the loop comes after all of them.
  await new Promise((turn) => setTimeout(turn));
  expect(desk.getState().glance).toBeUndefined();
  expect(desk.getState().history.text).toBe(TEXT);
});

test('what was kept on the device is taken up, and saving ends it', async () => {
  const first = createDesk(FILE, readerByHand().reader);
  first.run(level('18 cm'));
  await when(first, ({ reading }) => levelOf(reading) === 0.18);
  const second = createDesk(FILE, readerByHand().reader);
  await when(second, ({ reading }) => reading !== undefined);
  expect(second.getState().fromDraft).toBe(true);
  const { text } = second.getState().history;
  second.keptAs({ ...FILE, text, version: 'v2' });
  expect(second.getState().saved).toEqual({ text, version: 'v2' });
  expect(recallDraft(FILE.id)).toBeUndefined();
});
