import { type Band, type Plan, type SeriesId, seriesSpec } from '@shoreglass/engine';
import { quantityText } from '@shoreglass/figures';
import desk from '../../sheets/desk.module.css';
import styles from './owners-list.module.css';

/** Everybody who has a say in a quantity: its range, since when, and where the range comes from. */
export function OwnersList({ plan, id }: { readonly plan: Plan; readonly id: SeriesId }) {
  const bands = plan.bands.filter(({ series }) => series === id);
  if (bands.length === 0) return <p className={styles.none}>Nobody here sets a limit.</p>;
  return (
    <details className={styles.owners}>
      <summary className={desk.fold}>
        {bands.length === 1 ? 'One who sets limits' : `${bands.length} who set limits`}
      </summary>
      <ul>
        {bands.map((band) => (
          <li key={`${band.owner} ${band.low} ${band.high}`}>
            <strong>{ownerName(band)}</strong> {rangeWords(band)}
            {band.fromDay !== undefined && band.fromDay > 0 && `, from day ${band.fromDay}`}
            <span className={styles.source}>
              {band.basis}: {band.source}
            </span>
          </li>
        ))}
      </ul>
    </details>
  );
}

function ownerName({ owner }: Band): string {
  return owner === 'keeper' ? 'You' : owner;
}

function rangeWords({ series, low, high }: Band): string {
  const { unit } = seriesSpec(series);
  const text = (value: number) => quantityText(Number(value.toPrecision(4)), unit, digitsOf(value));
  if (low !== undefined && high !== undefined) return `${shortNumber(low)} to ${text(high)}`;
  return low === undefined ? `at most ${text(high ?? 0)}` : `at least ${text(low)}`;
}

function shortNumber(value: number): string {
  return quantityText(Number(value.toPrecision(4)), '', digitsOf(value));
}

/** Digits that a limit needs: none for 300, two for 0.05. */
function digitsOf(value: number): number {
  const [, fraction = ''] = String(Number(value.toPrecision(4))).split('.');
  return fraction.length;
}
