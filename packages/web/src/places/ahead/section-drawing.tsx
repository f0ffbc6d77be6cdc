import type { AheadDocument } from '@shoreglass/engine';
import {
  dayStateOf,
  palette,
  type SectionPlan,
  sectionHeight,
  sectionLegend,
  sectionScene,
} from '@shoreglass/figures';
import { useMemo } from 'react';
import { useView } from '../../app/view.ts';
import { SceneView } from '../../drawing/scene-view.tsx';
import { useScreenHeight } from '../../drawing/use-screen-height.ts';
import { useWidth } from '../../drawing/use-width.ts';
import { useChosenDay } from '../../outlook/chosen-day.ts';
import styles from './section-drawing.module.css';

interface SectionDrawingProps {
  readonly plan: SectionPlan;
  readonly document: AheadDocument;
}

/** Narrower than this the names do not fit beside the glass: plate letters stand for them. */
const ROOM_FOR_NAMES = 620;
/** What the header and the ribbon take of the height of a screen, so that all three are seen together [px]. */
const REST_OF_SCREEN = 392;

/** The enclosure cut along its length, as it would be on the chosen day. */
export function SectionDrawing({ plan, document }: SectionDrawingProps) {
  const [host, width] = useWidth<HTMLElement>();
  const day = useChosenDay((state) => state.day);
  const view = useView((state) => state.view);
  const screenRoom = Math.max(420, useScreenHeight() - REST_OF_SCREEN);
  const labels = width >= ROOM_FOR_NAMES;
  const state = useMemo(() => dayStateOf(document, day), [document, day]);
  const size = useMemo(
    () => ({
      width,
      height: Math.min(sectionHeight({ plan, width, labels }), labels ? screenRoom : Infinity),
    }),
    [plan, width, labels, screenRoom],
  );
  const scene = useMemo(
    () => (width > 0 ? sectionScene({ plan, day: state, size, palette: palette(view), labels }) : undefined),
    [plan, state, size, view, labels, width],
  );
  return (
    <figure ref={host} className={styles.drawing}>
      {scene && <SceneView scene={scene} />}
    </figure>
  );
}

/** What the plate letters of a small drawing stand for on the chosen day. */
export function SectionKey({ plan, document }: SectionDrawingProps) {
  const day = useChosenDay((state) => Math.round(state.day));
  const entries = useMemo(
    () => sectionLegend({ plan, day: dayStateOf(document, day) }),
    [plan, document, day],
  );
  return (
    <section aria-labelledby="letters" className={styles.key}>
      <h2 id="letters">In the drawing</h2>
      <ul>
        {entries.map(({ key, letter, number, name, interval, alarm }) => (
          <li key={key}>
            <span className={styles.letter}>{letter}</span>
            <span>
              <strong>{number}</strong> {name}
              <span className={styles.interval}>{alarm ?? interval}</span>
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}
