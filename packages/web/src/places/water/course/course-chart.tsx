import type { AheadDocument, SeriesId } from '@shoreglass/engine';
import { fanChartScene, palette } from '@shoreglass/figures';
import { memo, useMemo } from 'react';
import { useView } from '../../../app/view.ts';
import { SceneView } from '../../../drawing/scene-view.tsx';
import { useWidth } from '../../../drawing/use-width.ts';
import { useRestedDay } from '../../../outlook/chosen-day.ts';
import { capital } from '../../../outlook/turning-words.ts';
import styles from './course-chart.module.css';
import { dayValueWords } from './day-value-words.ts';

interface CourseChartProps {
  readonly document: AheadDocument;
  readonly id: SeriesId;
  readonly today: number | undefined;
  readonly readings: readonly { readonly day: number; readonly value: number }[];
}

const HEIGHT = 250;

/** One quantity of the water over the run, with the readings as open circles, and the chosen day in words. */
export const CourseChart = memo(function CourseChart({ document, id, today, readings }: CourseChartProps) {
  const [host, width] = useWidth<HTMLDivElement>();
  const view = useView((state) => state.view);
  const day = useRestedDay();
  const series = document.series[id];
  const scene = useMemo(
    () =>
      series && width > 0
        ? fanChartScene({
            id,
            series,
            name: capital(series.name),
            startDate: document.enclosure.startDate,
            width,
            height: HEIGHT,
            palette: palette(view),
            day,
            readings,
            ...(today === undefined ? {} : { today }),
          })
        : undefined,
    [id, series, document, width, view, day, today, readings],
  );
  return (
    <div ref={host}>
      {scene && <SceneView scene={scene} />}
      <p className={styles.words}>{dayValueWords(document, id, day)}</p>
    </div>
  );
});
