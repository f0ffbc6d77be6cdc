import type { EnclosureFile } from '@shoreglass/contract';
import type { AheadDocument, SeriesId } from '@shoreglass/engine';
import type { SectionPlan } from '@shoreglass/figures';
import { useMemo, useState } from 'react';
import { stripsFor } from '../../outlook/main-series.ts';
import type { Outlook } from '../../outlook/outlook-store.ts';
import { useToday } from '../../outlook/use-today.ts';
import styles from './ahead-view.module.css';
import { HandsOff } from './hands-off.tsx';
import { NotModelled } from './not-modelled.tsx';
import { Progress } from './progress.tsx';
import { Quantities } from './quantities.tsx';
import { RibbonPanel } from './ribbon-panel.tsx';
import { RunFacts } from './run-facts.tsx';
import { SectionDrawing, SectionKey } from './section-drawing.tsx';
import { TurningPoints } from './turning-points.tsx';

interface AheadViewProps {
  readonly file: EnclosureFile;
  readonly plan: SectionPlan;
  readonly document: AheadDocument;
  readonly outlook: Outlook;
}

/** The drawing above the ribbon, the words beside it, and everything else further down. */
export function AheadView({ file, plan, document, outlook }: AheadViewProps) {
  const today = useToday(document);
  const [strips, toggleStrip] = useStrips(document);
  return (
    <div className={styles.ahead}>
      <p role="status" className={styles.unseen}>
        {outlook.complete && `All ${outlook.runs.of} runs are done.`}
      </p>
      <div className={styles.drawing}>
        <SectionDrawing plan={plan} document={document} />
      </div>
      <RibbonPanel document={document} today={today} strips={strips} />
      <div className={styles.words}>
        <HandsOff document={document} />
        {!outlook.complete && !outlook.failure && <Progress done={outlook.runs.done} of={outlook.runs.of} />}
        <TurningPoints document={document} />
        <SectionKey plan={plan} document={document} />
      </div>
      <Quantities document={document} today={today} strips={strips} onStrip={toggleStrip} />
      <div className={styles.foot}>
        <NotModelled sentences={document.notModelled} />
        <RunFacts file={file} document={document} />
      </div>
    </div>
  );
}

const MOST_STRIPS = 3;

/** What the ribbon carries: the weightiest quantities until the keeper chooses; a new choice takes the first place. */
function useStrips(document: AheadDocument): [readonly SeriesId[], (id: SeriesId) => void] {
  const [chosen, setChosen] = useState<readonly SeriesId[]>();
  const strips = useMemo(() => chosen ?? stripsFor(document, MOST_STRIPS), [chosen, document]);
  const toggle = (id: SeriesId) => {
    const others = strips.filter((each) => each !== id);
    if (!strips.includes(id)) setChosen([id, ...others].slice(0, MOST_STRIPS));
    else if (others.length > 0) setChosen(others);
  };
  return [strips, toggle];
}
