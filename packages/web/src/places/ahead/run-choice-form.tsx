import { type FormEvent, useState } from 'react';
import { fits, RUN_LIMITS, type RunChoice, USUAL_RUN, useRunChoice } from '../../outlook/run-choice.ts';
import desk from '../sheets/desk.module.css';
import styles from './run-choice-form.module.css';

const FIELDS = [
  ['days', 'Days'],
  ['members', 'Runs'],
  ['seed', 'Seed'],
] as const;

type Written = Readonly<Record<keyof RunChoice, string>>;

const written = ({ days, members, seed }: RunChoice): Written => ({
  days: String(days),
  members: String(members),
  seed: String(seed),
});

/** How long, how often and from which seed every outlook of the app is run; remembered on this device. */
export function RunChoiceForm() {
  const { run, choose } = useRunChoice();
  const [typed, setTyped] = useState(() => written(run));
  const wanted: RunChoice = {
    days: Number(typed.days),
    members: Number(typed.members),
    seed: Number(typed.seed),
  };
  const wrong = FIELDS.find(([key]) => typed[key].trim() === '' || !fits(key, wanted[key]));
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (!wrong) choose(wanted);
  };
  const usual = () => {
    setTyped(written(USUAL_RUN));
    choose(USUAL_RUN);
  };
  return (
    <details>
      <summary className={desk.fold}>Run it longer, shorter or more often</summary>
      <form className={styles.form} onSubmit={submit} noValidate>
        {FIELDS.map(([key, label]) => (
          <label key={key}>
            <span>{label}</span>
            <input
              className={desk.input}
              inputMode="numeric"
              autoComplete="off"
              value={typed[key]}
              onChange={({ target }) => setTyped({ ...typed, [key]: target.value })}
            />
          </label>
        ))}
        <button type="submit" className={desk.primary} disabled={wrong !== undefined}>
          Run it so
        </button>
        <button type="button" className={desk.quiet} onClick={usual}>
          As usual
        </button>
        <p role="status">
          {wrong
            ? `${wrong[1]}: a whole number from ${RUN_LIMITS[wrong[0]].least} to ${RUN_LIMITS[wrong[0]].most}.`
            : 'Holds for every enclosure on this device. Twice the days or the runs take about twice as long; the same seed gives the same chance again.'}
        </p>
      </form>
    </details>
  );
}
