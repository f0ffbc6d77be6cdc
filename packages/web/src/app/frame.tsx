import { type ReactNode, useEffect, useRef } from 'react';
import { Link, useLocation } from 'wouter';
import styles from './frame.module.css';
import { lastOpened } from './last-opened.ts';
import { ViewChoice } from './view-choice.tsx';

interface FrameProps {
  readonly title: string;
  /** A short line at the right of the header, such as the date and the number of runs. */
  readonly note?: ReactNode;
  /** Leaves the main area without margins of its own. */
  readonly bare?: boolean;
  readonly children: ReactNode;
}

/** What surrounds every place: its title, the way to the other places, the choice of day or night view. */
export function Frame({ title, note, bare = false, children }: FrameProps) {
  const heading = useHeadingFocus(title);
  return (
    <>
      <button type="button" className={styles.skip} onClick={() => document.getElementById('main')?.focus()}>
        Skip to the content
      </button>
      <header className={styles.header}>
        <h1 ref={heading} tabIndex={-1} className={styles.title}>
          {title}
        </h1>
        <Places />
        <div className={styles.end}>
          {note !== undefined && <p className={styles.note}>{note}</p>}
          <ViewChoice />
        </div>
      </header>
      <main id="main" tabIndex={-1} className={bare ? styles.bare : styles.main}>
        {children}
      </main>
    </>
  );
}

function Places() {
  const [location] = useLocation();
  const opened = lastOpened();
  const places = [
    ...(opened === undefined
      ? []
      : [
          { name: 'Shape', href: `/shape/${opened}`, within: '/shape' },
          { name: 'Ahead', href: `/ahead/${opened}`, within: '/ahead' },
          { name: 'Water', href: `/water/${opened}`, within: '/water' },
          { name: 'Life', href: `/life/${opened}`, within: '/life' },
        ]),
    { name: 'Enclosures', href: '/enclosures', within: '/enclosures' },
    { name: 'Library', href: '/library', within: '/library' },
    { name: 'Cautions', href: '/cautions', within: '/cautions' },
  ];
  return (
    <nav className={styles.places} aria-label="Places">
      <ul>
        {places.map(({ name, href, within }) => (
          <li key={name}>
            <Link href={href} aria-current={location.startsWith(within) ? 'page' : undefined}>
              {name}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}

let lastLocation: string | undefined;

/** Names the page after the place, and moves the focus to its heading when one comes from another place. */
function useHeadingFocus(title: string) {
  const heading = useRef<HTMLHeadingElement>(null);
  const [location] = useLocation();
  useEffect(() => {
    if (lastLocation !== undefined && lastLocation !== location)
      heading.current?.focus({ preventScroll: true });
    lastLocation = location;
  }, [location]);
  useEffect(() => {
    document.title = `${title} · Shoreglass`;
  }, [title]);
  return heading;
}
