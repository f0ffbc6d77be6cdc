import type { EnclosureFile } from '@shoreglass/contract';
import { capital } from '../../../outlook/turning-words.ts';
import type { Edit } from '../../../worker/messages.ts';
import desk from '../../sheets/desk.module.css';
import { useFileChange } from '../../sheets/file/use-file-change.ts';
import { goToConflicts } from './conflict-list.tsx';
import { type Draft, draftWords } from './draft.ts';
import styles from './draft-bar.module.css';

interface DraftBarProps {
  readonly file: EnclosureFile;
  readonly base: Draft;
  readonly draft: Draft;
  readonly edits: readonly Edit[];
  /** Why the sheet cannot go into the file as it stands. */
  readonly problem: string | undefined;
  readonly warnings: number;
  readonly onLeave: () => void;
}

/** What the sheet would change in the file, and the way to do it or to leave it. */
export function DraftBar({ file, base, draft, edits, problem, warnings, onLeave }: DraftBarProps) {
  const { make, busy, trouble } = useFileChange(file);
  const words = draftWords(base, draft);
  const put = async () => {
    if (await make(edits, words)) onLeave();
  };
  return (
    <section className={styles.bar} aria-label="Changes not in the file yet">
      <p role="status">
        {capital(problem ?? trouble ?? words)}
        {problem === undefined && warnings > 0 && (
          <>
            {' '}
            <button type="button" className={styles.jump} onClick={goToConflicts}>
              {warnings} {warnings === 1 ? 'thing' : 'things'} to mind
            </button>
          </>
        )}
      </p>
      <div className={styles.ways}>
        <button type="button" className={desk.second} disabled={busy} onClick={onLeave}>
          Leave it
        </button>
        <button
          type="button"
          className={desk.primary}
          disabled={busy || problem !== undefined}
          onClick={() => void put()}
        >
          Put into the file
        </button>
      </div>
      {file.origin === 'example' && (
        <p className={styles.copy}>The example stays as it is; the change goes into a copy of your own.</p>
      )}
    </section>
  );
}
