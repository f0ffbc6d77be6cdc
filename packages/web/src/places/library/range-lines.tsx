import type { LibraryEntry } from '@shoreglass/contract';
import styles from './range-lines.module.css';

type Range = LibraryEntry['ranges'][number];
type Bounds = NonNullable<Range['fine']>;

const WIDTH = 260;
const HEIGHT = 18;
const INSET = 4;

function scaleOf({ fine = {}, survives = {} }: Range): readonly [number, number] {
  const given = [fine.low, fine.high, survives.low, survives.high].filter((each) => each !== undefined);
  const [least, most] = [Math.min(...given), Math.max(...given)];
  const beyond = Math.max(0.2 * (most - least), 0.05 * Math.abs(most), 0.01);
  return [least - beyond, most + beyond];
}

function boundsText({ low, high }: Bounds, unit: string): string {
  const text = low === undefined ? `up to ${high}` : high === undefined ? `from ${low}` : `${low} to ${high}`;
  return unit === '' ? text : `${text} ${unit}`;
}

/** What the entry stands, one line a quantity: thick where it is fine, thin where it survives. */
export function RangeLines({ ranges }: { readonly ranges: readonly Range[] }) {
  return (
    <section aria-labelledby="stands" className={styles.ranges}>
      <h2 id="stands">What it stands</h2>
      <p className={styles.key}>
        Thick where it is fine, thin where it survives; open ends have no known limit.
      </p>
      <dl>
        {ranges.map((range) => (
          <div key={range.label}>
            <dt>{range.label.startsWith('pH') ? range.label : capital(range.label)}</dt>
            <dd>
              <Line range={range} />
              <span>
                {range.fine && `fine ${boundsText(range.fine, range.unit)}`}
                {range.fine && range.survives && '; '}
                {range.survives && `survives ${boundsText(range.survives, range.unit)}`}
              </span>
            </dd>
          </div>
        ))}
      </dl>
    </section>
  );
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function Line({ range }: { readonly range: Range }) {
  const [from, to] = scaleOf(range);
  const x = (value: number) => INSET + ((value - from) / (to - from)) * (WIDTH - 2 * INSET);
  const middle = HEIGHT / 2;
  const stroke = (bounds: Bounds | undefined, look: string | undefined) =>
    bounds && (
      <line className={look} x1={x(bounds.low ?? from)} x2={x(bounds.high ?? to)} y1={middle} y2={middle} />
    );
  const bounds = [range.fine?.low, range.fine?.high, range.survives?.low, range.survives?.high];
  const ends = [...new Set(bounds.filter((end) => end !== undefined))];
  return (
    <svg className={styles.line} viewBox={`0 0 ${WIDTH} ${HEIGHT}`} aria-hidden="true">
      <line className={styles.scale} x1={INSET} x2={WIDTH - INSET} y1={middle} y2={middle} />
      {stroke(range.survives, styles.survives)}
      {stroke(range.fine, styles.fine)}
      {ends.map((end) => (
        <line key={end} className={styles.tick} x1={x(end)} x2={x(end)} y1={middle - 6} y2={middle + 6} />
      ))}
    </svg>
  );
}
