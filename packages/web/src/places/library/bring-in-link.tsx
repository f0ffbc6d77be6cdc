import { Link } from 'wouter';
import { lastOpened } from '../../app/last-opened.ts';
import { useNewcomerSearch } from '../life/who/newcomer-search.ts';
import styles from './entry-place.module.css';

interface BringInLinkProps {
  readonly kind: string;
  readonly name: string;
}

/** From an animal's or plant's page to the enclosure opened last, with it found there to be brought in. */
export function BringInLink({ kind, name }: BringInLinkProps) {
  const opened = lastOpened();
  const look = useNewcomerSearch((state) => state.look);
  if (opened === undefined || (kind !== 'organisms' && kind !== 'plants')) return null;
  const list = kind === 'plants' ? 'plants' : 'animals';
  return (
    <p>
      <Link
        href={`/life/${opened}/who`}
        className={styles.bring}
        onClick={() => look({ list, text: name, habitat: '' })}
      >
        Try it in {opened}
      </Link>
    </p>
  );
}
