import type { LibraryEntry } from '@shoreglass/contract';
import { Link } from 'wouter';
import { Frame } from '../../app/frame.tsx';
import { Trouble } from '../../app/trouble.tsx';
import { useLibraryEntry } from '../../files/queries.ts';
import { BringInLink } from './bring-in-link.tsx';
import styles from './entry-place.module.css';
import { RangeLines } from './range-lines.tsx';
import { ValueTable } from './value-table.tsx';

interface EntryPlaceProps {
  readonly kind: string;
  readonly id: string;
}

/** One entry of the library: what it is, what it stands, what to mind, every value with its source. */
export function EntryPlace({ kind, id }: EntryPlaceProps) {
  const { data, error: refused, refetch } = useLibraryEntry(kind, id);
  const error = refused && !KINDS.includes(kind) ? new Error(noSuchKind(kind)) : refused;
  return (
    <Frame title={data ? capital(data.name) : 'Library'}>
      <p className={styles.back}>
        <Link href="/library">All of the library</Link>
      </p>
      {error && <Trouble error={error} again={() => void refetch()} />}
      {!data && !error && <p role="status">Opening the page …</p>}
      {data && <EntryView entry={data} kind={kind} />}
    </Frame>
  );
}

const KINDS = ['organisms', 'plants', 'feeds', 'materials', 'salts', 'waters'];

const noSuchKind = (kind: string): string =>
  `The library has no part "${kind}". It has ${KINDS.join(', ')}: look for the page in All of the library.`;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const KNOWN = { well: 'Known well.', fairly: 'Known fairly well.', poorly: 'Known poorly.' } as const;

function EntryView({ entry, kind }: { readonly entry: LibraryEntry; readonly kind: string }) {
  const { scientificName, group, about, ways, alone, ranges, sections } = entry;
  const sources = ranges.flatMap((range) => range.sources);
  return (
    <article className={styles.entry}>
      <div className={styles.head}>
        <p className={styles.group}>
          {scientificName && <i>{scientificName} · </i>}
          {group}
        </p>
        {about && <p className={styles.about}>{about}</p>}
        {ways.length > 0 && <p>{ways.join(' ')}</p>}
        {alone && <p>{alone}</p>}
        <BringInLink kind={kind} name={entry.name} />
        <HowKnown entry={entry} />
      </div>
      <Mind entry={entry} />
      {ranges.length > 0 && <RangeLines ranges={ranges} />}
      {sections.map(({ title, values }) => (
        <ValueTable key={title} title={title} values={values} />
      ))}
      {sources.length > 0 && <ValueTable title="Where the ranges come from" values={sources} />}
    </article>
  );
}

function HowKnown({ entry: { known, bases } }: { readonly entry: LibraryEntry }) {
  if (!known) return null;
  return (
    <p className={styles.known}>
      <strong>{KNOWN[known.level]}</strong> {known.note}{' '}
      <span>Values by basis: {bases.map(({ basis, count }) => `${basis} ${count}`).join(', ')}.</span>
    </p>
  );
}

/** Cautions of the trade, and law, health and safety with their sources. */
function Mind({ entry: { cautions, risks, unsaid } }: { readonly entry: LibraryEntry }) {
  if (cautions.length + risks.length === 0 && !unsaid) return null;
  return (
    <section className={styles.mind} aria-labelledby="mind">
      <h2 id="mind">To mind</h2>
      <ul>
        {cautions.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
        {risks.map(({ kind, text, basis, source }) => (
          <li key={text}>
            <strong>{capital(kind)}.</strong> {text}{' '}
            <span className={styles.source}>
              {basis}: {source}
            </span>
          </li>
        ))}
        {unsaid && <li>{unsaid}</li>}
      </ul>
    </section>
  );
}
