import type { LengthUnit } from '@shoreglass/figures';
import { useStore } from 'zustand';
import type { Desk } from './shape-desk-store.ts';
import styles from './tool-bar.module.css';
import { useUnit } from './units.ts';

interface ToolBarProps {
  readonly desk: Desk;
  readonly snap: boolean;
  readonly onSnap: (snap: boolean) => void;
}

const UNITS: readonly { readonly unit: LengthUnit; readonly name: string; readonly about: string }[] = [
  { unit: 'cm', name: 'cm', about: 'centimetres, litres, kilograms' },
  { unit: 'in', name: 'in', about: 'inches, gallons, pounds' },
];

/** Undo and redo, the grid, and the unit. */
export function ToolBar({ desk, snap, onSnap }: ToolBarProps) {
  const { past, future } = useStore(desk, ({ history }) => history);
  const { unit: chosen, choose } = useUnit();
  const [last, next] = [past.at(-1), future[0]];
  return (
    <div className={styles.bar}>
      <div className={styles.steps}>
        <button type="button" disabled={!last} title={last && `Undo: ${last.words}`} onClick={desk.undo}>
          Undo
        </button>
        <button type="button" disabled={!next} title={next && `Redo: ${next.words}`} onClick={desk.redo}>
          Redo
        </button>
      </div>
      <label className={styles.snap} title="What is dragged keeps to the grid and to its neighbours">
        <input type="checkbox" checked={snap} onChange={(event) => onSnap(event.target.checked)} />
        <span>Grid</span>
      </label>
      <fieldset className={styles.units}>
        <legend>Unit</legend>
        {UNITS.map(({ unit, name, about }) => (
          <label key={unit} title={about}>
            <input
              type="radio"
              name="length-unit"
              aria-label={about}
              checked={unit === chosen}
              onChange={() => choose(unit)}
            />
            <span aria-hidden="true">{name}</span>
          </label>
        ))}
      </fieldset>
    </div>
  );
}
