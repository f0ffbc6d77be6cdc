import type { Plan, Recipe, SplitChange, WaterComposition } from '@shoreglass/engine';
import { quantityText } from '@shoreglass/figures';
import { useEffect, useId, useState } from 'react';
import { splitOver } from '../../../engine-client.ts';
import { percent } from '../../../outlook/turning-words.ts';
import type { ChangeOver } from '../../../worker/messages.ts';
import desk from '../../sheets/desk.module.css';
import styles from './changing-over.module.css';
import { type PoolNow, PoolNowChoice, type PoolSource, type Stays } from './pool-now.tsx';

interface ChangingOverProps {
  readonly plan: Plan;
  readonly recipe: Recipe;
  readonly pools: readonly PoolNow[];
  readonly stays: Stays | undefined;
  readonly open: boolean;
  /** Opens or closes it. */
  readonly onFold: () => void;
}

/** Shares of the pool one may replace in all. */
const SHARES = [0.1, 0.2, 0.3, 0.5, 0.75, 0.9] as const;

/** Replacing part of the water in the enclosure by this one, in steps that those who live there bear. */
export function ChangingOver({ plan, recipe, pools, stays, open, onFold }: ChangingOverProps) {
  const [wanted, setWanted] = useState<PoolSource>('fill');
  const [chosen, setChosen] = useState(0.5);
  const share = useId();
  const source = stays?.source ?? wanted;
  const pool = pools.find((each) => each.known && each.source === source);
  const fraction = stays ? 1 - stays.volume / stays.of : chosen;
  const poured = stays ? recipe.mixWater?.composition : recipe.water.composition;
  const { split, failure } = useSplit(plan, pool, fraction, poured);
  if (!poured || fraction <= 0) return null;
  return (
    <details className={styles.over} open={open}>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: a summary answers to pointer and keys by itself, each as a click */}
      <summary
        onClick={(event) => {
          event.preventDefault();
          onFold();
        }}
      >
        Changing over, when animals live there already
      </summary>
      <div className={styles.choices}>
        <label htmlFor={share}>Replace in all</label>
        {stays ? (
          <output id={share}>{percent(fraction)} of the water, by the new mix</output>
        ) : (
          <select
            id={share}
            className={desk.select}
            value={chosen}
            onChange={({ target }) => setChosen(Number(target.value))}
          >
            {SHARES.map((each) => (
              <option key={each} value={each}>
                {percent(each)} of the water
              </option>
            ))}
          </select>
        )}
        {!stays && <PoolNowChoice pools={pools} value={pool?.source ?? 'fill'} onChange={setWanted} />}
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

function useSplit(plan: Plan, pool: PoolNow | undefined, fraction: number, to: WaterComposition | undefined) {
  const [found, setFound] = useState<{ readonly split?: SplitChange; readonly failure?: string }>({});
  const { GH, KH } = pool?.hardness ?? {};
  useEffect(() => {
    if (!to || fraction <= 0) return;
    let current = true;
    const { room, changeLimits, populations, water: planned } = plan;
    const from = GH === undefined || KH === undefined ? ('fill' as const) : { GH, KH };
    const limited = changeLimits === undefined ? {} : { changeLimits };
    const change: ChangeOver = {
      plan: { room, populations, water: planned, ...limited },
      from,
      fraction,
      to,
    };
    splitOver(change).then(
      (split) => current && setFound({ split }),
      (error: Error) => current && setFound({ failure: error.message }),
    );
    return () => {
      current = false;
    };
  }, [plan, GH, KH, fraction, to]);
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
