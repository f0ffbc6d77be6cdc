import type { EffectCourse, PieceEffect } from '@shoreglass/engine';
import { dateLabel, effectScene, palette, quantityText } from '@shoreglass/figures';
import { useMemo } from 'react';
import { useView } from '../../../app/view.ts';
import { SceneView } from '../../../drawing/scene-view.tsx';
import { useWidth } from '../../../drawing/use-width.ts';
import { useRestedDay } from '../../../outlook/chosen-day.ts';
import { capital } from '../../../outlook/turning-words.ts';
import styles from './wood-part.module.css';

interface EffectRowProps {
  readonly effect: PieceEffect;
  readonly startDate: string;
}

/** One piece: what it is, what it does in a sentence, and a small plot for each quantity it moves. */
export function EffectRow({ effect, startDate }: EffectRowProps) {
  return (
    <li className={styles.piece}>
      <div>
        <h3>{effect.name}</h3>
        <p className={styles.mass}>{massText(effect.mass)} dry</p>
        <p>{withoutName(effect)}</p>
      </div>
      <ul className={styles.plots}>
        {effect.courses.map((course) => (
          <li key={course.series}>
            <EffectPlot course={course} startDate={startDate} />
          </li>
        ))}
      </ul>
    </li>
  );
}

/** The sentence begins with the name, which stands above it already. */
function withoutName({ name, sentence }: PieceEffect): string {
  return sentence.startsWith(`${capital(name)}: `) ? capital(sentence.slice(name.length + 2)) : sentence;
}

const HEIGHT = 150;
const DIGITS = { pH: 2, KH: 1, dissolvedOrganicCarbon: 1 } as const;

function EffectPlot({ course, startDate }: { readonly course: EffectCourse; readonly startDate: string }) {
  const [host, width] = useWidth<HTMLDivElement>();
  const view = useView((state) => state.view);
  const day = useRestedDay();
  const { series, name, unit, q05, q50, q95, largest } = course;
  const scene = useMemo(
    () =>
      width > 0
        ? effectScene({
            name: capital(name),
            unit,
            digits: DIGITS[series],
            low: q05,
            middle: q50,
            high: q95,
            startDate,
            day,
            width,
            height: HEIGHT,
            palette: palette(view),
          })
        : undefined,
    [width, view, day, series, name, unit, q05, q50, q95, startDate],
  );
  const digits = DIGITS[series];
  return (
    <div ref={host}>
      {scene && <SceneView scene={scene} />}
      <p className={styles.words}>
        {Math.abs(largest.q50) < 0.5 * 10 ** -digits
          ? 'Moves it too little to read.'
          : `Most on ${dateLabel(startDate, largest.day)}: ${signed(largest.q50, unit, digits)}; nine runs in ten between ${signed(largest.q05, '', digits)} and ${signed(largest.q95, '', digits)}.`}
      </p>
    </div>
  );
}

function signed(value: number, unit: string, digits: number): string {
  const text = quantityText(value, unit, digits);
  return value > 0 ? `+${text}` : text;
}

function massText(mass: number): string {
  return mass >= 1 ? quantityText(mass, 'kg', 1) : quantityText(mass * 1000, 'g');
}
