import type { AheadDocument, SeriesId } from '@shoreglass/engine';
import { useRestedDay } from '../../../outlook/chosen-day.ts';
import { QuantityChart } from '../../ahead/quantity-chart.tsx';
import styles from './course-chart.module.css';
import { dayValueWords } from './day-value-words.ts';

interface CourseChartProps {
  readonly document: AheadDocument;
  readonly id: SeriesId;
  readonly today: number | undefined;
  readonly readings: readonly { readonly day: number; readonly value: number }[];
}

/** One quantity of the water over the run with its readings, and the chosen day in words. */
export function CourseChart(props: CourseChartProps) {
  const day = useRestedDay();
  return (
    <div>
      <QuantityChart {...props} />
      <p className={styles.words}>{dayValueWords(props.document, props.id, day)}</p>
    </div>
  );
}
