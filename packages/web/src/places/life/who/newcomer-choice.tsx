import type { LibraryListed, LibraryListing } from '@shoreglass/contract';
import { useId, useState } from 'react';
import { Link } from 'wouter';
import type { SoundLife } from '../../../worker/life-orders.ts';
import { found, HABITATS } from '../../library/find-entries.ts';
import desk from '../../sheets/desk.module.css';
import type { Draft } from './draft.ts';
import { isIn, type NewcomerList, withNewcomer } from './newcomer.ts';
import styles from './newcomer-choice.module.css';
import { useNewcomerSearch } from './newcomer-search.ts';

interface NewcomerChoiceProps {
  readonly draft: Draft;
  readonly zones: SoundLife['zones'];
  readonly library: LibraryListing;
  readonly onChange: (draft: Draft) => void;
}

const PAGE_KIND = { animals: 'organisms', plants: 'plants' } as const;
const FEW = 6;

/** The library's animals and plants, by word and habitat, each to be brought in with one press. */
export function NewcomerChoice({ draft, zones, library, onChange }: NewcomerChoiceProps) {
  const { list, text, habitat, look } = useNewcomerSearch();
  const [all, setAll] = useState(false);
  const group = useId();
  const entries = found(library, { text, habitat, need: '', list: PAGE_KIND[list] })[0]?.listed ?? [];
  const shown = all ? entries : entries.slice(0, FEW);
  return (
    <section aria-labelledby="newcomers" className={desk.block}>
      <h2 id="newcomers">Bring in</h2>
      <search className={styles.filters}>
        <div role="radiogroup" aria-label="What to bring in" className={styles.kinds}>
          {(['animals', 'plants'] as const).map((each) => (
            <label key={each} className={desk.check}>
              <input
                type="radio"
                name={group}
                checked={list === each}
                onChange={() => look({ list: each })}
              />
              {each}
            </label>
          ))}
        </div>
        <label>
          <span>Name or word</span>
          <input
            type="search"
            className={desk.input}
            value={text}
            onChange={({ target }) => look({ text: target.value })}
          />
        </label>
        <label>
          <span>Lives in</span>
          <select
            className={desk.select}
            value={habitat}
            onChange={({ target }) => look({ habitat: target.value })}
          >
            <option value="">anywhere</option>
            {HABITATS.map(([value, name]) => (
              <option key={value} value={value}>
                {name}
              </option>
            ))}
          </select>
        </label>
      </search>
      <p role="status" className={desk.soft}>
        {entries.length === 0
          ? 'Nothing in the library fits these words.'
          : `${entries.length} in the library${shown.length < entries.length ? `, ${shown.length} shown` : ''}`}
      </p>
      <ul className={styles.list}>
        {shown.map((entry) => (
          <Newcomer
            key={entry.id}
            list={list}
            entry={entry}
            here={isIn(draft, list, entry.id)}
            bring={() => onChange(withNewcomer(draft, list, entry, zones))}
          />
        ))}
      </ul>
      {entries.length > FEW && (
        <button type="button" className={desk.quiet} onClick={() => setAll(!all)}>
          {all ? 'Show fewer' : `Show all ${entries.length}`}
        </button>
      )}
    </section>
  );
}

const KNOWN = { well: 'known well', fairly: 'known fairly', poorly: 'known poorly' } as const;

interface NewcomerProps {
  readonly list: NewcomerList;
  readonly entry: LibraryListed;
  readonly here: boolean;
  readonly bring: () => void;
}

function Newcomer({ list, entry, here, bring }: NewcomerProps) {
  const { id, name, scientificName, known, needs, cautions } = entry;
  const words = [...(known ? [KNOWN[known]] : []), ...needs];
  return (
    <li className={styles.newcomer}>
      <div>
        <p className={styles.name}>
          <Link href={`/library/${PAGE_KIND[list]}/${id}`}>{name}</Link>
          {scientificName && <i> {scientificName}</i>}
        </p>
        <p className={styles.words}>{words.join(' · ')}</p>
        {cautions.length > 0 && (
          <details className={styles.cautions}>
            <summary>{cautions.length === 1 ? 'A caution' : `${cautions.length} cautions`}</summary>
            <ul>
              {cautions.map((caution) => (
                <li key={caution}>{caution}</li>
              ))}
            </ul>
          </details>
        )}
      </div>
      {here ? (
        <span className={styles.here}>is here</span>
      ) : (
        <button type="button" className={desk.second} onClick={bring} aria-label={`Bring in ${name}`}>
          Bring in
        </button>
      )}
    </li>
  );
}
