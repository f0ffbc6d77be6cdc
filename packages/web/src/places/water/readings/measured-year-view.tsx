import type { AheadDocument, Plan, SeriesId } from '@shoreglass/engine';
import { fanChartScene, palette } from '@shoreglass/figures';
import { useMemo } from 'react';
import { Trouble } from '../../../app/trouble.tsx';
import { useView } from '../../../app/view.ts';
import { SceneView } from '../../../drawing/scene-view.tsx';
import { useWidth } from '../../../drawing/use-width.ts';
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
            <Course document={document} id={id} />
          </li>
        ))}
      </ul>
    </>
  );
}

const HEIGHT = 220;

function Course({ document, id }: { readonly document: AheadDocument; readonly id: SeriesId }) {
  const [host, width] = useWidth<HTMLDivElement>();
  const view = useView((state) => state.view);
  const series = document.series[id];
  const scene = useMemo(
    () =>
      series && width > 0
        ? fanChartScene({
            id,
            series,
            name: `${capital(series.name)}, from your reading`,
            startDate: document.enclosure.startDate,
            width,
            height: HEIGHT,
            palette: palette(view),
          })
        : undefined,
    [series, id, document, width, view],
  );
  return <div ref={host}>{scene && <SceneView scene={scene} />}</div>;
}
