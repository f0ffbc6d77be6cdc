import type { EnclosureEntry } from '@shoreglass/contract';
import { Link } from 'wouter';
import { Frame } from '../../app/frame.tsx';
import { Trouble } from '../../app/trouble.tsx';
import { useEnclosures } from '../../files/queries.ts';
import desk from '../sheets/desk.module.css';
import styles from './enclosures-place.module.css';
import { Plate } from './plate.tsx';

/** Every enclosure that can be opened: the keeper's own, the examples, and a way to bring a new one. */
export function EnclosuresPlace() {
  const { data, error, refetch } = useEnclosures();
  const own = data?.enclosures.filter(({ origin }) => origin === 'own') ?? [];
  const examples = data?.enclosures.filter(({ origin }) => origin === 'example') ?? [];
  return (
    <Frame title="Enclosures">
      <div className={styles.columns}>
        <div className={styles.lists}>
          {error && <Trouble error={error} again={() => void refetch()} />}
          {!data && !error && <p role="status">Looking for enclosures …</p>}
          {data && (
            <>
              <section aria-labelledby="own">
                <h2 id="own">Your own</h2>
                {own.length === 0 ? (
                  <p className={styles.empty}>
                    None yet. <Link href="/enclosures/new">Bring a file</Link>, or open an example and save it
                    under a name of your own.
                  </p>
                ) : (
                  <EntryList entries={own} />
                )}
                {data.leftOut.length > 0 && <LeftOut files={data.leftOut} />}
              </section>
              <section aria-labelledby="examples">
                <h2 id="examples">Examples</h2>
                <p className={styles.aside}>Invented glasses, to look around with.</p>
                {examples.length === 0 ? (
                  <p className={styles.empty}>No example came with this installation.</p>
                ) : (
                  <EntryList entries={examples} />
                )}
              </section>
            </>
          )}
        </div>
        <aside className={styles.about} aria-label="About enclosure files">
          <p>
            One text file describes one enclosure: its glass, ground, water, devices, plants, animals and
            care. The text is the truth; your comments in it stay where you put them.
          </p>
          <Link href="/enclosures/new" className={desk.primary}>
            Bring a file
          </Link>
        </aside>
      </div>
    </Frame>
  );
}

function EntryList({ entries }: { readonly entries: readonly EnclosureEntry[] }) {
  return (
    <ul className={styles.entries}>
      {entries.map(({ id, name, errors, remarks }) => (
        <li key={id}>
          {errors === 0 && <Plate id={id} />}
          <div className={styles.entry}>
            <h3>{name}</h3>
            <p className={styles.aside}>
              {id}.yaml{findingsPhrase(errors, remarks)}
            </p>
          </div>
          <ul className={styles.ways} aria-label={name}>
            {errors === 0 && (
              <>
                <li>
                  <Link href={`/shape/${id}`}>Shape</Link>
                </li>
                <li>
                  <Link href={`/ahead/${id}`}>Look ahead</Link>
                </li>
                <li>
                  <Link href={`/water/${id}`}>Water</Link>
                </li>
                <li>
                  <Link href={`/life/${id}`}>Life</Link>
                </li>
              </>
            )}
            <li>
              <Link href={`/enclosures/${id}`}>{errors === 0 ? 'Text' : 'Mend the text'}</Link>
            </li>
          </ul>
        </li>
      ))}
    </ul>
  );
}

function LeftOut({
  files,
}: {
  readonly files: readonly { readonly fileName: string; readonly reason: string }[];
}) {
  return (
    <div className={styles.leftOut}>
      <p>In the data folder, but left out:</p>
      <ul>
        {files.map(({ fileName, reason }) => (
          <li key={fileName}>
            <strong>{fileName}</strong> {reason}
          </li>
        ))}
      </ul>
    </div>
  );
}

function findingsPhrase(errors: number, remarks: number): string {
  const parts = [
    errors > 0 ? `${errors} ${errors === 1 ? 'error' : 'errors'}` : '',
    remarks > 0 ? `${remarks} ${remarks === 1 ? 'remark' : 'remarks'}` : '',
  ].filter((part) => part !== '');
  return parts.length > 0 ? ` · ${parts.join(', ')}` : '';
}
