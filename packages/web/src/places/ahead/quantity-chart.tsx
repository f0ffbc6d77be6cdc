import type { AheadDocument, SeriesId } from '@shoreglass/engine';
import { fanChartScene, palette } from '@shoreglass/figures';
import { memo, useMemo } from 'react';
import { useView } from '../../app/view.ts';
import { SceneView } from '../../drawing/scene-view.tsx';
import { useWidth } from '../../drawing/use-width.ts';
import { useRestedDay } from '../../outlook/chosen-day.ts';
import { capital } from '../../outlook/turning-words.ts';

interface QuantityChartProps {
  readonly document: AheadDocument;
  readonly id: SeriesId;
  readonly today: number | undefined;
}

const HEIGHT = 270;

/** One quantity over the whole run. It follows the chosen day when that comes to rest. */
export const QuantityChart = memo(function QuantityChart({ document, id, today }: QuantityChartProps) {
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
            ...(today === undefined ? {} : { today }),
          })
        : undefined,
    [id, series, document, width, view, day, today],
  );
  return <div ref={host}>{scene && <SceneView scene={scene} />}</div>;
});
