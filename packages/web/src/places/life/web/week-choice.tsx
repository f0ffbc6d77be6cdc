import { dateLabel } from '@shoreglass/figures';
import { useId } from 'react';
import desk from '../../sheets/desk.module.css';
import styles from './week-choice.module.css';

interface WeekChoiceProps {
  readonly weeks: number;
  /** The mean of the run when undefined. */
  readonly week: number | undefined;
  readonly startDate: string;
  readonly onChoose: (week: number | undefined) => void;
}

/** The mean of the run, or one of its weeks. */
export function WeekChoice({ weeks, week, startDate, onChoose }: WeekChoiceProps) {
  const group = useId();
  const at = week ?? Math.floor(weeks / 2);
  const label = `week ${at + 1} of ${weeks}, from ${dateLabel(startDate, 7 * at)}`;
  return (
    <div className={styles.choice}>
      <div role="radiogroup" aria-label="When" className={styles.kinds}>
        <label className={desk.check}>
          <input
            type="radio"
            name={group}
            checked={week === undefined}
            onChange={() => onChoose(undefined)}
          />
          mean of the run
        </label>
        <label className={desk.check}>
          <input type="radio" name={group} checked={week !== undefined} onChange={() => onChoose(at)} />
          one week
        </label>
      </div>
      {week !== undefined && (
        <div className={styles.weeks}>
          <button
            type="button"
            className={desk.second}
            disabled={at <= 0}
            onClick={() => onChoose(at - 1)}
            aria-label="A week earlier"
          >
            ←
          </button>
          <input
            type="range"
            min={0}
            max={weeks - 1}
            value={at}
            aria-label="Week"
            aria-valuetext={label}
            onChange={({ target }) => onChoose(Number(target.value))}
          />
          <button
            type="button"
            className={desk.second}
            disabled={at >= weeks - 1}
            onClick={() => onChoose(at + 1)}
            aria-label="A week later"
          >
            →
          </button>
          <p>{label}</p>
        </div>
      )}
    </div>
  );
}
