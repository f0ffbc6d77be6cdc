import type { AheadDocument } from '@shoreglass/engine';
import { horizonWords } from '../../outlook/horizon-words.ts';
import styles from './hands-off.module.css';

/** The one figure that speaks: how long the enclosure can be left to its routine. */
export function HandsOff({ document }: { readonly document: AheadDocument }) {
  const { figure, after, spread, end } = horizonWords(document);
  return (
    <section aria-label="Days left to itself" className={styles.handsOff}>
      <h2 className={styles.heading}>
        <span className={styles.figure}>{figure}</span> {after}
      </h2>
      <p>{spread}</p>
      {end !== '' && <p>{end}</p>}
    </section>
  );
}
