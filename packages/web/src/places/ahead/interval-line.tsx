import type { TurningPoint } from '@shoreglass/engine';
import styles from './interval-line.module.css';

interface IntervalLineProps {
  readonly window: TurningPoint['window'];
  /** Length of the run: every line has the same scale. */
  readonly days: number;
  readonly alarm: boolean;
}

const HEIGHT = 12;
const WIDTH = 168;

/** The days in which something may fall, on the run's length: 10 to 90 % as a stroke, the median as a dot. */
export function IntervalLine({ window, days, alarm }: IntervalLineProps) {
  const x = (day: number) => 4 + (day / days) * (WIDTH - 8);
  const middle = HEIGHT / 2;
  return (
    <svg className={styles.line} viewBox={`0 0 ${WIDTH} ${HEIGHT}`} data-alarm={alarm} aria-hidden="true">
      <line className={styles.scale} x1={x(0)} x2={x(days)} y1={middle} y2={middle} />
      <line className={styles.stroke} x1={x(window.early)} x2={x(window.late)} y1={middle} y2={middle} />
      <circle className={styles.dot} cx={x(window.median)} cy={middle} r={3.5} />
    </svg>
  );
}
