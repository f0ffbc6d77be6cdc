import type { Conflict } from '@shoreglass/engine';
import { Link } from 'wouter';
import { unbroken } from '../../../app/unbroken.ts';
import desk from '../../sheets/desk.module.css';
import styles from './conflict-list.module.css';
import type { Way } from './conflict-ways.ts';
import type { Draft } from './draft.ts';

/** So many notes are shown without being asked for. */
const FEW = 6;

interface ConflictListProps {
  readonly conflicts: readonly Conflict[];
  /** As the file stands, without what is on the sheet. */
  readonly before: readonly Conflict[];
  readonly changed: boolean;
  readonly stale: boolean;
  readonly means: ConflictMeans;
}

/** How conflicts are resolved from the list. */
export interface ConflictMeans {
  waysOf(conflict: Conflict): readonly Way[];
  /** Makes a change on the sheet; it is not in the file yet. */
  change(how: (draft: Draft) => Draft): void;
  nameOf(id: string): string;
}

/** What does not go together, in sentences: first what will go wrong, then what is worth knowing. */
export function ConflictList({ conflicts, before, changed, stale, means }: ConflictListProps) {
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
      <h2 id="conflicts" tabIndex={-1}>
        What does not go together
      </h2>
      <p role="status" className={styles.count}>
        {countWords(conflicts)}
        {stale ? ' Looking again …' : changed && changeWords(conflicts.filter(isNew).length, gone.length)}
      </p>
      <Sentences conflicts={warnings} isNew={isNew} means={means} />
      <Sentences conflicts={fresh} isNew={isNew} means={means} />
      {others.length > 0 && (
        <details open={!changed && others.length <= FEW}>
          <summary className={desk.fold}>
            {others.length} {fresh.length > 0 ? 'more ' : ''}worth knowing
          </summary>
          <Sentences conflicts={others} isNew={isNew} means={means} />
        </details>
      )}
    </section>
  );
}

/** Brings the list into sight, and the reader's place with it. */
export function goToConflicts(): void {
  const heading = document.getElementById('conflicts');
  heading?.scrollIntoView({ block: 'start' });
  heading?.focus({ preventScroll: true });
}

/** "10 things will probably go wrong; 34 worth knowing." */
export function countWords(conflicts: readonly Conflict[]): string {
  const warnings = conflicts.filter(({ severity }) => severity === 'warning').length;
  const notes = conflicts.length - warnings;
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
  readonly means: ConflictMeans;
}

const SEVERITY = { warning: 'Will probably go wrong', note: 'Worth knowing' } as const;

function Sentences({ conflicts, isNew, means }: SentencesProps) {
  if (conflicts.length === 0) return null;
  return (
    <ul className={styles.list}>
      {conflicts.map((conflict) => (
        <li key={`${conflict.kind} ${conflict.sentence}`} data-severity={conflict.severity}>
          <p>
            {isNew(conflict) && <em className={styles.fresh}>new: </em>}
            {unbroken(conflict.sentence)}
          </p>
          <p className={styles.mend}>
            <span>What helps:</span> {unbroken(conflict.mend)}
          </p>
          <Ways conflict={conflict} means={means} />
          <p className={styles.source}>
            {SEVERITY[conflict.severity]}. Source: {conflict.source}.
            {conflict.who.length > 0 && ' In the library: '}
            {conflict.who.map((id, at) => (
              <span key={id}>
                {at > 0 && ', '}
                <Link href={`/library/organisms/${id}`}>{means.nameOf(id)}</Link>
              </span>
            ))}
          </p>
        </li>
      ))}
    </ul>
  );
}

function Ways({ conflict, means }: { readonly conflict: Conflict; readonly means: ConflictMeans }) {
  const ways = means.waysOf(conflict);
  if (ways.length === 0) return null;
  return (
    <p className={styles.ways}>
      {ways.map((way) =>
        'href' in way ? (
          <Link key={way.words} href={way.href} className={desk.link}>
            {way.words}
          </Link>
        ) : (
          <button
            key={way.words}
            type="button"
            className={desk.second}
            onClick={() => means.change(way.change)}
          >
            {way.words}
          </button>
        ),
      )}
    </p>
  );
}
