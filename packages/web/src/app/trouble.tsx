import { ServerGone } from '../files/server.ts';
import styles from './trouble.module.css';

interface TroubleProps {
  readonly error: Error;
  readonly again: () => void;
}

/** What went wrong, in a sentence, and the way to try again. */
export function Trouble({ error, again }: TroubleProps) {
  return (
    <div role="alert" className={styles.trouble}>
      <p>
        <strong>{error.message}</strong>
        {error instanceof ServerGone &&
          ' Start it again with npm start, then try once more. Nothing you typed is lost.'}
      </p>
      <button type="button" className={styles.again} onClick={again}>
        Try again
      </button>
    </div>
  );
}
