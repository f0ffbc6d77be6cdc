import { type EnclosureFile, isEnclosureId } from '@shoreglass/contract';
import { useState } from 'react';
import { useSaveEnclosure } from '../../../files/queries.ts';
import { Refused, ServerGone } from '../../../files/server.ts';

interface SavingOptions {
  /** Own file that is written over, and the version the text was written from; absent where it needs a name first. */
  readonly target: { readonly id: string; readonly basedOn: string } | undefined;
  /** The name that is offered where one is needed. */
  readonly suggested: string;
}

export interface Saving {
  readonly busy: boolean;
  /** The name it will have, where it needs one; otherwise undefined. */
  readonly name: string | undefined;
  rename(name: string): void;
  /** Why it was not saved the last time. */
  readonly trouble: string | undefined;
  /** The text is another now: what stood in the way is old. */
  startOver(): void;
  /** Saves a text, offering it another name than so far if one is given; tells the file, or nothing where it could not be done. */
  keep(text: string, offered?: string): Promise<EnclosureFile | undefined>;
}

/** Saving a text over its own file, or under a name; a file that was changed elsewhere is never written over. */
export function useSaving({ target, suggested }: SavingOptions): Saving {
  const [typedName, rename] = useState<string>();
  const [trouble, setTrouble] = useState<string>();
  const [mustRename, setMustRename] = useState(false);
  const save = useSaveEnclosure();
  const named = target === undefined || mustRename;
  const idBy = (offered: string) => (named ? (typedName ?? offered) : target.id);
  return {
    busy: save.isPending,
    name: named ? idBy(suggested) : undefined,
    rename,
    trouble,
    startOver: () => setTrouble(undefined),
    keep: async (text, offered = suggested) => {
      const id = idBy(offered);
      setTrouble(undefined);
      if (!isEnclosureId(id)) {
        setTrouble('it needs a name first, of a-z, 0-9 and single hyphens, such as alder-corner.');
        return undefined;
      }
      try {
        return await save.mutateAsync({ id, text, basedOn: named ? null : target.basedOn });
      } catch (error) {
        if (error instanceof Refused && error.status === 409) setMustRename(true);
        setTrouble(sentenceFor(error));
        return undefined;
      }
    },
  };
}

function sentenceFor(error: unknown): string {
  if (error instanceof Refused) return error.message;
  const why = error instanceof ServerGone ? error.message : 'the reason is unknown.';
  return `${why} The text stays here on this device meanwhile.`;
}
