import { useEffect, useRef } from 'react';
import { Link } from 'wouter';
import styles from './part-names.module.css';

interface PartNamesProps {
  /** Address of the place and of its enclosure: "/water/beck-bank". */
  readonly at: string;
  /** What the row is, for those who do not see it: "Sheets of the water". */
  readonly label: string;
  readonly parts: readonly { readonly id: string; readonly name: string }[];
  readonly open: string;
}

/** The sheets of a place; on a phone the row can be pushed sideways, and the open one is brought into view. */
export function PartNames({ at, label, parts, open }: PartNamesProps) {
  const row = useRef<HTMLUListElement>(null);
  useEffect(() => {
    const [list, item] = [row.current, row.current?.querySelector<HTMLElement>(`[data-part="${open}"]`)];
    if (list && item) list.scrollLeft = item.offsetLeft - (list.clientWidth - item.clientWidth) / 2;
  }, [open]);
  return (
    <nav className={styles.names} aria-label={label}>
      <ul ref={row}>
        {parts.map((part) => (
          <li key={part.id} data-part={part.id}>
            <Link href={`${at}/${part.id}`} aria-current={part.id === open ? 'page' : undefined}>
              {part.name}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}
