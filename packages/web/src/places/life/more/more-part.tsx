import type { EnclosureFile, LibraryListing } from '@shoreglass/contract';
import type { AheadDocument, Plan } from '@shoreglass/engine';
import { dateLabel } from '@shoreglass/figures';
import { type FormEvent, useState } from 'react';
import { Trouble } from '../../../app/trouble.tsx';
import { useLibrary } from '../../../files/queries.ts';
import desk from '../../sheets/desk.module.css';
import { InquiryProgress } from '../../sheets/inquiry/inquiry-progress.tsx';
import { cancelInquiry, startInquiry, useInquiry } from '../../sheets/inquiry/inquiry-store.ts';
import { OutlookGate } from '../../sheets/outlook-gate.tsx';
import type { SheetProps } from '../../sheets/sheet-props.ts';
import { WrittenNumber } from '../../sheets/written-number.tsx';
import { firstZone } from '../who/newcomer.ts';
import { useLife } from '../who/use-life.ts';
import { additionEdits } from './addition-edits.ts';
import { type Answered, AnswerView } from './answer-view.tsx';
import type { AdditionWish } from './ask-addition.ts';
import { FreshConflicts } from './fresh-conflicts.tsx';
import styles from './more-part.module.css';
import { SpeciesChoice } from './species-choice.tsx';

/** What happens to everybody, and to the water, when some more animals come. */
export function MorePart(props: SheetProps) {
  const { data: library, error, refetch } = useLibrary();
  if (error) return <Trouble error={error} again={() => void refetch()} />;
  return (
    <OutlookGate {...props}>
      {(document, plan) =>
        library ? (
          <More
            file={props.file}
            document={document}
            plan={plan}
            library={library}
            ready={props.outlook?.complete === true}
          />
        ) : (
          <p role="status">Opening the library …</p>
        )
      }
    </OutlookGate>
  );
}

interface MoreProps {
  readonly file: EnclosureFile;
  readonly document: AheadDocument;
  readonly plan: Plan;
  readonly library: LibraryListing;
  readonly ready: boolean;
}

const MEMBERS = 16;
const FIRST_DAY = 60;

interface Written {
  readonly species: string;
  readonly adults: string;
  readonly day: string;
}

function More({ file, document, plan, library, ready }: MoreProps) {
  const { days, seed } = document.run;
  const { reading } = useLife(file);
  const [written, setWritten] = useState<Written>(() => ({
    species: plan.populations[0]?.id ?? library.animals[0]?.id ?? '',
    adults: '20',
    day: String(Math.min(FIRST_DAY, Math.floor(days / 2))),
  }));
  const key = `addition ${file.id} ${file.version}`;
  const state = useInquiry<Answered>(key);
  const problem = problemOf(written, days);
  const entry = library.animals.find(({ id }) => id === written.species);
  const zone =
    plan.populations.find(({ id }) => id === written.species)?.zone ??
    firstZone(reading?.sound?.zones ?? [], entry?.habitat);
  const wish: AdditionWish = {
    species: written.species,
    adults: Number(written.adults),
    zone,
    day: Number(written.day),
  };
  const ask = () =>
    startInquiry<Answered>(key, plan, async () => {
      const { askAddition } = await import('./ask-addition.ts');
      const inquiry = await askAddition(plan, wish, { days, members: MEMBERS, seed });
      return (function* () {
        return { wish, effects: yield* inquiry };
      })();
    });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (problem === undefined && ready && reading?.sound) ask();
  };
  return (
    <section aria-labelledby="more" className={styles.part}>
      <h2 id="more">What if I add some</h2>
      <form className={styles.form} onSubmit={submit} noValidate>
        <SpeciesChoice
          library={library}
          plan={plan}
          value={written.species}
          choose={(species) => setWritten({ ...written, species })}
        />
        <WrittenNumber
          label="How many adults"
          value={written.adults}
          onWrite={(adults) => setWritten({ ...written, adults })}
        />
        <WrittenNumber
          label="On day of the run"
          value={written.day}
          onWrite={(day) => setWritten({ ...written, day })}
        />
        <button
          type="submit"
          className={desk.primary}
          disabled={problem !== undefined || !ready || !reading?.sound || state?.running === true}
        >
          Work it out
        </button>
        <p role="status" className={styles.waits}>
          {problem ??
            (ready
              ? `That is ${dateLabel(document.enclosure.startDate, wish.day)}.`
              : 'Waiting for the runs of the year …')}
        </p>
      </form>
      {problem === undefined && reading?.sound && (
        <FreshConflicts file={file} saved={reading.sound} edits={additionEdits(reading.sound, wish)} />
      )}
      {!state && (
        <p className={desk.soft}>
          The same {MEMBERS} years are run with them and without them, chance and weather alike, so that what
          differs is their doing.
        </p>
      )}
      {state?.running && <InquiryProgress state={state} onCancel={() => cancelInquiry(key)} />}
      {state?.failure !== undefined && <Trouble error={new Error(state.failure)} again={ask} />}
      {state?.answer && (
        <AnswerView
          file={file}
          plan={plan}
          library={library}
          answer={state.answer}
          startDate={document.enclosure.startDate}
        />
      )}
    </section>
  );
}

function problemOf({ adults, day }: Written, days: number): string | undefined {
  if (!/^\d{1,4}$/.test(adults.trim()) || Number(adults) < 1)
    return 'Write how many adults, a whole number from 1 to 9999.';
  if (!/^\d{1,4}$/.test(day.trim()) || Number(day) >= days)
    return `Write a day of the run from 0 to ${days - 1}.`;
  return undefined;
}
