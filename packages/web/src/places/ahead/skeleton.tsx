import styles from './skeleton.module.css';

/** The place in ink lines, before there is anything to fill it with. */
export function Skeleton({ words }: { readonly words: string }) {
  return (
    <div className={styles.skeleton}>
      <p role="status" className={styles.words}>
        {words}
      </p>
      <svg viewBox="0 0 900 460" className={styles.lines} aria-hidden="true">
        <rect x="40" y="50" width="600" height="360" />
        <path d="M40 330H330C400 330 420 250 470 240S600 160 640 150" />
        <path d="M40 300H380" className={styles.faint} />
        <path
          d="M670 120H860M670 136H780M670 200H860M670 216H760M670 280H840M670 296H770"
          className={styles.faint}
        />
      </svg>
    </div>
  );
}
