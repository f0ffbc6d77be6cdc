import type { EnclosureFile } from '@shoreglass/contract';
import { Link } from 'wouter';
import desk from '../desk.module.css';
import styles from './change-note.module.css';
import { useLastChange } from './last-change.ts';
import { useFileChange } from './use-file-change.ts';

/** What a sheet last changed in the file, and the way back. */
export function ChangeNote({ file }: { readonly file: EnclosureFile }) {
  const change = useLastChange((state) => state.change);
  const { undo, busy, trouble } = useFileChange(file);
  const here = change?.id === file.id ? change : undefined;
  return (
    <div role="status" className={here ? styles.note : undefined}>
      {here && (
        <>
          <p>
            {here.words} <Link href={`/enclosures/${file.id}`}>{file.id}.yaml</Link>
          </p>
          {here.before !== undefined && (
            <button type="button" className={desk.quiet} disabled={busy} onClick={() => void undo()}>
              Undo
            </button>
          )}
          {trouble !== undefined && <p>{trouble}</p>}
        </>
      )}
    </div>
  );
}
