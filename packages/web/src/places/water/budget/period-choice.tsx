import { dateLabel } from '@shoreglass/figures';
import styles from './period-choice.module.css';

interface PeriodChoiceProps {
  readonly periods: readonly { readonly from: number; readonly to: number }[];
  readonly startDate: string;
  readonly chosen: number | undefined;
  readonly onPick: (period: number | undefined) => void;
}

/** The stretch of the run that the table sums. */
export function PeriodChoice({ periods, startDate, chosen, onPick }: PeriodChoiceProps) {
  return (
    <label className={styles.period}>
      <span>Summed over</span>
      <select
        value={chosen ?? 'whole'}
        onChange={({ target }) => onPick(target.value === 'whole' ? undefined : Number(target.value))}
      >
        <option value="whole">the whole run</option>
        {periods.map(({ from, to }, index) => (
          <option key={from} value={index}>
            {dateLabel(startDate, from)} to {dateLabel(startDate, to - 1)}
          </option>
        ))}
      </select>
    </label>
  );
}
