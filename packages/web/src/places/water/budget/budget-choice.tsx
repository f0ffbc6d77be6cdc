import type { Budget, BudgetId } from '@shoreglass/engine';
import { capital } from '../../../outlook/turning-words.ts';
import desk from '../../sheets/desk.module.css';
import styles from './budget-choice.module.css';

interface BudgetChoiceProps {
  readonly budgets: readonly Budget[];
  readonly chosen: BudgetId;
  readonly onChoose: (id: BudgetId) => void;
}

/** Which substance is followed. */
export function BudgetChoice({ budgets, chosen, onChoose }: BudgetChoiceProps) {
  return (
    <fieldset className={styles.choice}>
      <legend>Budget of</legend>
      <div className={styles.options}>
        {budgets.map(({ id, name }) => (
          <label key={id} className={`${desk.check} ${styles.option}`}>
            <input type="radio" name="budget" checked={id === chosen} onChange={() => onChoose(id)} />
            <span>{capital(name)}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
