import type { EnclosureFile } from '@shoreglass/contract';
import { Link } from 'wouter';
import { useFileHistories, useHistoryFor } from '../../../files/file-histories.ts';
import desk from '../desk.module.css';
import styles from './change-note.module.css';
import { useFileChange } from './use-file-change.ts';

/** What was last done to the file, in whatever place, and the way back and on again. */
export function ChangeNote({ file }: { readonly file: EnclosureFile }) {
  const told = useFileHistories((state) => (state.told?.id === file.id ? state.told.words : undefined));
  const { undo, redo, busy, trouble } = useFileChange(file);
  const { past, future } = useHistoryFor(file);
  const [last, next] = [past.at(-1), future[0]];
  const shown = last !== undefined || next !== undefined;
  return (
    <div role="status" className={shown ? styles.note : undefined}>
      {shown && (
        <>
          <p>
            {told ?? last?.words ?? `Taken back: ${next?.words}`}{' '}
            <Link href={`/enclosures/${file.id}`}>{file.id}.yaml</Link>
          </p>
          {last && (
            <button
              type="button"
              className={desk.quiet}
              disabled={busy}
              title={`Undo: ${last.words}`}
              onClick={() => void undo()}
            >
              Undo
            </button>
          )}
          {next && (
            <button
              type="button"
              className={desk.quiet}
              disabled={busy}
              title={`Redo: ${next.words}`}
              onClick={() => void redo()}
            >
              Redo
            </button>
          )}
          {trouble !== undefined && <p>{trouble}</p>}
        </>
      )}
    </div>
  );
}
