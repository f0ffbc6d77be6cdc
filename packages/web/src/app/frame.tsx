import { type ReactNode, useEffect, useRef } from 'react';
import { useLocation } from 'wouter';
import styles from './frame.module.css';
import { Places } from './places.tsx';
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
