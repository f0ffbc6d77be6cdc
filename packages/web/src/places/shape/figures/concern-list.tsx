import { capital } from '../../../outlook/turning-words.ts';
import type { Concern } from '../desk/concerns.ts';
import type { Handle } from '../handles/handle.ts';
import { FigurePart } from './figure-list.tsx';
import styles from './figures.module.css';

interface ConcernListProps {
  readonly concerns: readonly Concern[];
  readonly onTake: (handle: Handle) => void;
}

/** What speaks against the shape, worst first; each a way to the part it is about. */
export function ConcernList({ concerns, onTake }: ConcernListProps) {
  return (
    <FigurePart id="concerns" title="What speaks against it">
      {concerns.length === 0 ? (
        <p>Nothing was found that speaks against this shape.</p>
      ) : (
        <ul className={styles.remarks}>
          {concerns.map(({ severity, message, mend, handle }) => (
            <li key={message} data-severity={severity}>
              {handle && (
                <>
                  <button type="button" onClick={() => onTake(handle)}>
                    {handle.name}
                  </button>
                  {message.startsWith(handle.name) ? '' : ': '}
                </>
              )}
              {handle ? withoutName(message, handle.name) : capital(message)}.{' '}
              <span className={styles.mend}>{mend}</span>
            </li>
          ))}
        </ul>
      )}
    </FigurePart>
  );
}

/** A sentence that begins with the name of its part goes on after it. */
function withoutName(message: string, name: string): string {
  return message.startsWith(name) ? message.slice(name.length) : message;
}
