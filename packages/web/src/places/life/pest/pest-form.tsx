import type { Hunter, Population } from '@shoreglass/engine';
import { dateLabel } from '@shoreglass/figures';
import type { FormEvent } from 'react';
import desk from '../../sheets/desk.module.css';
import { WrittenNumber } from '../../sheets/written-number.tsx';
import { HunterChoice, type WrittenHunters, writtenNumber } from './hunter-choice.tsx';
import styles from './pest-part.module.css';

/** What is asked against a pest, as it is written. */
export interface WrittenPest {
  readonly pest: string;
  readonly from: string;
  readonly bait: string;
  readonly hunters: WrittenHunters;
}

interface PestFormProps {
  readonly populations: readonly Population[];
  /** Who could be put in; undefined until the library has told. */
  readonly hunters: readonly Hunter[] | undefined;
  readonly written: WrittenPest;
  readonly days: number;
  readonly startDate: string;
  /** Whether the runs of the year are there, and whether an answer is being worked out. */
  readonly ready: boolean;
  readonly running: boolean;
  readonly onChoose: (pest: string) => void;
  readonly onWrite: (written: WrittenPest) => void;
  readonly onAsk: () => void;
}

/** Whom it is about, from when on, and what is tried. */
export function PestForm(props: PestFormProps) {
  const { populations, hunters, written, days, startDate, ready, running, onChoose, onWrite, onAsk } = props;
  const problem = problemOf(written, hunters ?? [], days);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (problem === undefined && hunters) onAsk();
  };
  return (
    <form className={styles.form} onSubmit={submit} noValidate>
      <label>
        <span>Whom</span>
        <select
          className={desk.select}
          value={written.pest}
          onChange={({ target }) => onChoose(target.value)}
        >
          {populations.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </label>
      <WrittenNumber
        label="Noticed on day of the run"
        value={written.from}
        onWrite={(from) => onWrite({ ...written, from })}
      />
      <WrittenNumber
        label="A week’s bait or traps take at most, of each stage"
        value={written.bait}
        onWrite={(bait) => onWrite({ ...written, bait })}
      />
      {hunters && (
        <HunterChoice
          hunters={hunters}
          written={written.hunters}
          onWrite={(numbers) => onWrite({ ...written, hunters: numbers })}
        />
      )}
      <div className={desk.bar}>
        <button
          type="submit"
          className={desk.primary}
          disabled={problem !== undefined || !ready || !hunters || running}
        >
          Compare the answers
        </button>
        <p role="status" className={desk.soft}>
          {problem ??
            (ready
              ? `From ${dateLabel(startDate, Number(written.from))} on hunters hunt, baits lie and less feed is given.`
              : 'Waiting for the runs of the year …')}
        </p>
      </div>
    </form>
  );
}

function problemOf(
  { bait, from, hunters: numbers }: WrittenPest,
  hunters: readonly Hunter[],
  days: number,
): string | undefined {
  if (!/^[1-9]\d{0,3}$/.test(bait.trim()))
    return 'Write how many a bait takes as a whole number from 1 to 9999.';
  if (!/^\d{1,4}$/.test(from.trim()) || Number(from) >= days)
    return `Write a day of the run from 0 to ${days - 1}.`;
  const wrong = hunters.find((hunter) => !/^\d{0,4}$/.test(writtenNumber(numbers, hunter).trim()));
  if (wrong) return `Write how many ${wrong.population.name} as a whole number up to 9999, or nothing.`;
  return undefined;
}
