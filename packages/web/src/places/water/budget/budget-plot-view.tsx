import { budgetCourseScene, budgetPlot, type GatheredBudget, palette } from '@shoreglass/figures';
import { type MouseEvent, useMemo } from 'react';
import { useView } from '../../../app/view.ts';
import { SceneView } from '../../../drawing/scene-view.tsx';
import { useWidth } from '../../../drawing/use-width.ts';

interface BudgetPlotViewProps {
  readonly gathered: GatheredBudget;
  readonly name: string;
  readonly startDate: string;
  readonly chosen: number | undefined;
  readonly onPick: (period: number) => void;
}

/** The bars of a budget. A tap on one sums the table over it; the list above the table does the same by keyboard. */
export function BudgetPlotView({ gathered, name, startDate, chosen, onPick }: BudgetPlotViewProps) {
  const [host, width] = useWidth<HTMLDivElement>();
  const view = useView((state) => state.view);
  const height = width > 600 ? 380 : 320;
  const scene = useMemo(
    () =>
      width > 0
        ? budgetCourseScene({
            budget: gathered,
            name,
            startDate,
            width,
            height,
            palette: palette(view),
            ...(chosen === undefined ? {} : { chosen }),
          })
        : undefined,
    [gathered, name, startDate, width, height, view, chosen],
  );
  const pick = ({ clientX, currentTarget }: MouseEvent<HTMLElement>) => {
    const { toX } = budgetPlot({ budget: gathered, width, height });
    const x = clientX - currentTarget.getBoundingClientRect().left;
    const period = gathered.periods.findIndex(({ from, to }) => x >= toX(from) && x < toX(to));
    if (period >= 0) onPick(period);
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the list of periods is the way for the keyboard
    // biome-ignore lint/a11y/useKeyWithClickEvents: the list of periods is the way for the keyboard
    <div ref={host} onClick={pick}>
      {scene && <SceneView scene={scene} />}
    </div>
  );
}
