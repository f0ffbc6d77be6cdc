import type { AheadDocument, SeriesId } from '@shoreglass/engine';
import { palette, ribbonHeight, ribbonScale, ribbonScene } from '@shoreglass/figures';
import { useMemo } from 'react';
import { useView } from '../../app/view.ts';
import { SceneView } from '../../drawing/scene-view.tsx';
import { useWidth } from '../../drawing/use-width.ts';
import { useChosenDay } from '../../outlook/chosen-day.ts';
import { weightiest } from '../../outlook/weightiest.ts';
import { DayHandle } from './day-handle.tsx';
import styles from './ribbon-panel.module.css';

interface RibbonPanelProps {
  readonly document: AheadDocument;
  readonly today: number | undefined;
  readonly strips: readonly SeriesId[];
}

/** From the ribbon's lower edge to the axis on which the handle sits [px]. */
const AXIS_FROM_BOTTOM = 46;
const NARROW = 620;

/** The run on one time axis; dragging along it changes what everything else shows. */
export function RibbonPanel({ document, today, strips }: RibbonPanelProps) {
  const [host, width] = useWidth<HTMLDivElement>();
  const day = useChosenDay((state) => state.day);
  const view = useView((state) => state.view);
  const narrow = width < NARROW;
  const shown = useMemo(() => (narrow ? strips.slice(0, 1) : strips), [narrow, strips]);
  const request = useMemo(() => {
    const turningPoints = weightiest(document.turningPoints, narrow ? 4 : 8);
    return { document: { ...document, turningPoints }, strips: shown, width, rowHeight: narrow ? 60 : 42 };
  }, [document, shown, width, narrow]);
  const now = useMemo(() => (today === undefined ? {} : { today }), [today]);
  const scene = useMemo(
    () => (width > 0 ? ribbonScene({ ...request, ...now, day, palette: palette(view) }) : undefined),
    [request, day, now, view, width],
  );
  const scale = useMemo(() => ribbonScale({ days: document.run.days, width }), [document, width]);
  return (
    <section className={styles.ribbon} aria-label="Time ribbon">
      <div ref={host} className={styles.face}>
        {scene && (
          <>
            <SceneView scene={scene} />
            <DayHandle
              startDate={document.enclosure.startDate}
              lastDay={document.run.days - 1}
              scale={scale}
              axis={ribbonHeight(request) - AXIS_FROM_BOTTOM}
            />
          </>
        )}
      </div>
    </section>
  );
}
