import { memo, useEffect } from 'react';
import { flushSync } from 'react-dom';
import { useView } from '../../app/view.ts';
import type { SoundShape } from '../../worker/shape-orders.ts';
import { useClimate, useCoverAnswer } from './desk/use-climate.ts';
import type { Amounts } from './figures/amounts.ts';
import { ClimateFigures } from './figures/climate-figures.tsx';
import { CoverQuestion } from './figures/cover-question.tsx';
import { FlowFigures } from './figures/flow-figures.tsx';
import { LightFigures } from './figures/light-figures.tsx';
import { WaterFigures, WayFigures, ZoneFigures } from './figures/water-figures.tsx';
import { GlassFigures, WeightFigures } from './figures/weight-figures.tsx';
import styles from './shape-view.module.css';

interface ShapeSheetViewProps {
  readonly shape: SoundShape;
  /** Without what is being dragged: the year is computed when the hand rests. */
  readonly settled: SoundShape;
  readonly amounts: Amounts;
  readonly onOpen: (open: number) => void;
}

/** Every figure of the shape; printed, it is the sheet one takes to the workbench. */
export const ShapeSheetView = memo(function ShapeSheetView({
  shape,
  settled,
  amounts,
  onOpen,
}: ShapeSheetViewProps) {
  const { sheet } = shape;
  const climate = useClimate(settled.plan);
  const [cover, ask] = useCoverAnswer(settled.plan);
  usePrintedByDay();
  return (
    <>
      <div className={styles.sheetHead}>
        <h2>All figures</h2>
        <button type="button" onClick={() => print()}>
          Print the sheet
        </button>
      </div>
      <div className={styles.sheet}>
        <WaterFigures sheet={sheet} amounts={amounts} />
        <ZoneFigures sheet={sheet} amounts={amounts} />
        <WayFigures sheet={sheet} amounts={amounts} />
        <WeightFigures sheet={sheet} amounts={amounts} />
        <GlassFigures sheet={sheet} amounts={amounts} />
        <FlowFigures sheet={sheet} amounts={amounts} />
        <LightFigures sheet={sheet} amounts={amounts} />
        <ClimateFigures
          sheet={sheet}
          climate={climate.value}
          stale={climate.busy || climate.of !== settled.plan}
          failure={climate.failure}
          amounts={amounts}
        />
        <CoverQuestion
          answer={cover.value}
          busy={cover.busy}
          failure={cover.failure}
          stale={cover.value !== undefined && cover.of !== settled.plan}
          amounts={amounts}
          onAsk={ask}
          onTake={onOpen}
        />
      </div>
      <p className={styles.sheetFoot}>
        Figures of a plan, not of what stands: where people, homes or animals are at risk, ask a professional;
        local codes and licensed trades decide.
      </p>
    </>
  );
});

/** Paper is light: the night view gives way while the sheet is printed. */
function usePrintedByDay(): void {
  useEffect(() => {
    let before = useView.getState().view;
    const start = () => {
      before = useView.getState().view;
      flushSync(() => useView.setState({ view: 'day' }));
    };
    const end = () => useView.setState({ view: before });
    addEventListener('beforeprint', start);
    addEventListener('afterprint', end);
    return () => {
      removeEventListener('beforeprint', start);
      removeEventListener('afterprint', end);
    };
  }, []);
}
