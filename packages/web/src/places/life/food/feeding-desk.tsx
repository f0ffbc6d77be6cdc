import type { EnclosureFile } from '@shoreglass/contract';
import type { FeedingPlan, Plan } from '@shoreglass/engine';
import { type FormEvent, useEffect, useRef, useState } from 'react';
import { Trouble } from '../../../app/trouble.tsx';
import { planFeeding } from '../../../engine-client.ts';
import { useLibrary } from '../../../files/queries.ts';
import desk from '../../sheets/desk.module.css';
import { useFileChange } from '../../sheets/file/use-file-change.ts';
import { useLife } from '../who/use-life.ts';
import { doseText, feedingEdits, hourOfClock } from './feeding-edits.ts';
import styles from './food-part.module.css';

interface FeedingDeskProps {
  readonly file: EnclosureFile;
  readonly plan: Plan;
}

interface Asked {
  readonly running: boolean;
  readonly answer?: FeedingPlan;
  readonly failure?: Error;
}

const USUAL_DAYS = '3';

/** Which feed, how much and how often, so that the adults wanted are held. */
export function FeedingDesk({ file, plan }: FeedingDeskProps) {
  const [targets, setTargets] = useState<Readonly<Record<string, string>>>({});
  const usual = plan.routines.flatMap((routine) => (routine.kind === 'feed' ? [routine] : []))[0];
  const [feed, setFeed] = useState(usual?.feed.id);
  const [every, setEvery] = useState(usual ? String(usual.everyDays) : USUAL_DAYS);
  const { data: library } = useLibrary();
  const [place, setPlace] = useState('');
  const [time, setTime] = useState('');
  const { asked, ask, stop } = useFeeding();
  const chosen = feed ?? library?.feeds[0]?.id ?? '';
  const wanted = wantedOf(targets);
  const problem = problemOf(targets, every, Object.keys(wanted).length);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (problem !== undefined) return;
    const hour = hourOfClock(time);
    ask(plan, {
      targets: wanted,
      feed: chosen,
      everyDays: Number(every),
      ...(place === '' ? {} : { onLand: place === 'land' }),
      ...(hour === undefined ? {} : { hour }),
    });
  };
  return (
    <section aria-labelledby="feeding" className={desk.block}>
      <h2 id="feeding">How to feed for the numbers you want</h2>
      <p className={desk.soft}>
        {feedingNow(plan)} Those without a number live as the file has them and eat of the feed too.
      </p>
      <form className={styles.form} onSubmit={submit} noValidate>
        <p>
          <button type="button" className={desk.quiet} onClick={() => setTargets(adultsOf(plan))}>
            Take the adults of the file
          </button>
        </p>
        <fieldset className={styles.wanted}>
          <legend>How many adults to hold</legend>
          <div className={styles.targets}>
            {plan.populations.map(({ id, name }) => (
              <label key={id}>
                <span>
                  {name}
                  <span className={desk.unseen}>, adults</span>
                </span>
                <input
                  className={desk.input}
                  inputMode="numeric"
                  autoComplete="off"
                  placeholder="as in the file"
                  value={targets[id] ?? ''}
                  onChange={({ target }) => setTargets({ ...targets, [id]: target.value })}
                />
              </label>
            ))}
          </div>
        </fieldset>
        <div className={styles.how}>
          <label>
            <span>Feed</span>
            <select className={desk.select} value={chosen} onChange={({ target }) => setFeed(target.value)}>
              {(library?.feeds ?? []).map(({ id, name }) => (
                <option key={id} value={id}>
                  {name}
                </option>
              ))}
            </select>
          </label>
          <label>
            <span>Where</span>
            <select className={desk.select} value={place} onChange={({ target }) => setPlace(target.value)}>
              <option value="">where most of them live</option>
              <option value="water">into the pool</option>
              <option value="land">on the land</option>
            </select>
          </label>
          <label>
            <span>Every so many days</span>
            <input
              className={desk.input}
              inputMode="decimal"
              autoComplete="off"
              value={every}
              onChange={({ target }) => setEvery(target.value)}
            />
          </label>
          <label>
            <span>Time of day, if it matters</span>
            <input
              className={desk.input}
              type="time"
              value={time}
              onChange={({ target }) => setTime(target.value)}
            />
          </label>
        </div>
        <div className={desk.bar}>
          <button
            type="submit"
            className={desk.primary}
            disabled={problem !== undefined || asked?.running === true}
          >
            Work it out
          </button>
          {asked?.running && (
            <button type="button" className={desk.quiet} onClick={stop}>
              Stop
            </button>
          )}
          <p role="status" className={desk.soft}>
            {asked?.running ? 'Trying doses over a year and more …' : (problem ?? '')}
          </p>
        </div>
      </form>
      {asked?.failure && <Trouble error={asked.failure} again={() => stop()} />}
      {asked?.answer && <Answer file={file} answer={asked.answer} />}
    </section>
  );
}

