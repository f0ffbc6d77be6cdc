import styles from './progress.module.css';

/** How many of the runs are done, in words and as a line of ink. */
export function Progress({ done, of }: { readonly done: number; readonly of: number }) {
  return (
    <div className={styles.progress}>
      <span>
        {done} of {of} runs
      </span>
      <progress value={done} max={of} aria-label="Runs done" />
    </div>
  );
}
