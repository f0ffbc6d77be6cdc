import { type ReactNode, useId } from 'react';
import styles from './amount-field.module.css';
import { type AmountId, type AmountKind, AMOUNTS } from './amount-kind.ts';
import { amountRepeated, isAmount, readAmount } from './read-amount.ts';
import { useUnit, useUnits } from './remembered-units.ts';

interface AmountFieldProps {
  readonly id: AmountId;
  readonly label: ReactNode;
  readonly text: string;
  readonly onText: (text: string) => void;
  readonly placeholder?: string;
  /** What is said of the amount once it is read, under its other units. */
  readonly children?: ReactNode;
}

/** A number with its unit, forgiving: the unit may be written, or chosen beside the number, and is remembered. */
export function AmountField({ id, label, text, onText, placeholder, children }: AmountFieldProps) {
  const kind: AmountKind = AMOUNTS[id];
  const unit = useUnit(id);
  const keep = useUnits((state) => state.keep);
  const [field, help] = [useId(), useId()];
  const read = readAmount(text, kind, unit);
  const wrong = read && 'wrong' in read ? read.wrong : undefined;
  const units = Object.keys(kind.from).filter((each) => each !== '°dH' && each !== 'mg/L CaCO3');
  const write = (written: string) => {
    onText(written);
    const fresh = readAmount(written, kind, unit);
    if (isAmount(fresh) && !fresh.unitTaken) keep(id, fresh.unit);
  };
  const choose = (wanted: string) => {
    keep(id, wanted);
    // A unit written in the text would outweigh the chosen one.
    if (isAmount(read) && !read.unitTaken) onText(text.replace(/[^\d.,+-].*$/s, '').trim());
  };
  return (
    <div className={styles.field}>
      <label htmlFor={field} className={styles.label}>
        {label}
      </label>
      <div className={styles.entry} data-wrong={wrong !== undefined}>
        <input
          id={field}
          value={text}
          onChange={({ target }) => write(target.value)}
          inputMode="decimal"
          autoComplete="off"
          autoCapitalize="off"
          spellCheck={false}
          placeholder={placeholder}
          aria-describedby={help}
          aria-invalid={wrong !== undefined}
        />
        {units.length > 1 ? (
          <select
            aria-label={`Unit of ${kind.name}`}
            value={unit}
            onChange={({ target }) => choose(target.value)}
          >
            {(units.includes(unit) ? units : [unit, ...units]).map((each) => (
              <option key={each}>{each}</option>
            ))}
          </select>
        ) : (
          <span className={styles.unit}>{unit === 'pH' ? '' : unit}</span>
        )}
      </div>
      <div id={help} className={styles.help}>
        {wrong !== undefined && <p className={styles.wrong}>{wrong}</p>}
        {isAmount(read) && kind.repeated.length > 0 && <p>{`= ${amountRepeated(read, kind)}`}</p>}
        {children}
      </div>
    </div>
  );
}
