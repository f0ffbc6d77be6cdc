import type { LifeDocument } from '@shoreglass/engine';
import { type FlowUnit, flowAmountText, foodLook, palette, termSwatchScene } from '@shoreglass/figures';
import { useView } from '../../../app/view.ts';
import { SceneView } from '../../../drawing/scene-view.tsx';
import { capital } from '../../../outlook/turning-words.ts';
import styles from './flow-list.module.css';
import { eaterRows } from './flow-rows.ts';

interface FlowListProps {
  readonly life: LifeDocument;
  readonly week: number | undefined;
  readonly unit: FlowUnit;
}

/** What each eats, the largest first, with a bar as long as its share: beside the drawing, and below it on a phone. */
export function FlowList({ life, week, unit }: FlowListProps) {
  const view = useView((state) => state.view);
  const eaters = eaterRows(life, week);
  const most = Math.max(...eaters.flatMap(({ rows }) => rows.map(({ amount }) => amount)), 0);
  return (
    <ul className={styles.eaters}>
      {eaters.map(({ id, name, amount, rows, traces }) => (
        <li key={id}>
          <h3>
            {capital(name)}{' '}
            <span>{amount > 0 ? `eat ${flowAmountText(amount, unit)}` : 'eat nothing then'}</span>
          </h3>
          <ul>
            {rows.map((row) => (
              <li key={row.food} className={styles.flow}>
                <SceneView
                  className={styles.swatch}
                  scene={termSwatchScene(foodLook(row.food), palette(view), `list-${id}-${row.food}`)}
                />
                <span>{row.foodName}</span>
                <span className={styles.amount}>{flowAmountText(row.amount, unit)}</span>
                <progress value={row.amount} max={most} aria-hidden="true" />
              </li>
            ))}
          </ul>
          {traces.length > 0 && (
            <p className={styles.traces}>
              {rows.length > 0 ? 'And a trace' : 'A trace'} of {traces.join(', ')}.
            </p>
          )}
        </li>
      ))}
    </ul>
  );
}
