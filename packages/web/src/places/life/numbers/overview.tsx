import type { AheadDocument, LifeDocument } from '@shoreglass/engine';
import { countText, dateLabel } from '@shoreglass/figures';
import { capital, percent } from '../../../outlook/turning-words.ts';
import styles from './overview.module.css';

interface OverviewProps {
  readonly document: AheadDocument;
  readonly populations: LifeDocument['populations'];
}

/** Everybody in one table, each a way to its own part below. */
export function Overview({ document, populations }: OverviewProps) {
  const { startDate } = document.enclosure;
  return (
    <table className={styles.table}>
      <caption>
        Everybody at a glance: animals, {document.run.members > 1 ? 'medians of the runs' : 'expected run'}
      </caption>
      <thead>
        <tr>
          <th scope="col">Who</th>
          <th scope="col">Last day</th>
          <th scope="col">At most</th>
          <th scope="col" className={styles.wide}>
            First young
          </th>
          <th scope="col">Die out</th>
        </tr>
      </thead>
      <tbody>
        {populations.map(({ id, name }) => {
          const series = document.series[`population:${id}`];
          const counts = series?.q50 ?? [];
          const most = Math.max(0, ...counts);
          return (
            <tr key={id}>
              <th scope="row">
                <button type="button" onClick={() => jumpTo(id)}>
                  {capital(name)}
                </button>
              </th>
              <td>{countText(counts.at(-1) ?? 0)}</td>
              <td>
                {countText(most)}{' '}
                {most > 0 && <span>{dateLabel(startDate, series?.days[counts.indexOf(most)] ?? 0)}</span>}
              </td>
              <td className={styles.wide}>
                <Turning document={document} id={id} kind="first young" never="none" />
              </td>
              <td>
                <Turning document={document} id={id} kind="dies out" never="no" />
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

function jumpTo(id: string): void {
  const part = document.getElementById(`of-${id}`);
  if (!(part instanceof HTMLDetailsElement)) return;
  part.open = true;
  part.scrollIntoView({ block: 'start' });
  part.querySelector('summary')?.focus({ preventScroll: true });
}

interface TurningProps {
  readonly document: AheadDocument;
  readonly id: string;
  readonly kind: 'first young' | 'dies out';
  readonly never: string;
}

/** "12 May", and below it "80 % of runs" where not all of them come to it. */
function Turning({ document, id, kind, never }: TurningProps) {
  const { turningPoints, enclosure, run } = document;
  const point = turningPoints.find((each) => each.subject === `population:${id}` && each.kind === kind);
  if (!point) return <>{never}</>;
  const isSure = run.members === 1 || point.probability >= 0.995;
  return (
    <>
      {dateLabel(enclosure.startDate, Math.round(point.window.median))}{' '}
      {!isSure && <span>{percent(point.probability)} of runs</span>}
    </>
  );
}
