import type { EditValue, EnclosureFile, LibraryListing } from '@shoreglass/contract';
import {
  type AdditionEffect,
  type AheadDocument,
  type Plan,
  type SeriesId,
  seriesSpec,
} from '@shoreglass/engine';
import { dateLabel } from '@shoreglass/figures';
import { type FormEvent, useMemo, useState } from 'react';
import { Trouble } from '../../../app/trouble.tsx';
import { useLibrary } from '../../../files/queries.ts';
import { capital } from '../../../outlook/turning-words.ts';
import type { Edit } from '../../../worker/messages.ts';
import desk from '../../water/desk.module.css';
import { useFileChange } from '../../water/file/use-file-change.ts';
import { InquiryProgress } from '../../water/inquiry/inquiry-progress.tsx';
import { cancelInquiry, startInquiry, useInquiry } from '../../water/inquiry/inquiry-store.ts';
import { OutlookGate } from '../../water/outlook-gate.tsx';
import type { SheetProps } from '../../water/sheet-props.ts';
import { firstZone } from '../who/newcomer.ts';
import { useLife } from '../who/use-life.ts';
import type { AdditionWish } from './ask-addition.ts';
import { EffectList } from './effect-list.tsx';
import { FreshConflicts } from './fresh-conflicts.tsx';
import styles from './more-part.module.css';

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

/** What was asked and what came of it, so that changing the form leaves the answer as it is. */
interface Answered {
  readonly wish: AdditionWish;
  readonly effects: readonly AdditionEffect[];
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
    if (problem === undefined && reading?.sound) ask();
  };
  return (
    <section aria-labelledby="more" className={styles.part}>
      <h2 id="more">What if I add some</h2>
      <form className={styles.form} onSubmit={submit} noValidate>
        <label className={styles.species}>
          <span>Whom</span>
          <SpeciesChoice
            library={library}
            plan={plan}
            value={written.species}
            choose={(species) => setWritten({ ...written, species })}
          />
        </label>
        <label>
          <span>How many adults</span>
          <input
            className={desk.input}
            inputMode="numeric"
            autoComplete="off"
            value={written.adults}
            onChange={({ target }) => setWritten({ ...written, adults: target.value })}
          />
        </label>
        <label>
          <span>On day of the run</span>
          <input
            className={desk.input}
            inputMode="numeric"
            autoComplete="off"
            value={written.day}
            onChange={({ target }) => setWritten({ ...written, day: target.value })}
          />
        </label>
        <button
          type="submit"
          className={desk.primary}
          disabled={problem !== undefined || !ready || state?.running === true}
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

interface SpeciesChoiceProps {
  readonly library: LibraryListing;
  readonly plan: Plan;
  readonly value: string;
  readonly choose: (species: string) => void;
}

const GROUPS = [
  ['water', 'Live in the water'],
  ['amphibious', 'Live in water and on land'],
  ['land', 'Live on land'],
] as const;

function SpeciesChoice({ library, plan, value, choose }: SpeciesChoiceProps) {
  const here = new Set(plan.populations.map(({ id }) => id));
  const others = useMemo(
    () => [...library.animals].sort((a, b) => a.name.localeCompare(b.name, 'en')),
    [library],
  );
  return (
    <select className={desk.select} value={value} onChange={({ target }) => choose(target.value)}>
      {plan.populations.length > 0 && (
        <optgroup label="Live here already">
          {plan.populations.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </optgroup>
      )}
      {GROUPS.map(([habitat, label]) => (
        <optgroup key={habitat} label={label}>
          {others
            .filter((each) => each.habitat === habitat && !here.has(each.id))
            .map(({ id, name }) => (
              <option key={id} value={id}>
                {name}
              </option>
            ))}
        </optgroup>
      ))}
    </select>
  );
}

/** A newcomer becomes an entry of the animals; more of one who lives here, an action. */
function additionEdits(
  {
    animals,
    actions,
  }: { readonly animals: readonly { readonly species: string }[]; readonly actions: number },
  { species, adults, zone, day }: AdditionWish,
): Edit[] {
  const put = (list: string, length: number, entry: EditValue): Edit =>
    length === 0
      ? { path: [list], value: [entry] as unknown as EditValue }
      : { path: [list, length], value: entry };
  const after = `${day} d`;
  return animals.some((each) => each.species === species)
    ? [put('actions', actions, { do: 'add-animals', species, adults, after })]
    : [put('animals', animals.length, { species, zone, adults, ...(day > 0 ? { after } : {}) })];
}

interface AnswerViewProps {
  readonly file: EnclosureFile;
  readonly plan: Plan;
  readonly library: LibraryListing;
  readonly answer: Answered;
  readonly startDate: string;
}

function AnswerView({ file, plan, library, answer, startDate }: AnswerViewProps) {
  const { reading } = useLife(file);
  const { make, busy, trouble } = useFileChange(file);
  const { wish, effects } = answer;
  const nameOfSpecies = (id: string) =>
    plan.populations.find((each) => each.id === id)?.name ??
    library.animals.find((each) => each.id === id)?.name ??
    id;
  const nameOf = (series: string) =>
    series.startsWith('population:')
      ? nameOfSpecies(series.split(':')[1] ?? '')
      : seriesSpec(series as SeriesId).name;
  const name = nameOfSpecies(wish.species);
  const words = `${wish.adults} ${name}`;
  return (
    <div className={styles.answer}>
      <h3>
        {capital(words)} added on {dateLabel(startDate, wish.day)}: with them, less without
      </h3>
      <EffectList effects={effects} nameOf={nameOf} startDate={startDate} />
      {reading?.sound && (
        <p>
          <button
            type="button"
            className={desk.second}
            disabled={busy}
            onClick={() =>
              void make(
                additionEdits(reading.sound ?? { animals: [], actions: 0 }, wish),
                `${capital(words)} come on day ${wish.day}.`,
              )
            }
          >
            Put them into the file
          </button>
        </p>
      )}
      {trouble !== undefined && <p>{trouble}</p>}
    </div>
  );
}
