import type { RibbonScale } from '@shoreglass/figures';
import type { KeyboardEvent, PointerEvent } from 'react';
import { useChosenDay } from '../../outlook/chosen-day.ts';
import { dayNumber, fullDate } from '../../outlook/day-words.ts';
import styles from './day-handle.module.css';

interface DayHandleProps {
  readonly startDate: string;
  readonly lastDay: number;
  readonly scale: RibbonScale;
  /** Height of the axis in the ribbon, on which the handle is drawn [px]. */
  readonly axis: number;
}

const LONG_STEP = 30;

/** Lies over the ribbon: the whole strip can be dragged, and the handle answers to the keyboard. */
export function DayHandle({ startDate, lastDay, scale, axis }: DayHandleProps) {
  const day = useChosenDay((state) => state.day);
  const choose = useChosenDay((state) => state.choose);
  const within = (wanted: number) => Math.min(lastDay, Math.max(0, wanted));

  const dayUnder = (event: PointerEvent<HTMLElement>) => {
    const { left } = event.currentTarget.getBoundingClientRect();
    return within(((event.clientX - left) / (scale.right - scale.left)) * scale.days);
  };
  const take = (event: PointerEvent<HTMLElement>) => {
    if (event.button !== 0) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    event.currentTarget.querySelector<HTMLElement>('[role="slider"]')?.focus({ preventScroll: true });
    choose(dayUnder(event));
  };
  const drag = (event: PointerEvent<HTMLElement>) => {
    if (event.currentTarget.hasPointerCapture(event.pointerId)) choose(dayUnder(event));
  };
  const settle = () => choose(Math.round(useChosenDay.getState().day));
  const step = (event: KeyboardEvent) => {
    const target = STEPS[event.key]?.(Math.round(day), lastDay);
    if (target === undefined) return;
    event.preventDefault();
    choose(within(target));
  };

  return (
    <div
      className={styles.strip}
      style={{ left: scale.left, width: scale.right - scale.left }}
      onPointerDown={take}
      onPointerMove={drag}
      onPointerUp={settle}
      onPointerCancel={settle}
    >
      <div
        role="slider"
        tabIndex={0}
        aria-label="Chosen day"
        aria-orientation="horizontal"
        aria-valuemin={0}
        aria-valuemax={lastDay}
        aria-valuenow={Math.round(day)}
        aria-valuetext={`${fullDate(startDate, day)}, ${dayNumber(day)}`}
        className={styles.handle}
        style={{ left: scale.toX(day) - scale.left, top: axis }}
        onKeyDown={step}
      />
    </div>
  );
}

const STEPS: Readonly<Record<string, (day: number, lastDay: number) => number>> = {
  ArrowRight: (day) => day + 1,
  ArrowUp: (day) => day + 1,
  ArrowLeft: (day) => day - 1,
  ArrowDown: (day) => day - 1,
  PageUp: (day) => day + LONG_STEP,
  PageDown: (day) => day - LONG_STEP,
  Home: () => 0,
  End: (_, lastDay) => lastDay,
};
