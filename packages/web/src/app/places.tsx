import { useEffect, useId, useRef, useState } from 'react';
import { Link, useLocation } from 'wouter';
import { useWidth } from '../drawing/use-width.ts';
import { useLastOpened } from './last-opened.ts';
import styles from './places.module.css';
import { placesInRow } from './row-of-places.ts';

interface Place {
  readonly name: string;
  readonly href: string;
  readonly within: string;
}

/** Places about the enclosure that was opened last. */
const ABOUT_ONE = [
  ['Shape', '/shape'],
  ['Ahead', '/ahead'],
  ['Water', '/water'],
  ['Life', '/life'],
] as const;

const ABOUT_ALL: readonly Place[] = [
  { name: 'Enclosures', href: '/enclosures', within: '/enclosures' },
  { name: 'Library', href: '/library', within: '/library' },
  { name: 'Cautions', href: '/cautions', within: '/cautions' },
];

/** The way to every place. A phone has room for some of the enclosure; the others stand behind "More" there. */
export function Places() {
  const [location] = useLocation();
  const opened = useLastOpened();
  const [row, width] = useWidth<HTMLElement>();
  const ofOne =
    opened === undefined
      ? []
      : ABOUT_ONE.map(([name, within]) => ({ name, href: `${within}/${opened}`, within }));
  const fitting = placesInRow(ofOne.length, width);
  return (
    <nav ref={row} className={styles.places} aria-label="Places">
      <ul>
        {ofOne.slice(0, fitting).map((place) => (
          <PlaceLink key={place.name} place={place} location={location} />
        ))}
        {ofOne.length > 0 ? (
          <More key={location} location={location} places={[...ofOne.slice(fitting), ...ABOUT_ALL]} />
        ) : (
          ABOUT_ALL.map((place) => <PlaceLink key={place.name} place={place} location={location} />)
        )}
      </ul>
    </nav>
  );
}

function PlaceLink({ place, location }: { readonly place: Place; readonly location: string }) {
  return (
    <li>
      <Link href={place.href} aria-current={location.startsWith(place.within) ? 'page' : undefined}>
        {place.name}
      </Link>
    </li>
  );
}

interface MoreProps {
  readonly location: string;
  readonly places: readonly Place[];
}

/** On a wide screen its places stand in the row like the others. */
function More({ location, places }: MoreProps) {
  const [open, setOpen] = useState(false);
  const list = useId();
  const here = places.find(({ within }) => location.startsWith(within));
  const item = useRef<HTMLLIElement>(null);
  useEffect(() => {
    if (!open) return;
    const leave = ({ target }: Event) => {
      if (!item.current?.contains(target as Node)) setOpen(false);
    };
    for (const kind of ['pointerdown', 'focusin']) document.addEventListener(kind, leave);
    return () => {
      for (const kind of ['pointerdown', 'focusin']) document.removeEventListener(kind, leave);
    };
  }, [open]);
  return (
    <li ref={item} className={styles.more} onKeyDown={({ key }) => key === 'Escape' && setOpen(false)}>
      <button
        type="button"
        aria-expanded={open}
        aria-controls={list}
        data-here={here !== undefined}
        onClick={() => setOpen(!open)}
      >
        More
      </button>
      <ul id={list} data-open={open}>
        {places.map((place) => (
          <PlaceLink key={place.name} place={place} location={location} />
        ))}
      </ul>
    </li>
  );
}
