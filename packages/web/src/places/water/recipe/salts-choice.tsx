import type { Shelf } from '../../../worker/messages.ts';
import desk from '../../sheets/desk.module.css';
import type { RecipeDesk } from './recipe-desk.ts';
import styles from './recipe-part.module.css';
import { formulaText, shortName } from './recipe-words.ts';

interface SaltsChoiceProps {
  readonly laid: RecipeDesk;
  readonly shelf: Shelf;
  readonly onChange: (part: Partial<RecipeDesk>) => void;
}

/** The salts one has or would buy; a recipe uses none that is not ticked. */
export function SaltsChoice({ laid, shelf, onChange }: SaltsChoiceProps) {
  const toggle = (id: string) =>
    onChange({
      salts: laid.salts.includes(id) ? laid.salts.filter((each) => each !== id) : [...laid.salts, id],
    });
  const allowed = shelf.salts
    .filter(({ id }) => laid.salts.includes(id))
    .map(({ name }) => shortName(name))
    .join(', ');
  return (
    <section aria-labelledby="salts" className={desk.block}>
      <h2 id="salts">Salts on the shelf</h2>
      <details className={styles.shelf}>
        <summary className={desk.fold}>{`${laid.salts.length} of ${shelf.salts.length} may be used`}</summary>
        <ul>
          {shelf.salts.map(({ id, name, formula, use }) => (
            <li key={id}>
              <label className={desk.check}>
                <input type="checkbox" checked={laid.salts.includes(id)} onChange={() => toggle(id)} />
                <span>
                  {name}
                  <small>
                    {formulaText(formula)}. {use}
                  </small>
                </span>
              </label>
            </li>
          ))}
        </ul>
      </details>
      <p className={desk.soft}>{allowed || 'None: the waters are mixed as they are.'}</p>
    </section>
  );
}
