import type { CountsAnswer } from '@shoreglass/contract';
import type { AheadDocument, QuantileSeries } from '@shoreglass/engine';
import { countsChartScene, isoDay, palette } from '@shoreglass/figures';
import { useMemo } from 'react';
import { Link } from 'wouter';
import { useView } from '../../../app/view.ts';
import { SceneView } from '../../../drawing/scene-view.tsx';
import { useWidth } from '../../../drawing/use-width.ts';
import desk from '../../sheets/desk.module.css';
import styles from './counts-part.module.css';

interface CountsAnswerProps {
  readonly answer: CountsAnswer;
  /** Who was counted. */
  readonly name: string;
  /** Day of the run that the first count names, where days were written instead of dates. */
  readonly firstDay: number;
  readonly document: AheadDocument;
  /** Computed numbers of the species; undefined until all runs are there, or where it does not live here. */
  readonly series: QuantileSeries | undefined;
}

/** What counts tell: the chart, the findings with their sources, and what to mind. */
export function CountsAnswerView(props: CountsAnswerProps) {
  const { sentences, cautions, species, computed } = props.answer;
  return (
    <>
      <CountsChart {...props} />
      <ul className={styles.told}>
        {sentences.map(({ text, source }) => (
          <li key={text}>
            {text} <small>{source}</small>
          </li>
        ))}
        {species?.sentences.map((text) => (
          <li key={text}>
            {text}{' '}
            <small>
              the life table of <Link href={`/library/organisms/${species.id}`}>{species.name}</Link>
            </small>
          </li>
        ))}
        {computed && (
          <li>
            {computed.sentence} <small>the outlook of {computed.enclosure}</small>
          </li>
        )}
      </ul>
      <h3>To mind</h3>
      <ul className={`${styles.cautions} ${desk.soft}`}>
        {cautions.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </>
  );
}

const HEIGHT = 320;

function CountsChart({ answer, name, firstDay, document, series }: CountsAnswerProps) {
  const [host, width] = useWidth<HTMLDivElement>();
  const view = useView((state) => state.view);
  const scene = useMemo(
    () =>
      width === 0
        ? undefined
        : countsChartScene({
            name,
            startDate: answer.startDate ?? isoDay(document.enclosure.startDate, firstDay),
            counts: answer.counts,
            course: answer.course,
            computed: computedCourse(answer, series),
            unit: answer.byEffort ? 'animals in a unit of effort' : 'animals',
            width,
            height: HEIGHT,
            palette: palette(view),
          }),
    [answer, name, firstDay, document, series, width, view],
  );
  return <div ref={host}>{scene && <SceneView scene={scene} />}</div>;
}

/** The computed numbers of the days counted, days from the first count. */
function computedCourse({ computed, counts }: CountsAnswer, series: QuantileSeries | undefined) {
  if (!computed || !series) return [];
  const span = counts.at(-1)?.day ?? 0;
  return series.days.flatMap((of, at) => {
    const day = of - computed.firstDay;
    const [low, value, high] = [series.q05[at], series.q50[at], series.q95[at]];
    if (day < 0 || day > span || low === undefined || value === undefined || high === undefined) return [];
    return [{ day, low, value, high }];
  });
}
