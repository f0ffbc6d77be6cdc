import { amountText, palette, quantityText, termSwatchScene } from '@shoreglass/figures';
import { useMemo } from 'react';
import { useView } from '../../../app/view.ts';
import { SceneView } from '../../../drawing/scene-view.tsx';
import styles from './ledger.module.css';
import type { LedgerRow, LedgerSheet } from './ledger-rows.ts';

interface LedgerProps {
  readonly ledger: LedgerSheet;
  readonly unit: string;
}

/** The figure in numbers: each term's letter and pattern, its amount, and what that is in a reading. */
export function Ledger({ ledger, unit }: LedgerProps) {
  const { adds, removes, net, before, after, waterUnit, volume } = ledger;
  return (
    <table className={styles.ledger}>
      <caption className={styles.caption}>
        Amounts in the whole water, and spread over its {quantityText(volume, 'L', 1)}
      </caption>
      <thead>
        <tr>
          <th scope="col">Who</th>
          <th scope="col">{unit}</th>
          <th scope="col">{waterUnit}</th>
        </tr>
      </thead>
      <Side title="Adds" rows={adds} />
      <Side title="Removes" rows={removes} />
      <tbody className={styles.sum}>
        <tr>
          <th scope="row">Left of both</th>
          <td>{bare(net.amount)}</td>
          <td>{bare(net.inWater)}</td>
        </tr>
        <tr className={styles.stock}>
          <th scope="row">In the water, before and after</th>
          <td colSpan={2}>
            {amountText(before, unit).replace('+', '')} → {amountText(after, unit).replace('+', '')}
          </td>
        </tr>
      </tbody>
    </table>
  );
}

function Side({ title, rows }: { readonly title: string; readonly rows: readonly LedgerRow[] }) {
  return (
    <tbody>
      <tr>
        <th scope="rowgroup" colSpan={3} className={styles.side}>
          {title}
        </th>
      </tr>
      {rows.length === 0 && (
        <tr>
          <td colSpan={3} className={styles.none}>
            nobody
          </td>
        </tr>
      )}
      {rows.map((row) => (
        <Row key={row.term} row={row} />
      ))}
    </tbody>
  );
}

function Row({ row }: { readonly row: LedgerRow }) {
  const view = useView((state) => state.view);
  const swatch = useMemo(
    () => termSwatchScene(row.look, palette(view), row.term),
    [row.look, row.term, view],
  );
  return (
    <tr>
      <th scope="row">
        <span className={styles.who}>
          <span aria-hidden="true" className={styles.swatch}>
            <SceneView scene={swatch} />
          </span>
          <span className={styles.letter}>{row.look.letter}</span>
          <span>
            {row.term}
            <svg className={styles.bar} viewBox="0 0 100 4" preserveAspectRatio="none" aria-hidden="true">
              <rect width={100 * row.share} height="4" />
            </svg>
          </span>
        </span>
      </th>
      <td>{bare(row.amount)}</td>
      <td>{bare(row.inWater)}</td>
    </tr>
  );
}

/** The unit stands in the head of the column. */
function bare(amount: number): string {
  return amountText(amount, '').trimEnd();
}