/** "Now: 0.12 g of sinking shrimp pellet every 3 days." */
function feedingNow({ routines }: Plan): string {
  const now = routines.flatMap((routine) =>
    routine.kind === 'feed'
      ? [`${doseText(routine.mass)} of ${routine.feed.name} ${everyText(routine.everyDays)}`]
      : [],
  );
  return now.length === 0 ? 'Nothing is fed now.' : `Now: ${now.join('; ')}.`;
}

/** Adults that the file brings in, on the first day and later, as numbers to be held. */
function adultsOf({ populations, actions }: Plan): Record<string, string> {
  const later = (id: string) =>
    actions.reduce(
      (sum, action) =>
        action.kind === 'add animals' && action.population === id && action.stage === 'adult'
          ? sum + action.count
          : sum,
      0,
    );
  return Object.fromEntries(
    populations.map(({ id, founders }) => {
      const first = founders.reduce((sum, { stage, count }) => sum + (stage === 'adult' ? count : 0), 0);
      return [id, String(first + later(id) || '')];
    }),
  );
}

const everyText = (days: number): string => (days === 1 ? 'every day' : `every ${days} days`);

function wantedOf(targets: Readonly<Record<string, string>>): Record<string, number> {
  return Object.fromEntries(
    Object.entries(targets).flatMap(([id, text]) => (Number(text) > 0 ? [[id, Number(text)] as const] : [])),
  );
}

function problemOf(
  targets: Readonly<Record<string, string>>,
  every: string,
  wanted: number,
): string | undefined {
  for (const text of Object.values(targets))
    if (text !== '' && !/^\d{1,4}$/.test(text.trim()))
      return `Write numbers of adults as whole numbers up to 9999, not "${text}".`;
  if (wanted === 0) return 'Say how many adults you want of at least one.';
  const days = Number(every);
  if (!(days >= 1 && days <= 30)) return 'Feed every 1 to 30 days.';
  return undefined;
}

/** One question at a time; a newer one, or leaving the sheet, stops the one before. */
function useFeeding() {
  const [asked, setAsked] = useState<Asked>();
  const end = useRef<() => void>(() => undefined);
  useEffect(() => () => end.current(), []);
  const stop = () => {
    end.current();
    end.current = () => undefined;
    setAsked(undefined);
  };
  const ask = (...question: Parameters<typeof planFeeding>) => {
    end.current();
    const { answer, stop: halt } = planFeeding(...question);
    end.current = halt;
    setAsked({ running: true });
    const current = () => end.current === halt;
    answer.then(
      (found) => current() && setAsked({ running: false, answer: found }),
      (failure: Error) => current() && setAsked({ running: false, failure }),
    );
  };
  return { asked, ask, stop };
}

function Answer({ file, answer }: { readonly file: EnclosureFile; readonly answer: FeedingPlan }) {
  const { reading } = useLife(file);
  const { make, busy, trouble } = useFileChange(file);
  const routines = reading?.sound?.routines;
  const edits = routines && answer.advised ? feedingEdits(routines, answer) : [];
  const words =
    answer.mass > 0
      ? `${doseText(answer.mass)} of ${answer.feedName} ${everyText(answer.everyDays)} in the routine.`
      : 'No feed in the routine.';
  return (
    <div role="status" className={styles.found}>
      <ul className={styles.answer}>
        {answer.sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      <p className={desk.soft}>
        Found by {answer.trials} trial runs over 400 days: with the adults wanted from the day they come, and
        with the animals of the file. How sure it is was counted in {answer.heldIn.runs} others.
      </p>
      {edits.length > 0 && (
        <p>
          <button
            type="button"
            className={desk.second}
            disabled={busy}
            onClick={() => void make(edits, words)}
          >
            Put into the file
          </button>
        </p>
      )}
      {trouble !== undefined && <p>{trouble}</p>}
    </div>
  );
}
