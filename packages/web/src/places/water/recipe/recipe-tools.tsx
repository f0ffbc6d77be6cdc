import type { EnclosureFile, ShelfWater } from '@shoreglass/contract';
import type { RecipeChoice } from '@shoreglass/engine';
import { useState } from 'react';
import type { Shelf } from '../../../worker/messages.ts';
import desk from '../../sheets/desk.module.css';
import { useFileChange } from '../../sheets/file/use-file-change.ts';
import { useUnits } from '../amount/remembered-units.ts';
import { isoDate } from '../readings/readings-store.ts';
import type { Stays } from './pool-now.tsx';
import { type RecipeUse, recipeEdits } from './recipe-edits.ts';
import { recipeText } from './recipe-text.ts';
import styles from './recipe-tools.module.css';

interface RecipeToolsProps {
  readonly file: EnclosureFile;
  readonly shelf: Shelf;
  readonly waters: readonly ShelfWater[];
  readonly choice: RecipeChoice;
  /** Something else is asked for by now, and this recipe no longer its answer. */
  readonly stale: boolean;
  readonly stays: Stays | undefined;
}

const USES: readonly { readonly use: RecipeUse; readonly name: string; readonly done: string }[] = [
  { use: 'fill', name: 'Fill with it', done: 'The enclosure is now filled with the mixed water.' },
  { use: 'top-off', name: 'Top off with it', done: 'The mixed water now replaces what evaporates.' },
];

/** What can be done with a recipe: copied, printed, put into the enclosure's file. */
export function RecipeTools({ file, shelf, waters, choice, stale, stays }: RecipeToolsProps) {
  const units = useUnits((state) => state.units);
  const { make, busy, trouble } = useFileChange(file);
  const [said, setSaid] = useState('');
  const copy = async () => {
    const text = recipeText({
      enclosure: file.name,
      on: isoDate(new Date()),
      choice,
      units,
      stays: stays?.volume,
    });
    try {
      await navigator.clipboard.writeText(text);
      setSaid('Copied as text.');
    } catch {
      setSaid('This browser did not allow copying; print it instead.');
    }
  };
  const put = (use: RecipeUse, done: string) => {
    const saved = { recipe: choice.recipe, waters, shelf, on: isoDate(new Date()), use };
    void make(recipeEdits(saved).edits, done);
  };
  return (
    <div className={styles.tools}>
      <div className={desk.bar}>
        <button type="button" className={desk.second} onClick={() => void copy()}>
          Copy as text
        </button>
        <button type="button" className={desk.second} onClick={() => print()}>
          Print
        </button>
        <span role="status">{said}</span>
      </div>
      {stays ? (
        <p className={desk.soft}>To fill or top off with a mix in the file, let nothing stay.</p>
      ) : (
        <>
          <h3>Put it into the file</h3>
          <p className={desk.soft}>
            {file.origin === 'example'
              ? 'An example stays as it is: a copy under a name of your own is changed.'
              : 'The water is added to the file by its ions, with the recipe as its source.'}{' '}
            The year is worked out anew.
          </p>
          <div className={desk.bar}>
            {USES.map(({ use, name, done }) => (
              <button
                key={use}
                type="button"
                className={desk.primary}
                disabled={busy || stale}
                onClick={() => put(use, done)}
              >
                {name}
              </button>
            ))}
          </div>
        </>
      )}
      {trouble !== undefined && <p role="alert">{trouble}</p>}
    </div>
  );
}
