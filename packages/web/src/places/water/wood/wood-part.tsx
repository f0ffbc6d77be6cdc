import type { EnclosureFile } from '@shoreglass/contract';
import type { AheadDocument, PieceEffect, Plan } from '@shoreglass/engine';
import { useEffect } from 'react';
import { Trouble } from '../../../app/trouble.tsx';
import desk from '../../sheets/desk.module.css';
import { InquiryProgress } from '../../sheets/inquiry/inquiry-progress.tsx';
import { cancelInquiry, startInquiry, useInquiry } from '../../sheets/inquiry/inquiry-store.ts';
import { OutlookGate } from '../../sheets/outlook-gate.tsx';
import type { SheetProps } from '../../sheets/sheet-props.ts';
import { EffectRow } from './effect-row.tsx';
import styles from './wood-part.module.css';

/** What each piece of wood, each heap of leaves and each lump of lime does to the water. */
export function WoodPart(props: SheetProps) {
  return (
    <OutlookGate {...props}>
      {(document, plan) => (
        <Effects file={props.file} document={document} plan={plan} ready={props.outlook?.complete === true} />
      )}
    </OutlookGate>
  );
}

interface EffectsProps {
  readonly file: EnclosureFile;
  readonly document: AheadDocument;
  readonly plan: Plan;
  /** The outlook has all its runs, so the processors are free. */
  readonly ready: boolean;
}

function Effects({ file, document, plan, ready }: EffectsProps) {
  const key = `wood ${file.id} ${file.version}`;
  const state = useInquiry<PieceEffect[]>(key);
  const { days, seed } = document.run;
  const ask = () =>
    startInquiry(key, plan, async () => (await import('./ask-effects.ts')).askEffects(plan, days, seed));
  const pieces = plan.hardscape.filter(({ contents }) => Object.keys(contents).length > 0);
  // biome-ignore lint/correctness/useExhaustiveDependencies: asked once for each version of the file
  useEffect(() => {
    if (ready && !state && pieces.length > 0) ask();
  }, [ready, key]);
  if (pieces.length === 0) return <p>No wood, litter or lime lies in this enclosure.</p>;
  return (
    <section aria-labelledby="wood" className={desk.block}>
      <h2 id="wood">What this wood will do</h2>
      <p className={styles.lead}>
        The year with each piece, less the same year without it. A line above zero raises, one below lowers.
      </p>
      {!ready && !state && <p role="status">Waiting for the runs of the year …</p>}
      {ready && !state && (
        <p>
          <button type="button" className={desk.second} onClick={ask}>
            Work it out
          </button>
        </p>
      )}
      {state?.running && <InquiryProgress state={state} onCancel={() => cancelInquiry(key)} />}
      {state?.failure !== undefined && <Trouble error={new Error(state.failure)} again={ask} />}
      {state?.answer && (
        <ul className={styles.pieces}>
          {state.answer.map((effect) => (
            <EffectRow key={effect.piece} effect={effect} startDate={document.enclosure.startDate} />
          ))}
        </ul>
      )}
    </section>
  );
}
