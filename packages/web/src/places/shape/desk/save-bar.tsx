import { type EnclosureFile, isEnclosureId } from '@shoreglass/contract';
import { type FormEvent, useState } from 'react';
import { Link } from 'wouter';
import { useStore } from 'zustand';
import { useSaveEnclosure } from '../../../files/queries.ts';
import { Refused, ServerGone } from '../../../files/server.ts';
import { slugOf } from '../../enclosures/slug.ts';
import styles from './save-bar.module.css';
import type { Desk } from './shape-desk-store.ts';

interface SaveBarProps {
  readonly file: EnclosureFile;
  readonly desk: Desk;
  /** It was saved under another name. */
  readonly onMoved: (id: string) => void;
}

/** Whether the shape is saved, and the way to save it. Until then it is kept on this device. */
export function SaveBar({ file, desk, onMoved }: SaveBarProps) {
  const { text } = useStore(desk, ({ history }) => history);
  const saved = useStore(desk, (state) => state.saved);
  const [typedName, setTypedName] = useState<string>();
  const [trouble, setTrouble] = useState<string>();
  const [mustRename, setMustRename] = useState(false);
  const save = useSaveEnclosure();
  const changed = text !== saved.text;
  const named = file.origin === 'example' || mustRename;
  const id = named ? (typedName ?? slugOf(`my ${file.name}`)) : file.id;

  const keep = async (event: FormEvent) => {
    event.preventDefault();
    setTrouble(undefined);
    if (!isEnclosureId(id))
      return setTrouble('It needs a name of a-z, 0-9 and single hyphens, such as alder-corner.');
    try {
      const kept = await save.mutateAsync({ id, text, basedOn: named ? null : saved.version });
      desk.keptAs(named ? { ...file, text: kept.text } : kept);
      if (kept.id !== file.id) onMoved(kept.id);
    } catch (error) {
      if (error instanceof Refused && error.status === 409) setMustRename(true);
      setTrouble(sentenceFor(error));
    }
  };

  return (
    <form className={styles.save} onSubmit={keep} noValidate>
      <p role="status" className={styles.state}>
        {trouble !== undefined ? `Not saved: ${trouble}` : stateWords(changed, file)}
        {!changed && (
          <>
            {' '}
            <Link href={`/ahead/${file.id}`}>Look ahead</Link>
          </>
        )}
      </p>
      {changed && (
        <div className={styles.ways}>
          {named && (
            <label className={styles.name}>
              <span>Save as</span>
              <input
                value={id}
                onChange={(event) => setTypedName(event.target.value)}
                spellCheck={false}
                autoCapitalize="off"
                autoComplete="off"
              />
            </label>
          )}
          <button type="button" className={styles.back} onClick={desk.startAgain}>
            Back to the saved text
          </button>
          <button type="submit" className={styles.keep} disabled={save.isPending}>
            {save.isPending ? 'Saving …' : 'Save'}
          </button>
        </div>
      )}
    </form>
  );
}

function stateWords(changed: boolean, { origin }: EnclosureFile): string {
  if (!changed) return origin === 'example' ? 'The example, unchanged.' : 'Saved.';
  return 'Changed. Kept on this device until you save it.';
}

function sentenceFor(error: unknown): string {
  if (error instanceof Refused) return error.message;
  if (error instanceof ServerGone) return `${error.message} What you shaped stays here on this device.`;
  return 'for a reason unknown. What you shaped stays here on this device.';
}
