import type { Conflict } from '@shoreglass/engine';
import desk from '../../sheets/desk.module.css';
import styles from './conflict-list.module.css';
import { type ConflictMeans, ConflictTopic } from './conflict-topic.tsx';
import { concerned, topicsOf } from './conflict-topics.ts';

/** So many notes are shown without being asked for. */
const FEW = 6;
/** From so many warnings on, on one animal, it is said on whom most turns. */
const MANY = 3;

interface ConflictListProps {
  readonly conflicts: readonly Conflict[];
  /** As the file stands, without what is on the sheet. */
  readonly before: readonly Conflict[];
  readonly changed: boolean;
  readonly stale: boolean;
  readonly means: ConflictMeans;
}

/** What does not go together, in sentences: by topics: first what will go wrong, then what is worth knowing. */
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
      <Turning warnings={warnings} means={means} />
      <Topics conflicts={warnings} isNew={isNew} means={means} />
      <Topics conflicts={fresh} isNew={isNew} means={means} />
      {others.length > 0 && (
        <details open={!changed && others.length <= FEW}>
          <summary className={desk.fold}>
            {others.length} {fresh.length > 0 ? 'more ' : ''}
            {others.length === 1 ? 'lesser remark' : 'lesser remarks'}
          </summary>
          <Topics conflicts={others} isNew={isNew} means={means} />
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

/** "10 things will probably go wrong; 34 lesser remarks." */
export function countWords(conflicts: readonly Conflict[]): string {
  const warnings = conflicts.filter(({ severity }) => severity === 'warning').length;
  const notes = conflicts.length - warnings;
  if (warnings + notes === 0) return 'Nothing found.';
  const first =
    warnings === 0
      ? 'Nothing here is likely to go wrong'
      : `${warnings} ${warnings === 1 ? 'thing' : 'things'} will probably go wrong`;
  return notes === 0 ? `${first}.` : `${first}; ${notes} lesser ${notes === 1 ? 'remark' : 'remarks'}.`;
}

function changeWords(fresh: number, gone: number): string {
  if (fresh + gone === 0) return ' Your change brings nothing new.';
  const parts = [fresh > 0 ? `brings ${fresh} new` : '', gone > 0 ? `settles ${gone}` : ''];
  return ` Your change ${parts.filter((part) => part !== '').join(' and ')}.`;
}

interface TurningProps {
  readonly warnings: readonly Conflict[];
  readonly means: ConflictMeans;
}

/** On whom most of what will go wrong turns, where that is much. */
function Turning({ warnings, means }: TurningProps) {
  const [most, ...others] = concerned(warnings).filter(({ count }) => count >= MANY);
  if (!most || most.count === warnings.length) return null;
  const also = others.slice(0, 2).map(({ id, count }) => `${count} on ${means.nameOf(id)}`);
  return (
    <p className={styles.turning}>
      {most.count} of the {warnings.length} turn on {means.nameOf(most.id)}
      {also.length > 0 && `, ${also.join(', ')}`}: who is taken out takes them along.
    </p>
  );
}

interface TopicsProps {
  readonly conflicts: readonly Conflict[];
  readonly isNew: (conflict: Conflict) => boolean;
  readonly means: ConflictMeans;
}

function Topics({ conflicts, isNew, means }: TopicsProps) {
  if (conflicts.length === 0) return null;
  return (
    <ul className={styles.list}>
      {topicsOf(conflicts, means.nameOf).map((topic) => (
        <ConflictTopic key={topic.heading} topic={topic} isNew={isNew} means={means} />
      ))}
    </ul>
  );
}
