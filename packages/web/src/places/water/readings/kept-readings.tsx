import { type AheadDocument, type SeriesId, seriesSpec } from '@shoreglass/engine';
import { MONTHS, quantityText } from '@shoreglass/figures';
import { Link } from 'wouter';
import { capital, nameOf } from '../../../outlook/turning-words.ts';
import desk from '../../sheets/desk.module.css';
import styles from './readings-part.module.css';
import { localDate, type ReadingEntry } from './readings-store.ts';

interface KeptReadingsProps {
  readonly document: AheadDocument;
  readonly entries: readonly ReadingEntry[];
  readonly onRemove: (on: string) => void;
}

/** What was kept so far, the latest first. */
export function KeptReadings({ document, entries, onRemove }: KeptReadingsProps) {
  return (
    <section aria-labelledby="kept" className={desk.block}>
      <h2 id="kept">Kept in this browser</h2>
      <p className={desk.soft}>
        There is no journal yet: what you read stays in this browser on this device, and goes when its data
        are cleared. It does not move the outlook by itself; the year is shown with it as open circles, under{' '}
        <Link href={`/water/${document.enclosure.id}/year`}>The year</Link>.
      </p>
      {entries.length === 0 && <p>Nothing was read yet.</p>}
      <ul className={styles.entries}>
        {entries.map(({ on, values }) => (
          <li key={on}>
            <div>
              <strong>{dateWords(on)}</strong>
              <p>{valueWords(document, values)}</p>
            </div>
            <button type="button" className={desk.quiet} onClick={() => onRemove(on)}>
              Remove<span className={desk.unseen}> the readings of {dateWords(on)}</span>
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}

function dateWords(on: string): string {
  const date = localDate(on);
  return `${date.getDate()} ${MONTHS[date.getMonth()]} ${date.getFullYear()}`;
}

function valueWords(document: AheadDocument, values: ReadingEntry['values']): string {
  const words = Object.entries(values).flatMap(([id, value]) => {
    if (value === undefined) return [];
    const series = id as SeriesId;
    const { unit, digits } = seriesSpec(series);
    return `${nameOf(document, series)} ${quantityText(value, unit, digits)}`;
  });
  return capital(words.join(', '));
}
