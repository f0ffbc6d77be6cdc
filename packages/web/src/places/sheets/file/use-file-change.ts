import type { EnclosureFile } from '@shoreglass/contract';
import { useState } from 'react';
import { useLocation } from 'wouter';
import { editText } from '../../../engine-client.ts';
import { useSaveEnclosure } from '../../../files/queries.ts';
import { Refused } from '../../../files/server.ts';
import type { Edit } from '../../../worker/messages.ts';
import { carryOver } from './carry-over.ts';
import { useLastChange } from './last-change.ts';

export interface FileChange {
  readonly busy: boolean;
  /** Why the last change could not be made. */
  readonly trouble: string | undefined;
  /** Makes a change and saves it, of an example a copy under an own name; tells whether that was done. */
  make(edits: readonly Edit[], words: string): Promise<boolean>;
  /** Puts the text back as it was before the last change. */
  undo(): Promise<boolean>;
}

const MOST_COPIES = 9;

/** Changes an enclosure file from a sheet: checked first, comments kept, and the text before is held for undoing. */
export function useFileChange(file: EnclosureFile): FileChange {
  const save = useSaveEnclosure();
  const [trouble, setTrouble] = useState<string>();
  const [busy, setBusy] = useState(false);
  const [location, navigate] = useLocation();
  const { change, tell } = useLastChange();

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
  return {
    busy,
    trouble,
    make: (edits, words) =>
      carefully(async () => {
        const edited = await editText(file.text, `${file.id}.yaml`, edits);
        const blocked = edited.findings.find(({ severity }) => severity === 'blocking');
        if (blocked) throw new Error(`${blocked.message}. ${blocked.mend}`);
        const after = await saved(edited.text);
        tell({ id: after.id, words, before: file.text });
        if (after.id === file.id) return;
        carryOver(file.id, after.id);
        navigate(location.replace(`/${file.id}`, `/${after.id}`));
      }),
    undo: () =>
      carefully(async () => {
        if (change?.before === undefined || change.id !== file.id) return;
        await save.mutateAsync({ id: file.id, text: change.before, basedOn: file.version });
        tell({ id: file.id, words: 'The file is as it was before.', before: undefined });
      }),
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
