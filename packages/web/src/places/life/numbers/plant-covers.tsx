import type { AheadDocument, Plan, PlantOutlook, SeriesId } from '@shoreglass/engine';
import { capital, percent } from '../../../outlook/turning-words.ts';
import { QuantityChart } from '../../ahead/quantity-chart.tsx';
import styles from './numbers-part.module.css';

interface PlantCoversProps {
  readonly document: AheadDocument;
  readonly plan: Plan;
  readonly plants: readonly PlantOutlook[];
  readonly today: number | undefined;
}

const GROUP_SERIES = {
  submerged: 'plantCover',
  floating: 'floatingCover',
  emersed: 'emersedCover',
} as const satisfies Record<string, SeriesId>;

/** How far each planting spreads, and what keeps it back. */
export function PlantCovers({ document, plan, plants, today }: PlantCoversProps) {
  const charts = plants.flatMap((plant) => {
    const id = seriesOf(document, plan, plant.id);
    return id ? [{ ...plant, series: id }] : [];
  });
  if (charts.length === 0) return null;
  return (
    <section aria-labelledby="covers" className={styles.population}>
      <h2 id="covers">Plants</h2>
      <ul className={styles.covers}>
        {charts.map(({ id, name, zone, heldBack, series }) => (
          <li key={id}>
            <h3>
              {capital(name)}, {zone}
            </h3>
            {Object.keys(heldBack).length > 0 && <p>{heldWords(heldBack)}</p>}
            <QuantityChart document={document} id={series} today={today} />
          </li>
        ))}
      </ul>
    </section>
  );
}

function seriesOf(document: AheadDocument, plan: Plan, id: string): SeriesId | undefined {
  if (`planting:${id}` in document.series) return `planting:${id}`;
  const group = plan.plants.find((each) => each.id === id)?.group;
  return group === undefined || group === 'moss' || group === 'land' ? undefined : GROUP_SERIES[group];
}

function heldWords(heldBack: PlantOutlook['heldBack']): string {
  const causes = Object.entries(heldBack)
    .filter(([, share]) => share >= 0.1)
    .sort((a, b) => b[1] - a[1])
    .slice(0, 3);
  if (causes.length === 0) return 'Nothing keeps it back much.';
  return `Held back by ${causes.map(([cause, share]) => `${cause} (${percent(share)})`).join(', ')}.`;
}
