import { useEffect, useRef } from 'react';
import { Link } from 'wouter';
import styles from './part-names.module.css';
import { WATER_PARTS, type WaterPartId } from './water-parts.ts';

/** The sheets of the place; on a phone the row can be pushed sideways, and the open one is brought into view. */
export function PartNames({ id, open }: { readonly id: string; readonly open: WaterPartId }) {
  const row = useRef<HTMLUListElement>(null);
  useEffect(() => {
    const [list, item] = [row.current, row.current?.querySelector<HTMLElement>(`[data-part="${open}"]`)];
    if (list && item) list.scrollLeft = item.offsetLeft - (list.clientWidth - item.clientWidth) / 2;
  }, [open]);
  return (
    <nav className={styles.names} aria-label="Sheets of the water">
      <ul ref={row}>
        {WATER_PARTS.map((part) => (
          <li key={part.id} data-part={part.id}>
            <Link href={`/water/${id}/${part.id}`} aria-current={part.id === open ? 'page' : undefined}>
              {part.name}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}
