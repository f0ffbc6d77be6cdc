import type { ReactNode } from 'react';
import styles from './figures.module.css';

export interface Figure {
  readonly name: string;
  readonly value: ReactNode;
  /** What it is measured against, or rests on. */
  readonly note?: ReactNode;
}

/** Names and values, one below the other. */
export function FigureList({ figures }: { readonly figures: readonly (Figure | undefined)[] }) {
  return (
    <dl className={styles.list}>
      {figures
        .filter((figure) => figure !== undefined)
        .map(({ name, value, note }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>
              {value}
              {note !== undefined && <span className={styles.note}>{note}</span>}
            </dd>
          </div>
        ))}
    </dl>
  );
}

interface PartProps {
  readonly id: string;
  readonly title: string;
  /** Sentences to mind, beside what they concern. */
  readonly cautions?: readonly string[];
  readonly children: ReactNode;
}

/** One part of the sheet, with what is to be minded about it. */
export function FigurePart({ id, title, cautions = [], children }: PartProps) {
  return (
    <section aria-labelledby={`figures-${id}`} className={styles.part} data-part={id}>
      <h2 id={`figures-${id}`}>{title}</h2>
      {children}
      {cautions.length > 0 && (
        <ul className={styles.cautions} aria-label={`To mind: ${title.toLowerCase()}`}>
          {cautions.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      )}
    </section>
  );
}

/** A table that may be wider than the screen; it can be scrolled with the keyboard too. */
export function WideTable({ name, children }: { readonly name: string; readonly children: ReactNode }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by keyboard
    <section className={styles.scroll} aria-label={name} tabIndex={0}>
      <table className={styles.table}>{children}</table>
    </section>
  );
}

/** What a figure takes for granted, in small type. */
export function Assumption({ children }: { readonly children: ReactNode }) {
  return <p className={styles.assumption}>{children}</p>;
}
