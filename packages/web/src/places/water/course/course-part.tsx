import type { AheadDocument, Plan, SeriesId } from '@shoreglass/engine';
import { useMemo } from 'react';
import { useToday } from '../../../outlook/use-today.ts';
import { RibbonPanel } from '../../ahead/ribbon-panel.tsx';
import { OutlookGate } from '../../sheets/outlook-gate.tsx';
import type { SheetProps } from '../../sheets/sheet-props.ts';
import { type ReadingPoint, readingsBySeries, useReadings } from '../readings/readings-store.ts';
import { CourseChart } from './course-chart.tsx';
import styles from './course-part.module.css';
import { OwnersList } from './owners-list.tsx';

const STRIPS: readonly SeriesId[] = ['pH', 'KH', 'nitrate'];

const NO_READINGS: readonly ReadingPoint[] = [];

const GROUPS: readonly { readonly title: string; readonly ids: readonly SeriesId[] }[] = [
  { title: 'Acid and minerals', ids: ['pH', 'pHSwing', 'KH', 'GH', 'conductivity', 'copper'] },
  {
    title: 'Nitrogen and breath',
    ids: ['totalAmmonia', 'unionisedAmmonia', 'nitrite', 'nitrate', 'oxygenLow', 'oxygenHigh'],
  },
];

/** The water's quantities over the run, with the bands of those who live there and what the keeper read. */
export function CoursePart(props: SheetProps) {
  return (
    <OutlookGate {...props}>{(document, plan) => <Course document={document} plan={plan} />}</OutlookGate>
  );
}

function Course({ document, plan }: { readonly document: AheadDocument; readonly plan: Plan }) {
  const today = useToday(document);
  const entries = useReadings(document.enclosure.id);
  const readings = useMemo(() => readingsBySeries(entries, document), [entries, document]);
  const strips = useMemo(() => STRIPS.filter((id) => id in document.series), [document]);
  return (
    <div className={styles.course}>
      <div className={styles.ribbon}>
        <RibbonPanel document={document} today={today} strips={strips} />
      </div>
      {GROUPS.map(({ title, ids }) => (
        <section key={title} aria-label={title} className={styles.group}>
          <h2>{title}</h2>
          <ul className={styles.charts}>
            {ids
              .filter((id) => id in document.series)
              .map((id) => (
                <li key={id}>
                  <CourseChart
                    document={document}
                    id={id}
                    today={today}
                    readings={readings.get(id) ?? NO_READINGS}
                  />
                  <OwnersList plan={plan} id={id} />
                </li>
              ))}
          </ul>
        </section>
      ))}
    </div>
  );
}
