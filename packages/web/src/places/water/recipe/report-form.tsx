import type { WrittenAnalysis } from '@shoreglass/contract';
import { useEffect, useId, useState } from 'react';
import { analyse } from '../../../engine-client.ts';
import { slugOf } from '../../enclosures/slug.ts';
import desk from '../../sheets/desk.module.css';
import styles from './report-form.module.css';

interface ReportFormProps {
  /** Ids that name a water already. */
  readonly taken: readonly string[];
  readonly onKeep: (report: Readonly<Record<string, string>>) => void;
  readonly onLeave: () => void;
}

/** Lines of a water report, the unit taken where none is written, and what else printed reports call it. */
const LINES: readonly { readonly key: string; readonly name: string; readonly unit: string }[] = [
  { key: 'calcium', name: 'Calcium (Ca)', unit: 'mg/L' },
  { key: 'magnesium', name: 'Magnesium (Mg)', unit: 'mg/L' },
  { key: 'sodium', name: 'Sodium (Na)', unit: 'mg/L' },
  { key: 'potassium', name: 'Potassium (K)', unit: 'mg/L' },
  { key: 'chloride', name: 'Chloride (Cl)', unit: 'mg/L' },
  { key: 'sulfate', name: 'Sulfate (SO₄)', unit: 'mg/L' },
  { key: 'nitrate', name: 'Nitrate (NO₃)', unit: 'mg/L' },
  { key: 'bicarbonate', name: 'Bicarbonate (HCO₃)', unit: 'mg/L' },
  { key: 'alkalinity', name: 'Alkalinity, KH or acid capacity', unit: 'meq/L' },
  { key: 'hardness', name: 'Hardness, GH', unit: '°dGH' },
  { key: 'conductivity', name: 'Conductivity', unit: 'µS/cm' },
];

const PAUSE_MILLISECONDS = 200;

/** Tap water as its supplier prints it; missing ions are inferred and said, and charges that cannot be are refused. */
export function ReportForm({ taken, onKeep, onLeave }: ReportFormProps) {
  const [name, setName] = useState('My tap');
  const [texts, setTexts] = useState<Readonly<Record<string, string>>>({});
  const [read, setRead] = useState<WrittenAnalysis>();
  const id = freshId(slugOf(name) || 'tap', taken);
  const report = reportOf(id, name, texts);
  const asked = JSON.stringify(report);
  const empty = Object.values(texts).every((text) => text.trim() === '');
  useEffect(() => {
    if (empty) return setRead(undefined);
    let current = true;
    const timer = setTimeout(
      () => analyse(JSON.parse(asked)).then((found) => current && setRead(found)),
      PAUSE_MILLISECONDS,
    );
    return () => {
      current = false;
      clearTimeout(timer);
    };
  }, [asked, empty]);
  return (
    <fieldset className={styles.report}>
      <legend>Water report</legend>
      <Line name="What you call it" text={name} onText={setName} unit="" />
      {LINES.map(({ key, name: label, unit }) => (
        <Line
          key={key}
          name={label}
          unit={unit}
          text={texts[key] ?? ''}
          onText={(text) => setTexts((before) => ({ ...before, [key]: text }))}
          wrong={read?.findings.find((finding) => finding.key === key && finding.severity === 'blocking')}
        />
      ))}
      <div role="status" className={styles.findings}>
        {read?.findings
          .filter(({ key, severity }) => key === undefined || severity !== 'blocking')
          .map(({ severity, message, mend }) => (
            <p key={message} data-severity={severity}>
              {severity === 'blocking' && <strong>Cannot be: </strong>}
              {message}. {mend}
            </p>
          ))}
      </div>
      <div className={desk.bar}>
        <button
          type="button"
          className={desk.primary}
          disabled={!read?.water || name.trim() === ''}
          onClick={() => onKeep(report)}
        >
          Mix from this water
        </button>
        <button type="button" className={desk.quiet} onClick={onLeave}>
          Leave it
        </button>
      </div>
    </fieldset>
  );
}

interface LineProps {
  readonly name: string;
  readonly text: string;
  readonly unit: string;
  readonly onText: (text: string) => void;
  readonly wrong?: { readonly message: string; readonly mend: string } | undefined;
}

function Line({ name, text, unit, onText, wrong }: LineProps) {
  const [field, help] = [useId(), useId()];
  return (
    <div className={styles.line}>
      <label htmlFor={field}>{name}</label>
      <span className={styles.entry}>
        <input
          id={field}
          className={desk.input}
          value={text}
          onChange={({ target }) => onText(target.value)}
          inputMode={unit === '' ? 'text' : 'decimal'}
          autoComplete="off"
          spellCheck={false}
          aria-invalid={wrong !== undefined}
          aria-describedby={help}
        />
        <span className={styles.unit}>{unit}</span>
      </span>
      <span id={help} className={styles.help}>
        {wrong && `${name} ${wrong.message}. ${wrong.mend}`}
      </span>
    </div>
  );
}

/** What was typed as the file has it: a bare number gets the unit of its line. */
function reportOf(id: string, name: string, texts: Readonly<Record<string, string>>): Record<string, string> {
  const lines = LINES.flatMap(({ key, unit }): [string, string][] => {
    const text = (texts[key] ?? '').trim();
    if (text === '') return [];
    return [[key, /^[<>]?\s*[\d.,]+$/.test(text) ? `${text.replace(/^[<>]\s*/, '')} ${unit}` : text]];
  });
  return { id, name: name.trim(), source: 'typed in from a water report', ...Object.fromEntries(lines) };
}

function freshId(wanted: string, taken: readonly string[]): string {
  if (!taken.includes(wanted)) return wanted;
  for (let number = 2; ; number++) if (!taken.includes(`${wanted}-${number}`)) return `${wanted}-${number}`;
}
