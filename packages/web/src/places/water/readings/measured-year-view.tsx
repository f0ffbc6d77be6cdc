import type { AheadDocument, Plan, SeriesId } from '@shoreglass/engine';
import { Trouble } from '../../../app/trouble.tsx';
import { FanChart } from '../../../drawing/fan-chart.tsx';
import { horizonWords } from '../../../outlook/horizon-words.ts';
import { capital } from '../../../outlook/turning-words.ts';
import desk from '../../sheets/desk.module.css';
import {
  MEASURED_RUNS,
  measuredKey,
  readingsLine,
  startMeasuredYear,
  useMeasuredYear,
} from './measured-year.ts';
import styles from './readings-part.module.css';
import type { ReadingEntry } from './readings-store.ts';

interface MeasuredYearViewProps {
  readonly document: AheadDocument;
  readonly plan: Plan;
  readonly entry: ReadingEntry;
}

const SHOWN: readonly SeriesId[] = ['KH', 'pH', 'GH', 'conductivity'];

/** The year from the day of the latest readings on, with the water as it was read. */
export function MeasuredYearView({ document, plan, entry }: MeasuredYearViewProps) {
  const { id } = document.enclosure;
  const year = useMeasuredYear((state) => state.year);
  const shown = year?.of === measuredKey(id, entry) ? year : undefined;
  const start = () => void startMeasuredYear(id, plan, entry, document.run.days);
  if (readingsLine(entry) === '') return null;
  return (
    <section aria-labelledby="measured" className={desk.block}>
      <h2 id="measured">The year from there</h2>
      <p className={desk.soft}>
        The same plan, begun on the day you read with the water as you read it: plants, bacteria and animals
        begin as the file has them.
      </p>
      {!shown && (
        <p>
          <button type="button" className={desk.second} onClick={start}>
            Start the year from these readings
          </button>
        </p>
      )}
      {shown?.failure !== undefined && <Trouble error={new Error(shown.failure)} again={start} />}
      {shown && !shown.complete && shown.failure === undefined && (
        <p role="status">
          {shown.done} of {MEASURED_RUNS} runs
        </p>
      )}
      {shown?.inferred.map((sentence) => (
        <p key={sentence} className={desk.soft}>
          {sentence}
        </p>
      ))}
      {shown?.document && <MeasuredCourses document={shown.document} />}
    </section>
  );
}

const HEIGHT = 220;

function MeasuredCourses({ document }: { readonly document: AheadDocument }) {
  const { figure, after, spread } = horizonWords(document);
  return (
    <>
      <p>
        <strong>{figure}</strong> {after}. {spread}
      </p>
      <ul className={styles.courses}>
        {SHOWN.filter((id) => id in document.series).map((id) => (
          <li key={id}>
            <FanChart
              document={document}
              id={id}
              name={`${capital(document.series[id]?.name ?? '')}, from your reading`}
              height={HEIGHT}
            />
          </li>
        ))}
      </ul>
    </>
  );
}
