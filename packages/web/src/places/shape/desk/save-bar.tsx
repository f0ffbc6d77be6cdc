import type { EnclosureFile } from '@shoreglass/contract';
import type { FormEvent } from 'react';
import { Link } from 'wouter';
import { useStore } from 'zustand';
import { keepHistory } from '../../../files/file-histories.ts';
import { SaveName } from '../../enclosures/saving/save-name.tsx';
import { useSaving } from '../../enclosures/saving/use-saving.ts';
import { slugOf } from '../../enclosures/slug.ts';
import sheet from '../../sheets/desk.module.css';
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
  const history = useStore(desk, (state) => state.history);
  const saved = useStore(desk, (state) => state.saved);
  const saving = useSaving({
    target: file.origin === 'own' ? { id: file.id, basedOn: saved.version } : undefined,
    suggested: slugOf(`my ${file.name}`),
  });
  const changed = history.text !== saved.text;

  const keep = async (event: FormEvent) => {
    event.preventDefault();
    const kept = await saving.keep(history.text);
    if (!kept) return;
    desk.keptAs(kept.id === file.id ? kept : { ...file, text: kept.text });
    if (kept.id === file.id) return;
    keepHistory(kept.id, history);
    onMoved(kept.id);
  };

  return (
    <form className={styles.save} onSubmit={keep} noValidate>
      <p role="status" className={styles.state}>
        {saving.trouble !== undefined ? `Not saved: ${saving.trouble}` : stateWords(changed, file)}
        {!changed && (
          <>
            {' '}
            <Link href={`/ahead/${file.id}`}>Look ahead</Link>
          </>
        )}
      </p>
      {changed && (
        <div className={styles.ways}>
          <SaveName saving={saving} />
          <button type="button" className={styles.back} onClick={desk.startAgain}>
            Back to the saved text
          </button>
          <button type="submit" className={sheet.primary} disabled={saving.busy} aria-busy={saving.busy}>
            {saving.busy ? 'Saving …' : 'Save'}
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
