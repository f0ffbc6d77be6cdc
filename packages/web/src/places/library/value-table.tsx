import type { LibraryEntry } from '@shoreglass/contract';
import styles from './value-table.module.css';

type Value = LibraryEntry['sections'][number]['values'][number];

interface ValueTableProps {
  readonly title: string;
  readonly values: readonly Value[];
}

const capital = (text: string): string =>
  text.startsWith('pH') ? text : text.charAt(0).toUpperCase() + text.slice(1);

/** As the styles have it: wide enough for all columns side by side. */
const isWide = (): boolean => window.matchMedia('(min-width: 761px)').matches;

/**
 * Values of a group with their plausible range, basis and source; on a narrow screen one below the other, and folded until
 * asked for.
 */
export function ValueTable({ title, values }: ValueTableProps) {
  return (
    <details className={styles.values} open={isWide()}>
      <summary>
        <h2>{title}</h2>
        <span>
          {values.length} {values.length === 1 ? 'value' : 'values'} with source
        </span>
      </summary>
      <table aria-label={title}>
        <thead>
          <tr>
            <th scope="col">What</th>
            <th scope="col">Value</th>
            <th scope="col">Plausible</th>
            <th scope="col">Basis and source</th>
          </tr>
        </thead>
        <tbody>
          {values.map(({ label, text, range, basis, source, note }) => (
            <tr key={label}>
              <th scope="row">{capital(label)}</th>
              <td className={styles.value}>{text}</td>
              <td className={styles.range}>{range}</td>
              <td className={styles.source}>
                <b>{basis}</b>: {source}
                {note && <span className={styles.note}> {note}</span>}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}
