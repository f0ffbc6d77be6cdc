import type { EnclosureFile } from '@shoreglass/contract';
import { useLibrary } from '../../../files/queries.ts';
import type { SoundLife } from '../../../worker/life-orders.ts';
import type { Edit } from '../../../worker/messages.ts';
import desk from '../../sheets/desk.module.css';
import { topicsOf } from '../who/conflict-topics.ts';
import { useLife } from '../who/use-life.ts';
import styles from './more-part.module.css';

interface FreshConflictsProps {
  readonly file: EnclosureFile;
  readonly saved: SoundLife;
  readonly edits: readonly Edit[];
  /** Told in one line until asked for, where several stand under one another. */
  readonly folded?: boolean;
}

/** What the addition would bring that does not go together with the others or the place. */
export function FreshConflicts({ file, saved, edits, folded = false }: FreshConflictsProps) {
  const { reading } = useLife(file, edits);
  const { data: library } = useLibrary();
  const nameOf = (id: string) => library?.animals.find((entry) => entry.id === id)?.name ?? id;
  const known = new Set(saved.conflicts.map(({ sentence }) => sentence));
  const fresh = (reading?.sound?.conflicts ?? []).filter(
    ({ severity, sentence }) => severity === 'warning' && !known.has(sentence),
  );
  if (fresh.length === 0) return null;
  const sentences = (
    <ul>
      {topicsOf(fresh, nameOf).flatMap(({ told }) =>
        told.map(({ sentence, mend }) => (
          <li key={sentence}>
            {sentence} <em>What helps:</em> {mend}
          </li>
        )),
      )}
    </ul>
  );
  if (folded)
    return (
      <details className={styles.fresh}>
        <summary className={desk.fold}>
          {fresh.length} {fresh.length === 1 ? 'thing speaks' : 'things speak'} against it here
        </summary>
        {sentences}
      </details>
    );
  return (
    <div className={styles.fresh}>
      <h3>They would not go together with what is here</h3>
      {sentences}
    </div>
  );
}
