import type { Hunter } from '@shoreglass/engine';
import { Link } from 'wouter';
import desk from '../../sheets/desk.module.css';
import styles from './pest-part.module.css';

/** Numbers of hunters as written, by species; where nothing was written, the least group of the library. */
export type WrittenHunters = Readonly<Record<string, string>>;

export function writtenNumber(written: WrittenHunters, { population, adults }: Hunter): string {
  return written[population.id] ?? String(adults);
}

interface HunterChoiceProps {
  readonly hunters: readonly Hunter[];
  readonly written: WrittenHunters;
  readonly onWrite: (written: WrittenHunters) => void;
}

/** Who could be put in against the pest, and how many of each. */
export function HunterChoice({ hunters, written, onWrite }: HunterChoiceProps) {
  if (hunters.length === 0)
    return <p className={desk.soft}>No animal of the library that lives where they do hunts them much.</p>;
  return (
    <fieldset className={styles.hunters}>
      <legend>Hunters to try, adults of each; leave a field empty to leave them out</legend>
      {hunters.map((hunter) => {
        const { id, name } = hunter.population;
        return (
          <div key={id}>
            <input
              className={desk.input}
              aria-label={`Adults, ${name}`}
              inputMode="numeric"
              autoComplete="off"
              placeholder="none"
              value={writtenNumber(written, hunter)}
              onChange={({ target }) => onWrite({ ...written, [id]: target.value })}
            />
            <Link href={`/library/organisms/${id}`}>{name}</Link>
          </div>
        );
      })}
    </fieldset>
  );
}
