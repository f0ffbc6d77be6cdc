import type { Problem } from '@shoreglass/contract';
import type { Population } from '@shoreglass/engine';
import type { FormEvent } from 'react';
import { capital } from '../../../outlook/turning-words.ts';
import desk from '../../sheets/desk.module.css';
import { WrittenNumber } from '../../sheets/written-number.tsx';
import styles from './counts-part.module.css';
import type { KeptCounts } from './counts-store.ts';

interface CountsFormProps {
  readonly populations: readonly Population[];
  readonly species: string;
  readonly written: KeptCounts;
  /** What is wrong with the lines last asked about. */
  readonly problems: readonly Problem[];
  /** Whether the text was changed since. */
  readonly stale: boolean;
  readonly onChoose: (species: string) => void;
  readonly onWrite: (written: KeptCounts) => void;
  readonly onAsk: () => void;
}

const EXAMPLE = '2026-03-01 12\n2026-03-15 18\n2026-04-02 31';

/** Whose counts they are, the counts, and what must not be undercut. */
export function CountsForm(props: CountsFormProps) {
  const { populations, species, written, problems, stale, onChoose, onWrite, onAsk } = props;
  const trouble = troubleOf(written);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (trouble === undefined) onAsk();
  };
  const wrong = problems.length > 0 && !stale;
  return (
    <form className={styles.form} onSubmit={submit} noValidate>
      <h2>What did you count?</h2>
      <label>
        <span>Whom</span>
        <select className={desk.select} value={species} onChange={({ target }) => onChoose(target.value)}>
          {populations.map(({ id, name }) => (
            <option key={id} value={id}>
              {capital(name)}
            </option>
          ))}
          <option value="">Others, not in this file</option>
        </select>
      </label>
      <label>
        <span>A count a line: the date and how many</span>
        <textarea
          className={styles.area}
          rows={10}
          spellCheck={false}
          autoCapitalize="off"
          placeholder={EXAMPLE}
          value={written.text}
          aria-invalid={wrong}
          aria-describedby={wrong ? 'wrong-counts' : 'about-counts'}
          onChange={({ target }) => onWrite({ ...written, text: target.value })}
        />
      </label>
      {wrong ? (
        <ul id="wrong-counts" role="alert" className={styles.wrong}>
          {problems.map(({ line, message, value, mend }) => (
            <li key={`${line} ${message}`}>
              <strong>Line {line}</strong> {message}
              {value ? ` (it says: ${value})` : ''}. {mend}
            </li>
          ))}
        </ul>
      ) : (
        <p id="about-counts" className={styles.about}>
          Pasted tables will do: columns named date, count, and if you have them error, effort, coldest and
          warmest, or one column for each stage. The text stays in this browser.
        </p>
      )}
      <div className={styles.pair}>
        <WrittenNumber
          label="Not so few as"
          value={written.below}
          onWrite={(below) => onWrite({ ...written, below })}
        />
        <WrittenNumber
          label="Days ahead, or as long as counted"
          value={written.within}
          onWrite={(within) => onWrite({ ...written, within })}
        />
      </div>
      <div className={`${desk.bar} ${desk.stay}`}>
        <button type="submit" className={desk.primary} disabled={trouble !== undefined}>
          Tell what they say
        </button>
        <p role="status" className={desk.soft}>
          {trouble}
        </p>
      </div>
    </form>
  );
}

function troubleOf({ text, below, within }: KeptCounts): string | undefined {
  if (text.trim() === '') return 'Write a count first.';
  if (!/^[1-9]\d{0,5}$/.test(below.trim())) return 'Write how few are too few as a whole number from 1 on.';
  if (!/^([1-9]\d{0,3})?$/.test(within.trim()))
    return 'Write days ahead as a whole number, or leave it empty.';
  return undefined;
}
