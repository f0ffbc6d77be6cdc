import type { PopulationOutlook } from '@shoreglass/engine';
import { quantityText } from '@shoreglass/figures';
import { percent } from '../../../outlook/turning-words.ts';
import styles from './death-list.module.css';

interface DeathListProps {
  readonly population: PopulationOutlook;
  readonly days: number;
}

/** Young released, deaths by cause and what slowed them over the expected run. */
export function DeathList({ population: { born, deaths, slowed }, days }: DeathListProps) {
  const causes = Object.entries(deaths)
    .filter(([, count]) => count >= 0.5)
    .sort((a, b) => b[1] - a[1]);
  const all = causes.reduce((sum, [, count]) => sum + count, 0);
  return (
    <div className={styles.part}>
      <p>
        {number(born)} young released over {days} days of the expected run;{' '}
        {causes.length === 0 ? 'nobody dies.' : `${number(all)} die, of`}
      </p>
      {causes.length > 0 && (
        <ul className={styles.causes}>
          {causes.map(([cause, count]) => (
            <li key={cause}>
              <span>{wordsFor(cause)}</span>
              <span>{number(count)}</span>
              <progress
                value={count}
                max={all}
                aria-label={`${wordsFor(cause)}: ${percent(count / all)} of the deaths`}
              />
            </li>
          ))}
        </ul>
      )}
      {slowed.map(({ cause, sentence }) => (
        <p key={cause}>{sentence}</p>
      ))}
    </div>
  );
}

const number = (value: number): string =>
  quantityText(value >= 1000 ? Number(value.toPrecision(2)) : Math.round(value), '');

/** What kills whoever is well otherwise has no better name in the engine. */
const wordsFor = (cause: string): string => (cause === 'background' ? 'all other causes' : cause);
