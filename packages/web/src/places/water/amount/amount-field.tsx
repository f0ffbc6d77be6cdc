import { type ReactNode, useId } from 'react';
import styles from './amount-field.module.css';
import { AMOUNTS, type AmountId, type AmountKind } from './amount-kind.ts';
import { amountRepeated, isAmount, readAmount } from './read-amount.ts';
import { useUnit, useUnits } from './remembered-units.ts';
import { type Written, writtenIn } from './written.ts';

interface AmountFieldProps {
  readonly id: AmountId;
  readonly label: ReactNode;
  readonly written: Written | undefined;
  readonly onWrite: (written: Written) => void;
  readonly placeholder?: string;
  /** What is said of the amount once it is read, under its other units. */
  readonly children?: ReactNode;
}

/** A number with its unit, forgiving: the unit may be written, or chosen beside the number, and is remembered. */
export function AmountField({ id, label, written, onWrite, placeholder, children }: AmountFieldProps) {
  const kind: AmountKind = AMOUNTS[id];
  const remembered = useUnit(id);
  const keep = useUnits((state) => state.keep);
  const [field, help] = [useId(), useId()];
  const { text, unit } = written ?? { text: '', unit: remembered };
  const read = readAmount(text, kind, unit);
  const wrong = read && 'wrong' in read ? read.wrong : undefined;
  const write = (typed: string) => {
    const fresh = readAmount(typed, kind, unit);
    const meant = isAmount(fresh) ? fresh.unit : unit;
    if (isAmount(fresh) && !fresh.unitTaken) keep(id, meant);
    onWrite({ text: typed, unit: meant });
  };
  const choose = (wanted: string) => {
    keep(id, wanted);
    onWrite(isAmount(read) ? writtenIn(id, read.value, wanted) : { text, unit: wanted });
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
        <UnitChoice kind={kind} unit={unit} onChoose={choose} />
      </div>
      <div id={help} className={styles.help}>
        {wrong !== undefined && <p className={styles.wrong}>{wrong}</p>}
        {isAmount(read) && kind.repeated.length > 1 && <p>{`= ${amountRepeated(read, kind)}`}</p>}
        {children}
      </div>
    </div>
  );
}

/** Spellings of a unit that is offered already. */
const DOUBLES = ['°dH', 'mg/L CaCO3', 'cm³', 'm³'];

interface UnitChoiceProps {
  readonly kind: AmountKind;
  readonly unit: string;
  readonly onChoose: (unit: string) => void;
}

function UnitChoice({ kind, unit, onChoose }: UnitChoiceProps) {
  const units = Object.keys(kind.from).filter((each) => each === unit || !DOUBLES.includes(each));
  if (units.length < 2) return <span className={styles.unit}>{unit === 'pH' ? '' : unit}</span>;
  return (
    <select
      aria-label={`Unit of ${kind.name}`}
      value={unit}
      onChange={({ target }) => onChoose(target.value)}
    >
      {units.map((each) => (
        <option key={each}>{each}</option>
      ))}
    </select>
  );
}
