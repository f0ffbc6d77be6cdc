import type { EnclosureFile, LibraryListing } from '@shoreglass/contract';
import { useMemo } from 'react';
import { Link } from 'wouter';
import { Trouble } from '../../../app/trouble.tsx';
import { useLibrary } from '../../../files/queries.ts';
import type { SoundLife } from '../../../worker/life-orders.ts';
import desk from '../../sheets/desk.module.css';
import type { SheetProps } from '../../sheets/sheet-props.ts';
import { ConflictList, countWords, goToConflicts } from './conflict-list.tsx';
import type { ConflictMeans } from './conflict-topic.tsx';
import { conflictWays } from './conflict-ways.ts';
import { type Draft, draftEdits, draftOf, draftProblem, type NameOf } from './draft.ts';
import { DraftBar } from './draft-bar.tsx';
import { useDrafts } from './draft-store.ts';
import { NewcomerChoice } from './newcomer-choice.tsx';
import { ResidentList } from './resident-list.tsx';
import { SharedRanges } from './shared-ranges.tsx';
import { useLife } from './use-life.ts';
import styles from './who-part.module.css';

/** Who lives here: the animals and plants of the file, newcomers from the library, and what does not go together. */
export function WhoPart({ file }: SheetProps) {
  const { data: library, error, refetch } = useLibrary();
  const { reading, failure } = useLife(file);
  if (error) return <Trouble error={error} again={() => void refetch()} />;
  if (failure !== undefined) return <Trouble error={new Error(failure)} again={() => location.reload()} />;
  if (!library || !reading) return <p role="status">Looking who lives here …</p>;
  if (!reading.sound)
    return (
      <p>
        The text of this enclosure has errors, so nobody can be placed in it.{' '}
        <Link href={`/enclosures/${file.id}`}>Mend the text</Link>
      </p>
    );
  return <Who file={file} library={library} saved={reading.sound} />;
}

interface WhoProps {
  readonly file: EnclosureFile;
  readonly library: LibraryListing;
  /** What the file says. */
  readonly saved: SoundLife;
}

function Who({ file, library, saved }: WhoProps) {
  const of = `${file.id} ${file.version}`;
  const base = useMemo(() => draftOf(saved, namesFrom(library)), [saved, library]);
  const kept = useDrafts((state) => (state.of === of ? state.draft : undefined));
  const keep = useDrafts((state) => state.keep);
  const draft = kept ?? base;
  const problem = draftProblem(draft);
  const edits = useMemo(() => (problem === undefined ? draftEdits(base, draft) : []), [base, draft, problem]);
  const { reading, stale, failure } = useLife(file, edits);
  const shown = reading?.sound ?? saved;
  const changed = edits.length > 0 || problem !== undefined;
  const change = (next: Draft | undefined) => keep(of, next);
  const nameOf = (id: string) =>
    draft.animals.find(({ species }) => species === id)?.name ?? namesFrom(library)('animals', id);
  const means: ConflictMeans = {
    waysOf: (conflict) =>
      conflictWays(conflict, { file: file.id, leastFounders: shown.leastFounders, nameOf }),
    change: (how) => change(how(draft)),
    nameOf,
  };
  const refused = reading?.sound
    ? undefined
    : reading?.findings.find(({ severity }) => severity === 'blocking');
  return (
    <div className={styles.part}>
      <div className={desk.columns}>
        <div className={styles.side}>
          {shown.conflicts.length > 0 && (
            <button type="button" className={`${desk.quiet} ${styles.jump}`} onClick={goToConflicts}>
              {countWords(shown.conflicts)}
            </button>
          )}
          <ResidentList draft={draft} zones={shown.zones} library={library} onChange={change} />
          <NewcomerChoice draft={draft} zones={shown.zones} library={library} onChange={change} />
        </div>
        <ConflictList
          conflicts={shown.conflicts}
          before={saved.conflicts}
          changed={edits.length > 0}
          stale={stale}
          means={means}
        />
      </div>
      {changed && (
        <DraftBar
          file={file}
          base={base}
          draft={draft}
          edits={edits}
          problem={problem ?? failure ?? (refused && `${refused.message}. ${refused.mend}`)}
          warnings={shown.conflicts.filter(({ severity }) => severity === 'warning').length}
          onLeave={() => change(undefined)}
        />
      )}
      <SharedRanges plan={shown.plan} />
    </div>
  );
}

function namesFrom(library: LibraryListing): NameOf {
  const names = new Map(
    (['animals', 'plants'] as const).flatMap((list) =>
      library[list].map(({ id, name }) => [`${list} ${id}`, name] as const),
    ),
  );
  return (list, id) => names.get(`${list} ${id}`) ?? id;
}
