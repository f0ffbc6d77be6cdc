import type { PaletteName } from '@shoreglass/figures';
import { useView } from './view.ts';
import styles from './view-choice.module.css';

const VIEWS: readonly { readonly view: PaletteName; readonly name: string }[] = [
  { view: 'day', name: 'Day' },
  { view: 'night', name: 'Night' },
];

/** Day or night view: two words, the chosen one underlined. */
export function ViewChoice() {
  const { view: chosen, choose } = useView();
  return (
    <fieldset className={styles.choice}>
      <legend className={styles.legend}>View</legend>
      {VIEWS.map(({ view, name }) => (
        <label key={view} className={styles.option}>
          <input type="radio" name="view" checked={view === chosen} onChange={() => choose(view)} />
          <span>{name}</span>
        </label>
      ))}
    </fieldset>
  );
}
