import { Frame } from '../../app/frame.tsx';
import { CAUTIONS } from './cautions.ts';
import styles from './cautions-place.module.css';

/** What to mind around water, electricity, glass and living things, whatever the outlook says. */
export function CautionsPlace() {
  return (
    <Frame title="Cautions">
      <div className={styles.cautions}>
        {CAUTIONS.map(({ title, sentences }) => (
          <section key={title}>
            <h2>{title}</h2>
            <ul>
              {sentences.map((sentence) => (
                <li key={sentence}>{sentence}</li>
              ))}
            </ul>
          </section>
        ))}
      </div>
      <p className={styles.basis}>
        Common practice of the trade, written from memory. Local codes, the maker’s instructions and licensed
        trades decide.
      </p>
    </Frame>
  );
}
