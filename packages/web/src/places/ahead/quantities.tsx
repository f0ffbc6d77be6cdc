import type { AheadDocument, SeriesId } from '@shoreglass/engine';
import { useState } from 'react';
import { isPopulation, seriesByWeight } from '../../outlook/main-series.ts';
import { capital, nameOf } from '../../outlook/turning-words.ts';
import desk from '../sheets/desk.module.css';
import styles from './quantities.module.css';
import { QuantityChart } from './quantity-chart.tsx';

interface QuantitiesProps {
  readonly document: AheadDocument;
  readonly today: number | undefined;
  readonly strips: readonly SeriesId[];
  readonly onStrip: (id: SeriesId) => void;
}

const CHARTS_AT_FIRST = 6;

/** Fan charts of the quantities the keeper wants to see in full. */
export function Quantities({ document, today, strips, onStrip }: QuantitiesProps) {
  const [chosen, setChosen] = useState<readonly SeriesId[]>();
  const shown = chosen ?? seriesByWeight(document).slice(0, CHARTS_AT_FIRST);
  const toggle = (id: SeriesId) =>
    setChosen(shown.includes(id) ? shown.filter((each) => each !== id) : [...shown, id]);
  return (
    <section aria-labelledby="quantities" className={styles.quantities}>
      <h2 id="quantities">Quantity by quantity</h2>
      <QuantityChoice document={document} shown={shown} onToggle={toggle} />
      <ul className={styles.charts}>
        {shown.map((id) => (
          <li key={id}>
            <QuantityChart document={document} id={id} today={today} />
            <button
              type="button"
              className={styles.strip}
              aria-pressed={strips.includes(id)}
              onClick={() => onStrip(id)}
            >
              {strips.includes(id) ? 'In the ribbon' : 'Put in the ribbon'}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}

interface QuantityChoiceProps {
  readonly document: AheadDocument;
  readonly shown: readonly SeriesId[];
  readonly onToggle: (id: SeriesId) => void;
}

function QuantityChoice({ document, shown, onToggle }: QuantityChoiceProps) {
  const all = Object.keys(document.series) as SeriesId[];
  const groups = [
    { name: 'Animals', ids: all.filter(isPopulation) },
    { name: 'Water, growth and climate', ids: all.filter((id) => !isPopulation(id)) },
  ].filter(({ ids }) => ids.length > 0);
  return (
    <details className={styles.choice}>
      <summary className={desk.fold}>Choose what is shown</summary>
      {groups.map(({ name, ids }) => (
        <fieldset key={name}>
          <legend>{name}</legend>
          {ids.map((id) => (
            <label key={id}>
              <input type="checkbox" checked={shown.includes(id)} onChange={() => onToggle(id)} />
              {capital(nameOf(document, id))}
            </label>
          ))}
        </fieldset>
      ))}
    </details>
  );
}
