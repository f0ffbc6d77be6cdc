import { palette, sectionHeight, sectionLayout, sectionScene } from '@shoreglass/figures';
import { useMemo } from 'react';
import { useView } from '../../../app/view.ts';
import type { SoundShape } from '../../../worker/shape-orders.ts';
import { Board, type BoardMap, type Mark } from './board.tsx';
import type { BoardActions } from './board-actions.ts';

interface SectionBoardProps extends BoardActions {
  readonly shape: SoundShape;
  readonly width: number;
}

const PLANNED = { day: 0, populations: {} } as const;

/** The section, to take hold of: heights, levels and what stands in them. */
export function SectionBoard({ shape, width, ...actions }: SectionBoardProps) {
  const view = useView((state) => state.view);
  const { unit } = actions;
  // Plants and animals are drawn where they are kept; here they would stand in the way of the hand.
  const plan = useMemo(() => ({ ...shape.plan, populations: [], plants: [] }), [shape.plan]);
  const size = useMemo(
    () => ({ width, height: sectionHeight({ plan, width, labels: false }) }),
    [plan, width],
  );
  const scene = useMemo(
    () =>
      sectionScene({
        plan,
        day: PLANNED,
        size,
        palette: palette(view),
        labels: false,
        layerNames: width > 420,
        unit,
        grid: true,
      }),
    [plan, size, view, unit, width],
  );
  const map = useMemo((): BoardMap => {
    const { inside, pixelsPerMetre } = sectionLayout(plan, size, false);
    return { across: 'x', up: 'z', pixelsPerMetre, ...inside };
  }, [plan, size]);
  const marks = actions.shown.flatMap((handle): Mark[] =>
    handle.inSection ? [{ handle, across: handle.inSection.x, up: handle.inSection.z }] : [],
  );
  return <Board name="Section" scene={scene} map={map} marks={marks} {...actions} />;
}
