import type { EnclosureFile } from '@shoreglass/contract';
import { useState } from 'react';
import { useLocation } from 'wouter';
import { editText } from '../../../engine-client.ts';
import { historyFor, keepHistory, recordSaved, tellOf } from '../../../files/file-histories.ts';
import { type History, redone, undone } from '../../../files/history.ts';
import { useSaveEnclosure } from '../../../files/queries.ts';
import { Refused } from '../../../files/server.ts';
import type { Edit } from '../../../worker/messages.ts';
import { carryOver } from './carry-over.ts';

export interface FileChange {
  readonly busy: boolean;
  /** Why the last change could not be made. */
  readonly trouble: string | undefined;
  /** Makes a change and saves it, of an example a copy under an own name; tells whether that was done. */
  make(edits: readonly Edit[], words: string): Promise<boolean>;
  /** Puts the text back as it was before the last change, wherever that was made. */
  undo(): Promise<boolean>;
  /** Makes the change again that was taken back last. */
  redo(): Promise<boolean>;
}

const MOST_COPIES = 9;

/** Changes an enclosure file from a sheet: checked first, comments kept; every step can be taken back. */
export function useFileChange(file: EnclosureFile): FileChange {
  const save = useSaveEnclosure();
  const [trouble, setTrouble] = useState<string>();
  const [busy, setBusy] = useState(false);
  const [location, navigate] = useLocation();

  const saved = async (text: string): Promise<EnclosureFile> => {
    if (file.origin === 'own') return save.mutateAsync({ id: file.id, text, basedOn: file.version });
    return saveCopy(file.id, (id) => save.mutateAsync({ id, text, basedOn: null }));
  };
  const carefully = async (work: () => Promise<void>) => {
    setBusy(true);
    setTrouble(undefined);
    try {
      await work();
      return true;
    } catch (error) {
      setTrouble(`Nothing was changed. ${error instanceof Error ? error.message : String(error)}`);
      return false;
    } finally {
      setBusy(false);
    }
  };
  const step = (move: (history: History) => History, words: (before: History) => string) =>
    carefully(async () => {
      const before = historyFor(file);
      const after = move(before);
      if (after === before) return;
      await save.mutateAsync({ id: file.id, text: after.text, basedOn: file.version });
      keepHistory(file.id, after);
      tellOf(file.id, words(before));
    });
  return {
    busy,
    trouble,
    make: (edits, words) =>
      carefully(async () => {
        const edited = await editText(file.text, `${file.id}.yaml`, edits);
        const blocked = edited.findings.find(({ severity }) => severity === 'blocking');
        if (blocked) throw new Error(`${blocked.message}. ${blocked.mend}`);
        const after = await saved(edited.text);
        recordSaved(file, after, words);
        tellOf(after.id, words);
        if (after.id === file.id) return;
        carryOver(file.id, after.id);
        navigate(location.replace(`/${file.id}`, `/${after.id}`));
      }),
    undo: () => step(undone, (before) => `Taken back: ${before.past.at(-1)?.words ?? ''}`),
    redo: () => step(redone, (before) => `Done again: ${before.future[0]?.words ?? ''}`),
  };
}

/** Saves under `my-<name>`, or with a number where that exists already. */
async function saveCopy(id: string, save: (id: string) => Promise<EnclosureFile>): Promise<EnclosureFile> {
  for (let copy = 1; ; copy++) {
    try {
      return await save(copy === 1 ? `my-${id}` : `my-${id}-${copy}`);
    } catch (error) {
      if (!(error instanceof Refused && error.status === 409) || copy >= MOST_COPIES) throw error;
    }
  }
}
