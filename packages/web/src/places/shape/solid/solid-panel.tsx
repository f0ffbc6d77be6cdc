import { palette, solidScene, viewWords } from '@shoreglass/figures';
import { type KeyboardEvent, memo, type PointerEvent, useEffect, useMemo, useRef, useState } from 'react';
import { useView } from '../../../app/view.ts';
import { SceneView } from '../../../drawing/scene-view.tsx';
import { useWidth } from '../../../drawing/use-width.ts';
import type { SoundShape } from '../../../worker/shape-orders.ts';
import styles from './solid-panel.module.css';

const START = { turn: 28, tilt: 26 } as const;
const TILT = { low: 0, high: 80 } as const;
const STEP = 5;
const TURNING_MILLISECONDS = 320;

interface Direction {
  readonly turn: number;
  readonly tilt: number;
}

/** The enclosure as a body: drag it, or use the arrow keys or buttons, to see it from another side. */
export const SolidPanel = memo(function SolidPanel({ shape }: { readonly shape: SoundShape }) {
  const [host, width] = useWidth<HTMLDivElement>();
  const view = useView((state) => state.view);
  const [direction, setDirection] = useState<Direction>(START);
  const [turnBy, halt] = useTurning(direction, setDirection);
  const dragged = useRef<{ x: number; y: number; from: Direction }>(undefined);
  const { plan } = shape;
  const { field } = shape.sheet.geometry;
  const size = useMemo(() => ({ width, height: Math.round(Math.min(400, width * 0.72)) }), [width]);
  const scene = useMemo(
    () => (width > 0 ? solidScene({ plan, field, size, palette: palette(view), ...direction }) : undefined),
    [plan, field, size, view, direction, width],
  );

  const take = (event: PointerEvent<HTMLDivElement>) => {
    if (event.button !== 0) return;
    halt();
    event.currentTarget.setPointerCapture(event.pointerId);
    dragged.current = { x: event.clientX, y: event.clientY, from: direction };
  };
  const drag = (event: PointerEvent<HTMLDivElement>) => {
    const start = dragged.current;
    if (!start || !event.currentTarget.hasPointerCapture(event.pointerId)) return;
    setDirection({
      turn: around(start.from.turn - (event.clientX - start.x) * 0.5),
      tilt: within(start.from.tilt + (event.clientY - start.y) * 0.35),
    });
  };
  const drop = () => {
    dragged.current = undefined;
  };
  const press = (event: KeyboardEvent) => {
    const step = KEYS[event.key];
    if (!step) return;
    event.preventDefault();
    halt();
    setDirection(({ turn, tilt }) => ({ turn: around(turn + step.turn), tilt: within(tilt + step.tilt) }));
  };

  const { turn, tilt } = direction;
  return (
    <section aria-label="Turned view" className={styles.solid}>
      <div
        ref={host}
        className={styles.body}
        role="slider"
        tabIndex={0}
        aria-label="Turn the enclosure"
        aria-valuemin={0}
        aria-valuemax={359}
        aria-valuenow={Math.round(turn) % 360}
        aria-valuetext={`seen ${viewWords(turn, tilt)}`}
        onPointerDown={take}
        onPointerMove={drag}
        onPointerUp={drop}
        onPointerCancel={drop}
        onKeyDown={press}
      >
        {scene && <SceneView scene={scene} />}
      </div>
      <div className={styles.ways}>
        <button type="button" onClick={() => turnBy({ turn: -45, tilt: 0 })}>
          Turn left
        </button>
        <button type="button" onClick={() => turnBy({ turn: 45, tilt: 0 })}>
          Turn right
        </button>
        <button type="button" onClick={() => turnBy({ turn: 0, tilt: 20 })}>
          Higher
        </button>
        <button type="button" onClick={() => turnBy({ turn: 0, tilt: -20 })}>
          Lower
        </button>
      </div>
    </section>
  );
});

const KEYS: Readonly<Record<string, Direction>> = {
  ArrowLeft: { turn: -STEP, tilt: 0 },
  ArrowRight: { turn: STEP, tilt: 0 },
  ArrowUp: { turn: 0, tilt: STEP },
  ArrowDown: { turn: 0, tilt: -STEP },
  PageUp: { turn: 45, tilt: 0 },
  PageDown: { turn: -45, tilt: 0 },
};

const around = (turn: number) => ((turn % 360) + 360) % 360;
const within = (tilt: number) => Math.min(TILT.high, Math.max(TILT.low, tilt));

/**
 * Turns by so much in a third of a second; at once where the device asks for no motion. Asked again on the way, it goes
 * on from where it was bound for; the second of the pair ends it where it is.
 */
function useTurning(now: Direction, set: (direction: Direction) => void) {
  const frame = useRef(0);
  const goal = useRef<Direction>(undefined);
  const halt = () => {
    cancelAnimationFrame(frame.current);
    goal.current = undefined;
  };
  useEffect(() => () => cancelAnimationFrame(frame.current), []);
  const turnBy = (by: Direction) => {
    const from = goal.current ?? now;
    const to = { turn: from.turn + by.turn, tilt: within(from.tilt + by.tilt) };
    halt();
    const rest = { turn: around(to.turn), tilt: to.tilt };
    if (matchMedia('(prefers-reduced-motion: reduce)').matches) return set(rest);
    goal.current = to;
    const start = performance.now();
    const move = (time: number) => {
      const share = Math.min(1, Math.max(0, (time - start) / TURNING_MILLISECONDS));
      const ease = share * share * (3 - 2 * share);
      set({
        turn: around(now.turn + (to.turn - now.turn) * ease),
        tilt: now.tilt + (to.tilt - now.tilt) * ease,
      });
      if (share < 1) frame.current = requestAnimationFrame(move);
      else goal.current = undefined;
    };
    frame.current = requestAnimationFrame(move);
  };
  return [turnBy, halt] as const;
}
