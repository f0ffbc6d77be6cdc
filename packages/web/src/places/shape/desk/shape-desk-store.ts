import type { EnclosureEdit, EnclosureFile, Finding } from '@shoreglass/contract';
import { createStore, type StoreApi } from 'zustand';
import { historyFor, keepHistory } from '../../../files/file-histories.ts';
import { changed, type History, redone, settled, undone } from '../../../files/history.ts';
import type { ShapeReading, SoundShape } from '../../../worker/shape-orders.ts';
import { forgetDraft, recallDraft, rememberDraft } from '../../enclosures/draft.ts';
import { type ShapeReader, shapeReader } from './shape-reader.ts';

/** A change of the shape: what it does to the file, worked out on what the file then says. */
export interface Command {
  /** What it is called when it is undone: "Water level". */
  readonly words: string;
  /** Handle it concerns, beside which a refusal is told. */
  readonly about?: string;
  readonly merge?: string;
  edits(shape: SoundShape): readonly EnclosureEdit[];
}

/** Why a change was not made. */
export interface Refusal {
  readonly about: string | undefined;
  readonly findings: readonly Pick<Finding, 'message' | 'mend'>[];
}

export interface DeskState {
  readonly history: History;
  /** The text the server has, and its version. */
  readonly saved: { readonly text: string; readonly version: string };
  /** What the text says; absent until it was read. */
  readonly reading: ShapeReading | undefined;
  /** What it would say if what is being dragged were let go. */
  readonly glance: ShapeReading | undefined;
  readonly refusal: Refusal | undefined;
  /** The worker could not be loaded, or failed. */
  readonly failure: Error | undefined;
  /** The text is what was written here before and not saved. */
  readonly fromDraft: boolean;
}

export interface Desk extends StoreApi<DeskState> {
  run(command: Command): void;
  /** Shows what a change would do, without making it. */
  look(command: Command): void;
  /** Ends looking. */
  lookAway(): void;
  settle(): void;
  undo(): void;
  redo(): void;
  /** Back to what the server has; can be undone. */
  startAgain(): void;
  readAgain(): void;
  /** The server has this text now. */
  keptAs(file: EnclosureFile): void;
  end(): void;
}

export const isSound = (reading: ShapeReading | undefined): reading is ShapeReading & { sound: SoundShape } =>
  reading?.sound !== undefined;

/** The desk of one file: its text, everything done to it here and in other places, and what it says. */
export function createDesk(file: EnclosureFile, reader: ShapeReader = shapeReader(`${file.id}.yaml`)): Desk {
  const draft = recallDraft(file.id);
  const fromDraft = draft !== undefined && draft.text !== file.text;
  const store = createStore<DeskState>(() => ({
    history: historyFor(file, fromDraft ? draft.text : file.text),
    saved: { text: file.text, version: (fromDraft ? draft.basedOn : undefined) ?? file.version },
    reading: undefined,
    glance: undefined,
    refusal: undefined,
    failure: undefined,
    fromDraft,
  }));
  const { getState, setState } = store;
  let queue: Promise<void> = Promise.resolve();
  let turns = 0;
  let shown = 0;

  const inTurn = (work: () => Promise<void>) => {
    queue = queue.then(work).catch((error: unknown) => {
      setState({ failure: error instanceof Error ? error : new Error(String(error)), glance: undefined });
    });
  };
  const show = (history: History, reading: ShapeReading) => {
    keepHistory(file.id, history);
    setState({ history, reading, glance: undefined, refusal: undefined, failure: undefined });
    if (history.text === getState().saved.text) forgetDraft(file.id);
    else rememberDraft(file.id, { text: history.text, basedOn: getState().saved.version });
  };
  const goTo = (where: (history: History) => History) =>
    inTurn(async () => {
      const history = where(getState().history);
      if (history.text === getState().history.text && getState().reading) return setState({ history });
      show(history, await reader.read({ text: history.text, edits: [] }));
    });

  goTo((history) => history);
  return {
    ...store,
    run: (command) => {
      shown = turns + 1;
      inTurn(async () => {
        const { reading, history } = getState();
        if (!isSound(reading)) return;
        const next = await reader.read({ text: history.text, edits: command.edits(reading.sound) });
        if (!next.sound) return setState({ refusal: refusalOf(next, command), glance: undefined });
        show(changed(history, { text: next.text, words: command.words, merge: command.merge }), next);
      });
    },
    look: (command) => {
      const { reading, history } = getState();
      if (!isSound(reading)) return;
      const turn = ++turns;
      const asked = { text: history.text, edits: command.edits(reading.sound) };
      void reader.glance(asked).then((glance) => {
        // An answer that comes after letting go, or after a newer one, says nothing any more.
        if (glance === undefined || turn < shown || getState().history !== history) return;
        shown = turn;
        if (glance.sound) setState({ glance, refusal: undefined });
        else setState({ refusal: refusalOf(glance, command) });
      });
    },
    lookAway: () => {
      shown = turns + 1;
      setState({ glance: undefined });
    },
    settle: () => setState({ history: settled(getState().history) }),
    undo: () => goTo(undone),
    redo: () => goTo(redone),
    startAgain: () =>
      goTo((history) =>
        changed(history, { text: getState().saved.text, words: 'Going back to the saved text' }),
      ),
    readAgain: () =>
      inTurn(async () =>
        show(getState().history, await reader.read({ text: getState().history.text, edits: [] })),
      ),
    keptAs: ({ text, version }) => {
      setState({ saved: { text, version }, fromDraft: false });
      if (getState().history.text === text) forgetDraft(file.id);
    },
    end: () => reader.end(),
  };
}

function refusalOf({ findings }: ShapeReading, { about }: Command): Refusal {
  return { about, findings: findings.filter(({ severity }) => severity === 'blocking') };
}
