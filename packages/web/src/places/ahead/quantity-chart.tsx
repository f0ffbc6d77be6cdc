import type { AheadDocument, SeriesId } from '@shoreglass/engine';
import { memo } from 'react';
import { FanChart } from '../../drawing/fan-chart.tsx';
import { useRestedDay } from '../../outlook/chosen-day.ts';
import { capital } from '../../outlook/turning-words.ts';

interface QuantityChartProps {
  readonly document: AheadDocument;
  readonly id: SeriesId;
  readonly today: number | undefined;
  /** Readings of it, drawn as open circles. */
  readonly readings?: readonly { readonly day: number; readonly value: number }[];
}

const HEIGHT = 270;

/** One quantity over the whole run. It follows the chosen day when that comes to rest. */
export const QuantityChart = memo(function QuantityChart({
  document,
  id,
  today,
  readings,
}: QuantityChartProps) {
  const day = useRestedDay();
  const name = capital(document.series[id]?.name ?? '');
  return (
    <FanChart
      document={document}
      id={id}
      name={name}
      height={HEIGHT}
      day={day}
      today={today}
      readings={readings}
    />
  );
});
