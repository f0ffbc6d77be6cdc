import type { AheadDocument, TurningPoint } from '@shoreglass/engine';
import { dateLabel } from '@shoreglass/figures';
import { useState } from 'react';
import { useChosenDay } from '../../outlook/chosen-day.ts';
import { needsKeeper, ownerWords, percent, reasonWords, turningClaim } from '../../outlook/turning-words.ts';
import { weightiest } from '../../outlook/weightiest.ts';
import { IntervalLine } from './interval-line.tsx';
import styles from './turning-points.module.css';

const SHOWN_AT_FIRST = 3;

/** What turns, and when: one sentence each, the reason, and the days in which it may fall. */
export function TurningPoints({ document }: { readonly document: AheadDocument }) {
  const [all, setAll] = useState(false);
  const points = all ? document.turningPoints : weightiest(document.turningPoints, SHOWN_AT_FIRST);
  const hidden = document.turningPoints.length - points.length;
  return (
    <section aria-labelledby="turns">
      <h2 id="turns">What turns, and when</h2>
      {document.turningPoints.length === 0 && (
        <p className={styles.none}>Nothing leaves its band in these runs.</p>
      )}
      <ol className={styles.points}>
        {points.map((point) => (
          <Turning key={point.id} document={document} point={point} />
        ))}
      </ol>
      {(hidden > 0 || all) && document.turningPoints.length > SHOWN_AT_FIRST && (
        <button type="button" className={styles.more} aria-expanded={all} onClick={() => setAll(!all)}>
          {all ? 'Show the weightiest only' : `Show ${hidden} more`}
        </button>
      )}
    </section>
  );
}

function Turning({ document, point }: { readonly document: AheadDocument; readonly point: TurningPoint }) {
  const { startDate } = document.enclosure;
  const { early, median, late } = point.window;
  const choose = useChosenDay((state) => state.choose);
  const owner =
    point.kind === 'falls below' || point.kind === 'rises above' ? ownerWords(point.band.owner) : '';
  return (
    <li className={styles.point}>
      <button
        type="button"
        className={styles.date}
        aria-label={`${dateLabel(startDate, median)}: show this day`}
        onClick={() => choose(Math.round(median))}
      >
        {dateLabel(startDate, median)}
      </button>
      <div>
        <p>
          <strong>{turningClaim(document, point)}</strong>
          {owner !== '' && `, ${owner}`}.{' '}
          <span className={styles.why}>
            {[reasonWords(point.because), point.slowed].filter(Boolean).join(' ')}
          </span>
        </p>
        {document.run.members > 1 && (
          <p className={styles.window}>
            <IntervalLine window={point.window} days={document.run.days} alarm={needsKeeper(point.kind)} />
            <span>
              {percent(point.probability)} of runs, {between(startDate, early, late)}
            </span>
          </p>
        )}
      </div>
    </li>
  );
}

/** "12 May to 3 June"; one date where both fall on it. */
function between(startDate: string, early: number, late: number): string {
  const [from, to] = [dateLabel(startDate, early), dateLabel(startDate, late)];
  return from === to ? `all on ${from}` : `${from} to ${to}`;
}
