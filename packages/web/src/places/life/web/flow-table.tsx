import type { LifeDocument } from '@shoreglass/engine';
import { type FlowUnit, flowAmountText } from '@shoreglass/figures';
import { capital, percent } from '../../../outlook/turning-words.ts';
import desk from '../../sheets/desk.module.css';
import { eaterRows } from './flow-rows.ts';
import styles from './web-part.module.css';

interface FlowTableProps {
  readonly life: LifeDocument;
  readonly week: number | undefined;
  readonly unit: FlowUnit;
  readonly when: string;
}

/** The same amounts as a table. */
export function FlowTable({ life, week, unit, when }: FlowTableProps) {
  const eaters = eaterRows(life, week).filter(({ rows }) => rows.length > 0);
  return (
    <details className={styles.table}>
      <summary className={desk.fold}>As a table</summary>
      <table>
        <caption>Eaten {when}</caption>
        <thead>
          <tr>
            <th scope="col">Eater</th>
            <th scope="col">Food</th>
            <th scope="col">Amount</th>
            <th scope="col">Of its food</th>
          </tr>
        </thead>
        <tbody>
          {eaters.flatMap(({ id, name, rows }) =>
            rows.map((row) => (
              <tr key={`${id} ${row.food}`}>
                <th scope="row">{capital(name)}</th>
                <td>{row.foodName}</td>
                <td className={styles.number}>{flowAmountText(row.amount, unit)}</td>
                <td className={styles.number}>{percent(row.share)}</td>
              </tr>
            )),
          )}
        </tbody>
      </table>
    </details>
  );
}
