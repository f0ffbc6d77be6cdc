import type { EnclosureFile } from '@shoreglass/contract';
import { clockTime } from '@shoreglass/engine';
import { useState } from 'react';
import { useLibrary } from '../../../files/queries.ts';
import desk from '../../sheets/desk.module.css';
import { useFileChange } from '../../sheets/file/use-file-change.ts';
import { useLife } from '../who/use-life.ts';
import { doseText, feedingMoves } from './feeding-edits.ts';
import styles from './food-part.module.css';

type Routine = { readonly feed: string; readonly amount: number; readonly every: number } & {
  readonly place?: 'water' | 'land' | undefined;
  readonly at?: number | undefined;
};

/** The feedings of the file: where and at which hour each is given. */
export function Feedings({ file }: { readonly file: EnclosureFile }) {
  const { reading } = useLife(file);
  const routines = reading?.sound?.routines ?? [];
  const feedings = routines.flatMap((routine, at) => (routine.do === 'feed' ? [{ routine, at }] : []));
  if (feedings.length === 0) return null;
  return (
    <section aria-labelledby="feedings" className={desk.block}>
      <h2 id="feedings">Where and when it is fed</h2>
      <p className={desk.soft}>
        Those awake at that hour, and at home in that place, have the first of it. Without an hour all share
        it. On the land means in a bowl or among the leaves.
      </p>
      {feedings.map(({ routine, at }) => (
        <Feeding key={`${at} ${routine.place} ${routine.at}`} file={file} at={at} routine={routine} />
      ))}
    </section>
  );
}

interface FeedingProps {
  readonly file: EnclosureFile;
  readonly at: number;
  readonly routine: Routine;
}

function Feeding({ file, at, routine }: FeedingProps) {
  const { data: library } = useLibrary();
  const { make, busy, trouble } = useFileChange(file);
  const place = routine.place ?? 'water';
  const time = routine.at === undefined ? '' : clockTime(routine.at);
  const [wanted, setWanted] = useState({ place: place as string, time });
  const isChanged = wanted.place !== place || wanted.time !== time;
  const name = library?.feeds.find(({ id }) => id === routine.feed)?.name ?? routine.feed;
  const often = routine.every === 1 ? 'every day' : `every ${routine.every} days`;
  const what = `${doseText(routine.amount)} of ${name} ${often}`;
  const where = wanted.place === 'land' ? 'on the land' : 'into the pool';
  const when = wanted.time === '' ? 'without an hour' : `at ${wanted.time}`;
  return (
    <fieldset className={styles.feeding}>
      <legend>{what}</legend>
      <div className={`${styles.form} ${styles.how}`}>
        <label>
          <span>Where</span>
          <select
            className={desk.select}
            value={wanted.place}
            onChange={({ target }) => setWanted({ ...wanted, place: target.value })}
          >
            <option value="water">into the pool</option>
            <option value="land">on the land</option>
          </select>
        </label>
        <label>
          <span>Time of day</span>
          <input
            className={desk.input}
            type="time"
            value={wanted.time}
            onChange={({ target }) => setWanted({ ...wanted, time: target.value })}
          />
        </label>
      </div>
      <div className={desk.bar}>
        {isChanged && (
          <button
            type="button"
            className={desk.second}
            disabled={busy}
            onClick={() => void make(feedingMoves(at, wanted), `${what} ${where}, ${when}.`)}
          >
            Put into the file
          </button>
        )}
        {trouble !== undefined && <p role="status">{trouble}</p>}
      </div>
    </fieldset>
  );
}
