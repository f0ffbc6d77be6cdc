import type { Conflict } from '@shoreglass/engine';
import styles from './conflict-list.module.css';

/** So many notes are shown without being asked for. */
const FEW = 6;

interface ConflictListProps {
  readonly conflicts: readonly Conflict[];
  /** As the file stands, without what is on the sheet. */
  readonly before: readonly Conflict[];
  readonly changed: boolean;
  readonly stale: boolean;
}

/** What does not go together, in sentences: first what will go wrong, then what is worth knowing. */
export function ConflictList({ conflicts, before, changed, stale }: ConflictListProps) {
  const known = new Set(before.map(({ sentence }) => sentence));
  const isNew = ({ sentence }: Conflict) => changed && !known.has(sentence);
  const warnings = conflicts.filter(({ severity }) => severity === 'warning');
  const notes = conflicts.filter(({ severity }) => severity === 'note');
  const fresh = notes.filter(isNew);
  const others = notes.filter((note) => !fresh.includes(note));
  const there = new Set(conflicts.map(({ sentence }) => sentence));
  const gone = before.filter(({ sentence }) => !there.has(sentence));
  return (
    <section aria-labelledby="conflicts" aria-busy={stale} className={styles.part}>
      <h2 id="conflicts">What does not go together</h2>
      <p role="status" className={styles.count}>
        {countWords(warnings.length, notes.length)}
        {stale ? ' Looking again …' : changed && changeWords(conflicts.filter(isNew).length, gone.length)}
      </p>
      <Sentences conflicts={warnings} isNew={isNew} />
      <Sentences conflicts={fresh} isNew={isNew} />
      {others.length > 0 && (
        <details className={styles.notes} open={!changed && others.length <= FEW}>
          <summary>
            {others.length} {fresh.length > 0 ? 'more ' : ''}worth knowing
          </summary>
          <Sentences conflicts={others} isNew={isNew} />
        </details>
      )}
    </section>
  );
}

function countWords(warnings: number, notes: number): string {
  if (warnings + notes === 0) return 'Nothing found.';
  const first =
    warnings === 0
      ? 'Nothing here will go wrong for certain'
      : `${warnings} ${warnings === 1 ? 'thing' : 'things'} will probably go wrong`;
  return notes === 0 ? `${first}.` : `${first}; ${notes} worth knowing.`;
}

function changeWords(fresh: number, gone: number): string {
  if (fresh + gone === 0) return ' Your change brings nothing new.';
  const parts = [fresh > 0 ? `brings ${fresh} new` : '', gone > 0 ? `settles ${gone}` : ''];
  return ` Your change ${parts.filter((part) => part !== '').join(' and ')}.`;
}

interface SentencesProps {
  readonly conflicts: readonly Conflict[];
  readonly isNew: (conflict: Conflict) => boolean;
}

function Sentences({ conflicts, isNew }: SentencesProps) {
  if (conflicts.length === 0) return null;
  return (
    <ul className={styles.list}>
      {conflicts.map((conflict) => (
        <li key={`${conflict.kind} ${conflict.sentence}`} data-severity={conflict.severity}>
          <p>
            {isNew(conflict) && <em className={styles.fresh}>new: </em>}
            {conflict.sentence}
          </p>
          <p className={styles.mend}>
            <span>What helps:</span> {conflict.mend}
          </p>
          <p className={styles.source}>{conflict.source}</p>
        </li>
      ))}
    </ul>
  );
}
