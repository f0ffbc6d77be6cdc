import type { Recipe } from '@shoreglass/engine';
import { useUnits } from '../amount/remembered-units.ts';
import styles from './recipe-tables.module.css';
import {
  askedText,
  formulaText,
  gramsText,
  litresText,
  partsText,
  targetText,
  WATER_LINES,
} from './recipe-words.ts';

/** What to pour and what to weigh, in grams and in kitchen measures. */
export function TakeTable({ recipe }: { readonly recipe: Recipe }) {
  return (
    <table className={styles.table}>
      <caption>Take</caption>
      <thead>
        <tr>
          <th scope="col">What</th>
          <th scope="col">Amount</th>
          <th scope="col">In the kitchen</th>
        </tr>
      </thead>
      <tbody>
        {recipe.waters.map(({ id, name, volume, parts }) => (
          <tr key={id}>
            <th scope="row">{name}</th>
            <td className={styles.figure}>{litresText(volume)}</td>
            <td>{partsText(parts)}</td>
          </tr>
        ))}
        {recipe.salts.map(({ id, name, formula, mass, spoons }) => (
          <tr key={id}>
            <th scope="row">
              {name} <span className={styles.formula}>{formulaText(formula)}</span>
            </th>
            <td className={styles.figure}>{gramsText(mass)}</td>
            <td>{spoons?.said ?? 'weigh it'}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** The finished water: what was asked, weighed out, and measured with spoons. */
export function BecomesTable({ recipe }: { readonly recipe: Recipe }) {
  const units = useUnits((state) => state.units);
  const { targets, water, waterBySpoon } = recipe;
  return (
    <table className={styles.table}>
      <caption>Becomes</caption>
      <thead>
        <tr>
          <th scope="col">Quantity</th>
          <th scope="col">Weighed</th>
          <th scope="col">By spoon</th>
        </tr>
      </thead>
      <tbody>
        {WATER_LINES.map(({ name, of }) => {
          const target = targets.find(({ quantity }) => quantity === name);
          const unit = units[name];
          return (
            <tr key={name} data-met={target?.met}>
              <th scope="row">
                {name}
                {target && (
                  <span className={styles.asked}>
                    asked: {askedText(target, unit)}
                    {!target.met && <strong className={styles.missed}> missed</strong>}
                  </span>
                )}
              </th>
              <td className={styles.figure}>
                {target ? targetText(target.quantity, target.value, unit) : of(water)}
              </td>
              <td>{target ? targetText(target.quantity, target.valueBySpoon, unit) : of(waterBySpoon)}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
