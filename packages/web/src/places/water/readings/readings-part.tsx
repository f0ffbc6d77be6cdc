import { type AheadDocument, convert, type Plan, type SeriesId } from '@shoreglass/engine';
import { type FormEvent, useState } from 'react';
import { dayOfRun } from '../../../outlook/today.ts';
import { capital, nameOf } from '../../../outlook/turning-words.ts';
import desk from '../../sheets/desk.module.css';
import { OutlookGate } from '../../sheets/outlook-gate.tsx';
import type { SheetProps } from '../../sheets/sheet-props.ts';
import { AmountField } from '../amount/amount-field.tsx';
import type { AmountId } from '../amount/amount-kind.ts';
import { isAmount } from '../amount/read-amount.ts';
import { readWritten, type Written } from '../amount/written.ts';
import { standingOf } from './against-outlook.ts';
import { KeptReadings } from './kept-readings.tsx';
import { MeasuredYearView } from './measured-year-view.tsx';
import styles from './readings-part.module.css';
import { isoDate, localDate, type ReadingEntry, useReadings, useReadingsDesk } from './readings-store.ts';

/** What can be read, in the order of a test kit, and the series each belongs to. */
const READABLE: readonly { readonly amount: AmountId; readonly series: SeriesId }[] = [
  { amount: 'pH', series: 'pH' },
  { amount: 'KH', series: 'KH' },
  { amount: 'GH', series: 'GH' },
  { amount: 'conductivity', series: 'conductivity' },
  { amount: 'temperature', series: 'waterTemperature' },
  { amount: 'totalAmmonia', series: 'totalAmmonia' },
  { amount: 'nitrite', series: 'nitrite' },
  { amount: 'nitrate', series: 'nitrate' },
  { amount: 'phosphate', series: 'phosphate' },
  { amount: 'oxygen', series: 'oxygen' },
];

/** From the unit a field is read in to that of the series. */
const IN_SERIES_UNIT: Partial<Record<AmountId, (value: number) => number>> = {
  KH: (value) => convert(value, 'meq/L', '°dKH'),
  GH: (value) => convert(value, 'mmol/L', '°dGH'),
};

type Texts = Readonly<Partial<Record<AmountId, Written>>>;

/** Today's water: readings in any unit, against the bands and against what was computed for the day. */
export function ReadingsPart(props: SheetProps) {
  return (
    <OutlookGate {...props}>{(document, plan) => <Readings document={document} plan={plan} />}</OutlookGate>
  );
}

function Readings({ document, plan }: { readonly document: AheadDocument; readonly plan: Plan }) {
  const { id, startDate } = document.enclosure;
  const [today] = useState(() => isoDate(new Date()));
  const [on, setOn] = useState(today);
  const [texts, setTexts] = useState<Texts>({});
  const [said, setSaid] = useState('');
  const entries = useReadings(id);
  const { keep, remove } = useReadingsDesk();
  const day = on === '' ? undefined : dayOfRun(startDate, document.run.days, localDate(on));
  const values = valuesOf(texts);
  const count = Object.keys(values).length;
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (count === 0 || on === '') return setSaid('Nothing to keep yet: write at least one reading.');
    keep(id, { on, values });
    setTexts({});
    setSaid(count === 1 ? 'One reading is kept.' : `${count} readings are kept.`);
  };
  return (
    <div className={desk.columns}>
      <form className={desk.block} onSubmit={submit} noValidate>
        <h2>What did you read?</h2>
        <label className={styles.date}>
          <span>Read on</span>
          <input
            type="date"
            value={on}
            max={today}
            onChange={({ target }) => setOn(target.value)}
            className={desk.input}
          />
        </label>
        {READABLE.map(({ amount, series }) => (
          <AmountField
            key={amount}
            id={amount}
            label={capital(nameOf(document, series))}
            written={texts[amount]}
            onWrite={(written) => setTexts((before) => ({ ...before, [amount]: written }))}
          >
            <StandingWords document={document} series={series} value={values[series]} day={day} />
          </AmountField>
        ))}
        <div className={`${desk.bar} ${desk.stay}`}>
          <button type="submit" className={desk.primary}>
            {count === 0 ? 'Keep' : count === 1 ? 'Keep this one' : `Keep these ${count}`}
          </button>
          <p role="status">{said}</p>
        </div>
      </form>
      <div className={styles.aside}>
        <KeptReadings document={document} entries={entries} onRemove={(date) => remove(id, date)} />
        {entries[0] && <MeasuredYearView document={document} plan={plan} entry={entries[0]} />}
      </div>
    </div>
  );
}

interface StandingWordsProps {
  readonly document: AheadDocument;
  readonly series: SeriesId;
  readonly value: number | undefined;
  readonly day: number | undefined;
}

function StandingWords({ document, series, value, day }: StandingWordsProps) {
  const standing = value === undefined ? undefined : standingOf(document, series, { value, day });
  if (!standing) return null;
  return (
    <p>
      <span className={standing.alarm ? styles.alarm : undefined}>{standing.band}</span> {standing.outlook}
    </p>
  );
}

function valuesOf(texts: Texts): ReadingEntry['values'] {
  return Object.fromEntries(
    READABLE.flatMap(({ amount, series }) => {
      const read = readWritten(texts[amount], amount);
      if (!isAmount(read)) return [];
      return [[series, IN_SERIES_UNIT[amount]?.(read.value) ?? read.value]];
    }),
  );
}
