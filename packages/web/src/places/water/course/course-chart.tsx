import type { AheadDocument, SeriesId } from '@shoreglass/engine';
import { memo } from 'react';
import { FanChart } from '../../../drawing/fan-chart.tsx';
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
  const day = useRestedDay();
  const name = capital(document.series[id]?.name ?? '');
  return (
    <div>
      <FanChart
        document={document}
        id={id}
        name={name}
        height={HEIGHT}
        day={day}
        today={today}
        readings={readings}
      />
      <p className={styles.words}>{dayValueWords(document, id, day)}</p>
    </div>
  );
});
