import type { Plan, Recipe, SplitChange } from '@shoreglass/engine';
import { MONTHS, quantityText } from '@shoreglass/figures';
import { useEffect, useId, useState } from 'react';
import { splitOver } from '../../../engine-client.ts';
import { percent } from '../../../outlook/turning-words.ts';
import type { ChangeOver } from '../../../worker/messages.ts';
import desk from '../desk.module.css';
import { localDate, type ReadingEntry, useReadings } from '../readings/readings-store.ts';
import styles from './changing-over.module.css';

interface ChangingOverProps {
  readonly id: string;
  readonly plan: Plan;
  readonly recipe: Recipe;
}

/** Shares of the pool one may replace in all. */
const SHARES = [0.1, 0.2, 0.3, 0.5, 0.75, 0.9] as const;

/** Replacing part of the water in the enclosure by this one, in steps that those who live there bear. */
export function ChangingOver({ id, plan, recipe }: ChangingOverProps) {
  const latest = useReadings(id).find(({ values: { GH, KH } }) => GH !== undefined && KH !== undefined);
  const [wanted, setWanted] = useState<'fill' | 'read'>('fill');
  const [fraction, setFraction] = useState(0.5);
  const [share, from] = [useId(), useId()];
  const read = wanted === 'read' ? latest : undefined;
  const { split, failure } = useSplit(plan, read, fraction, recipe);
  return (
    <details className={styles.over}>
      <summary>Changing over, when animals live there already</summary>
      <div className={styles.choices}>
        <label htmlFor={share}>Replace in all</label>
        <select
          id={share}
          className={desk.select}
          value={fraction}
          onChange={({ target }) => setFraction(Number(target.value))}
        >
          {SHARES.map((each) => (
            <option key={each} value={each}>
              {percent(each)} of the water
            </option>
          ))}
        </select>
        <label htmlFor={from}>What is in it now</label>
        <select
          id={from}
          className={desk.select}
          value={wanted}
          onChange={({ target }) => setWanted(target.value === 'read' ? 'read' : 'fill')}
        >
          <option value="fill">the water it was filled with</option>
          <option value="read" disabled={!latest}>
            {latest ? `GH and KH of ${dateText(latest)}` : 'GH and KH as read (none yet)'}
          </option>
        </select>
      </div>
      {failure !== undefined && <p role="alert">{failure}</p>}
      {split && (
        <>
          <p>{split.sentence}</p>
          <Steps split={split} />
        </>
      )}
    </details>
  );
}

function useSplit(plan: Plan, read: ReadingEntry | undefined, fraction: number, { water }: Recipe) {
  const [found, setFound] = useState<{ readonly split?: SplitChange; readonly failure?: string }>({});
  const { GH, KH } = read?.values ?? {};
  useEffect(() => {
    let current = true;
    const { room, changeLimits, populations, water: planned } = plan;
    const from = GH === undefined || KH === undefined ? ('fill' as const) : { GH, KH };
    const limited = changeLimits === undefined ? {} : { changeLimits };
    const change: ChangeOver = {
      plan: { room, populations, water: planned, ...limited },
      from,
      fraction,
      to: water.composition,
    };
    splitOver(change).then(
      (split) => current && setFound({ split }),
      (error: Error) => current && setFound({ failure: error.message }),
    );
    return () => {
      current = false;
    };
  }, [plan, GH, KH, fraction, water]);
  return found;
}

function Steps({ split }: { readonly split: SplitChange }) {
  return (
    <table className={styles.steps}>
      <thead>
        <tr>
          <th scope="col">Day</th>
          <th scope="col">Replace</th>
          <th scope="col">pH</th>
          <th scope="col">KH</th>
          <th scope="col">GH</th>
          <th scope="col">µS/cm</th>
        </tr>
      </thead>
      <tbody>
        <tr>
          <th scope="row">now</th>
          <td>–</td>
          <Felt water={split.before} />
        </tr>
        {split.steps.map(({ day, amount, after }) => (
          <tr key={day}>
            <th scope="row">{day + 1}</th>
            <td>{percent(amount)}</td>
            <Felt water={after} />
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Felt({ water: { pH, KH, GH, conductivity } }: { readonly water: SplitChange['before'] }) {
  return (
    <>
      <td>{quantityText(pH, '', 1)}</td>
      <td>{quantityText(KH, '', 1)}</td>
      <td>{quantityText(GH, '', 1)}</td>
      <td>{quantityText(conductivity, '')}</td>
    </>
  );
}

function dateText({ on }: ReadingEntry): string {
  const date = localDate(on);
  return `${date.getDate()} ${MONTHS[date.getMonth()]}`;
}
