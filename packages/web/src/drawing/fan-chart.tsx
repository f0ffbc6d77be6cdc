import type { AheadDocument, SeriesId } from '@shoreglass/engine';
import { type FanChartOptions, fanChartScene, palette } from '@shoreglass/figures';
import { useMemo } from 'react';
import { useView } from '../app/view.ts';
import { SceneView } from './scene-view.tsx';
import { useWidth } from './use-width.ts';

interface FanChartProps {
  readonly document: AheadDocument;
  readonly id: SeriesId;
  readonly name: string;
  /** [px] */
  readonly height: number;
  readonly day?: number | undefined;
  readonly today?: number | undefined;
  readonly readings?: FanChartOptions['readings'];
}

/** One quantity of an outlook over its run, as wide as there is room. */
export function FanChart({ document, id, name, height, day, today, readings }: FanChartProps) {
  const [host, width] = useWidth<HTMLDivElement>();
  const view = useView((state) => state.view);
  const series = document.series[id];
  const scene = useMemo(
    () =>
      series && width > 0
        ? fanChartScene({
            id,
            series,
            name,
            startDate: document.enclosure.startDate,
            width,
            height,
            palette: palette(view),
            ...(day === undefined ? {} : { day }),
            ...(today === undefined ? {} : { today }),
            ...(readings === undefined ? {} : { readings }),
          })
        : undefined,
    [id, series, name, document, width, height, view, day, today, readings],
  );
  return <div ref={host}>{scene && <SceneView scene={scene} />}</div>;
}
