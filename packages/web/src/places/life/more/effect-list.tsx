import { type AdditionEffect, type SeriesId, seriesSpec } from '@shoreglass/engine';
import { effectScene, palette } from '@shoreglass/figures';
import { useMemo } from 'react';
import { useView } from '../../../app/view.ts';
import { SceneView } from '../../../drawing/scene-view.tsx';
import { useWidth } from '../../../drawing/use-width.ts';
import { useRestedDay } from '../../../outlook/chosen-day.ts';
import { capital } from '../../../outlook/turning-words.ts';
import { effectSentence, moves } from './effect-words.ts';
import styles from './more-part.module.css';

interface EffectListProps {
  readonly effects: readonly AdditionEffect[];
  readonly nameOf: (series: string) => string;
  readonly startDate: string;
}

/** What moves, animals first, each as a sentence and a small plot; what hardly moves is named at the end. */
export function EffectList({ effects, nameOf, startDate }: EffectListProps) {
  const whole = effects.filter(({ series }) => !series.endsWith(':adult'));
  const shown = whole.filter(moves);
  const still = whole.filter((effect) => !shown.includes(effect));
  const animals = shown.filter(({ series }) => series.startsWith('population:'));
  const others = shown.filter((effect) => !animals.includes(effect));
  return (
    <>
      <ul className={styles.effects}>
        {[...animals, ...others].map((effect) => (
          <li key={effect.series}>
            <EffectPlot effect={effect} name={nameOf(effect.series)} startDate={startDate} />
            <p>{effectSentence(effect)}</p>
          </li>
        ))}
      </ul>
      {still.length > 0 && (
        <p className={styles.still}>Hardly moved: {still.map(({ series }) => nameOf(series)).join(', ')}.</p>
      )}
    </>
  );
}

interface EffectPlotProps {
  readonly effect: AdditionEffect;
  readonly name: string;
  readonly startDate: string;
}

const HEIGHT = 150;

function EffectPlot({ effect, name, startDate }: EffectPlotProps) {
  const [host, width] = useWidth<HTMLDivElement>();
  const view = useView((state) => state.view);
  const day = useRestedDay();
  const { series, course, courseLow, courseHigh } = effect;
  const scene = useMemo(() => {
    if (width === 0) return undefined;
    const { unit, digits } = seriesSpec(series as SeriesId);
    return effectScene({
      name: capital(name),
      unit,
      digits,
      low: courseLow,
      middle: course,
      high: courseHigh,
      startDate,
      day,
      width,
      height: HEIGHT,
      palette: palette(view),
    });
  }, [width, view, day, series, name, course, courseLow, courseHigh, startDate]);
  return <div ref={host}>{scene && <SceneView scene={scene} />}</div>;
}
