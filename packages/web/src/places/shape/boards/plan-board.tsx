import { palette, planViewHeight, planViewLayout, planViewScene } from '@shoreglass/figures';
import { useMemo } from 'react';
import { useView } from '../../../app/view.ts';
import type { SoundShape } from '../../../worker/shape-orders.ts';
import { Board, type BoardMap, type Mark } from './board.tsx';
import type { BoardActions } from './board-actions.ts';

interface PlanBoardProps extends BoardActions {
  readonly shape: SoundShape;
  readonly width: number;
}

/** The plan from above, to take hold of: borders, corners and what lies where. */
export function PlanBoard({ shape, width, ...actions }: PlanBoardProps) {
  const view = useView((state) => state.view);
  const { unit } = actions;
  const { plan } = shape;
  const { field } = shape.sheet.geometry;
  const size = useMemo(() => ({ width, height: planViewHeight(plan, width) }), [plan, width]);
  const scene = useMemo(
    () => planViewScene({ plan, field, size, palette: palette(view), unit, grid: true }),
    [plan, field, size, view, unit],
  );
  const map = useMemo((): BoardMap => {
    const { inside, pixelsPerMetre } = planViewLayout(plan, size);
    return { across: 'x', up: 'y', pixelsPerMetre, ...inside };
  }, [plan, size]);
  const marks = actions.shown.flatMap((handle): Mark[] =>
    handle.inPlan ? [{ handle, across: handle.inPlan.x, up: handle.inPlan.y }] : [],
  );
  return <Board name="Plan" scene={scene} map={map} marks={marks} {...actions} />;
}
