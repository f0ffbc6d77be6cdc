import type { LibraryListed } from '@shoreglass/contract';
import { Link } from 'wouter';
import { Frame } from '../../app/frame.tsx';
import { Trouble } from '../../app/trouble.tsx';
import { useLibrary } from '../../files/queries.ts';
import { type Found, found, HABITATS, LISTS, needsAmong, type Wanted } from './find-entries.ts';
import styles from './library-place.module.css';
import { useLookedFor } from './looked-for.ts';

/** Every animal, plant, feed, material, salt and water, to look through by words, habitat and need. */
export function LibraryPlace() {
  const { data, error, refetch } = useLibrary();
  const { wanted, look } = useLookedFor();
  const entries = data ? found(data, wanted) : [];
  const count = entries.reduce((sum, { listed }) => sum + listed.length, 0);
  return (
    <Frame title="Library">
      {error && <Trouble error={error} again={() => void refetch()} />}
      {!data && !error && <p role="status">Opening the library …</p>}
      {data && (
        <>
          <Filters wanted={wanted} change={look} needs={needsAmong(data)} />
          <p role="status" className={styles.count}>
            {count === 0 ? 'Nothing fits.' : `${count} ${count === 1 ? 'entry' : 'entries'}`}
          </p>
          {entries.map((each) => (
            <EntryList key={each.kind} {...each} />
          ))}
        </>
      )}
    </Frame>
  );
}

interface FiltersProps {
  readonly wanted: Wanted;
  readonly change: (wanted: Wanted) => void;
  readonly needs: readonly string[];
}

function Filters({ wanted, change, needs }: FiltersProps) {
  return (
    <search className={styles.filters}>
      <label className={styles.words}>
        Name or word
        <input
          type="search"
          value={wanted.text}
          onChange={({ target }) => change({ ...wanted, text: target.value })}
        />
      </label>
      <Choice
        label="List"
        value={wanted.list}
        options={LISTS.map(({ kind, name }) => [kind, name])}
        choose={(list) => change({ ...wanted, list })}
      />
      <Choice
        label="Lives in"
        value={wanted.habitat}
        options={HABITATS}
        choose={(habitat) => change({ ...wanted, habitat })}
      />
      <Choice
        label="Need or caution"
        value={wanted.need}
        options={needs.map((need) => [need, need])}
        choose={(need) => change({ ...wanted, need })}
      />
    </search>
  );
}

interface ChoiceProps {
  readonly label: string;
  readonly value: string;
  readonly options: readonly (readonly [value: string, name: string])[];
  readonly choose: (value: string) => void;
}

function Choice({ label, value, options, choose }: ChoiceProps) {
  return (
    <label>
      {label}
      <select value={value} onChange={({ target }) => choose(target.value)}>
        <option value="">any</option>
        {options.map(([each, name]) => (
          <option key={each} value={each}>
            {name}
          </option>
        ))}
      </select>
    </label>
  );
}

function EntryList({ kind, name, listed }: Found) {
  if (listed.length === 0) return null;
  return (
    <section aria-labelledby={kind} className={styles.list}>
      <h2 id={kind}>{name}</h2>
      <ul>
        {listed.map((entry) => (
          <Entry key={entry.id} kind={kind} entry={entry} />
        ))}
      </ul>
    </section>
  );
}

const KNOWN = { well: 'known well', fairly: 'known fairly', poorly: 'known poorly' } as const;

function Entry({ kind, entry }: { readonly kind: string; readonly entry: LibraryListed }) {
  const { id, name, scientificName, about, known, needs } = entry;
  const words = [entry.kind, ...needs, ...(known ? [KNOWN[known]] : [])];
  return (
    <li>
      <Link href={`/library/${kind}/${id}`}>{name}</Link>
      {scientificName && <i> {scientificName}</i>}
      {about && <p>{about}</p>}
      <p className={styles.words}>{words.join(' · ')}</p>
    </li>
  );
}
