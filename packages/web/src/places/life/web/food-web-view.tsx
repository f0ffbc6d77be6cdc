import type { LifeDocument } from '@shoreglass/engine';
import { type FlowUnit, foodWebScene, NARROWEST_FOOD_WEB, palette } from '@shoreglass/figures';
import { useMemo } from 'react';
import { useView } from '../../../app/view.ts';
import { SceneView } from '../../../drawing/scene-view.tsx';
import { useWidth } from '../../../drawing/use-width.ts';

interface FoodWebViewProps {
  readonly life: LifeDocument;
  readonly week: number | undefined;
  readonly unit: FlowUnit;
  readonly when: string;
}

const WIDEST = 1100;

/** The drawing of who eats what; nothing where it finds no room, since the list says the same. */
export function FoodWebView({ life, week, unit, when }: FoodWebViewProps) {
  const [host, room] = useWidth<HTMLDivElement>();
  const view = useView((state) => state.view);
  const width = Math.min(WIDEST, room);
  const scene = useMemo(
    () =>
      width >= NARROWEST_FOOD_WEB
        ? foodWebScene({
            flows: life.flows,
            eaters: life.populations,
            ...(week === undefined ? {} : { week }),
            unit,
            when,
            width,
            palette: palette(view),
          })
        : undefined,
    [life, week, unit, when, width, view],
  );
  return <div ref={host}>{scene && <SceneView scene={scene} />}</div>;
}
