import type { Conflict } from '@shoreglass/engine';
import { Link } from 'wouter';
import { unbroken } from '../../../app/unbroken.ts';
import desk from '../../sheets/desk.module.css';
import styles from './conflict-list.module.css';
import type { Told, Topic } from './conflict-topics.ts';
import { type CommonWay, commonWays, type Way } from './conflict-ways.ts';
import type { Draft } from './draft.ts';

/** How conflicts are resolved from the list. */
export interface ConflictMeans {
  waysOf(conflict: Conflict): readonly Way[];
  /** Makes a change on the sheet; it is not in the file yet. */
  change(how: (draft: Draft) => Draft): void;
  nameOf(id: string): string;
}

interface TopicProps {
  readonly topic: Topic;
  readonly isNew: (conflict: Conflict) => boolean;
  readonly means: ConflictMeans;
}

const SEVERITY = { warning: 'will probably go wrong', note: 'worth knowing' } as const;
/** So many sentences and ways out of a topic are shown without being asked for. */
const FEW = 3;

/** What does not go together for one reason: told shortly, with what helps; each remark by itself is folded below. */
export function ConflictTopic({ topic, isNew, means }: TopicProps) {
  const { heading, severity, conflicts, told } = topic;
  const [only] = conflicts;
  const alone = conflicts.length === 1 && only ? only : undefined;
  return (
    <li className={styles.topic} data-severity={severity}>
      <h3>
        {heading}
        <span className={styles.weight}>
          {alone ? '' : `${conflicts.length} · `}
          {SEVERITY[severity]}
        </span>
      </h3>
      <ToldList told={told} isNew={isNew} />
      <Ways ways={commonWays(conflicts, means.waysOf).slice(0, FEW)} means={means} of={conflicts.length} />
      {alone ? (
        <Source conflict={alone} means={means} />
      ) : (
        <details>
          <summary className={desk.fold}>Each of the {conflicts.length}, with its source</summary>
          <ul className={styles.single}>
            {conflicts.map((conflict) => (
              <Single key={conflict.sentence} conflict={conflict} isNew={isNew} means={means} />
            ))}
          </ul>
        </details>
      )}
    </li>
  );
}

interface ToldListProps {
  readonly told: readonly Told[];
  readonly isNew: (conflict: Conflict) => boolean;
}

/** What helps stands once below the sentences it helps against; those beyond the first few are in the fold of the topic. */
function ToldList({ told, isNew }: ToldListProps) {
  const shown = told.length === FEW + 1 ? told : told.slice(0, FEW);
  const mends = [...new Set(shown.map(({ mend }) => mend))];
  return (
    <>
      {mends.map((mend) => (
        <div key={mend} className={styles.told}>
          {shown
            .filter((each) => each.mend === mend)
            .map(({ sentence, conflicts }) => (
              <p key={sentence}>
                {conflicts.some(isNew) && <em className={styles.fresh}>new: </em>}
                {unbroken(sentence)}
              </p>
            ))}
          <p className={styles.mend}>
            <span>What helps:</span> {unbroken(mend)}
          </p>
        </div>
      ))}
      {told.length > shown.length && (
        <p className={styles.rest}>… and {told.length - shown.length} more of this kind.</p>
      )}
    </>
  );
}

interface SingleProps {
  readonly conflict: Conflict;
  readonly isNew: (conflict: Conflict) => boolean;
  readonly means: ConflictMeans;
}

function Single({ conflict, isNew, means }: SingleProps) {
  return (
    <li>
      <p>
        {isNew(conflict) && <em className={styles.fresh}>new: </em>}
        {unbroken(conflict.sentence)}
      </p>
      <Ways ways={commonWays([conflict], means.waysOf)} means={means} of={1} />
      <Source conflict={conflict} means={means} />
    </li>
  );
}

function Source({ conflict, means }: { readonly conflict: Conflict; readonly means: ConflictMeans }) {
  return (
    <p className={styles.source}>
      Source: {conflict.source}.{conflict.who.length > 0 && ' In the library: '}
      {conflict.who.map((id, at) => (
        <span key={id}>
          {at > 0 && ', '}
          <Link href={`/library/organisms/${id}`}>{means.nameOf(id)}</Link>
        </span>
      ))}
    </p>
  );
}

interface WaysProps {
  readonly ways: readonly CommonWay[];
  readonly means: ConflictMeans;
  /** Remarks they are ways out of. */
  readonly of: number;
}

function Ways({ ways, means, of }: WaysProps) {
  if (ways.length === 0) return null;
  return (
    <p className={styles.ways}>
      {ways.map(({ way, settles }) =>
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
            {settles > 1 && ` (settles ${settles === of ? `all ${of}` : settles})`}
          </button>
        ),
      )}
    </p>
  );
}
