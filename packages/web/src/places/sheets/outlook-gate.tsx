import type { AheadDocument, Plan } from '@shoreglass/engine';
import type { ReactNode } from 'react';
import { useToday } from '../../outlook/use-today.ts';
import { OutlookFailure } from './outlook-failure.tsx';
import styles from './outlook-gate.module.css';
import type { SheetProps } from './sheet-props.ts';

interface OutlookGateProps extends SheetProps {
  /** What is drawn once the expected run is there. */
  readonly children: (document: AheadDocument, plan: Plan) => ReactNode;
}

/** What needs the computed year: waits for it, says how far it is, and says why when it cannot be had. */
export function OutlookGate({ file, outlook, children }: OutlookGateProps) {
  const { document, plan, failure, complete, runs } = outlook ?? {};
  return (
    <>
      <OutlookFailure file={file} outlook={outlook} />
      {!failure && !document && (
        <p role="status" className={styles.waiting}>
          Running the expected year …
        </p>
      )}
      {document && !complete && !failure && runs && (
        <p className={styles.note}>
          So far the expected run alone; {runs.done} of {runs.of} runs are in.
        </p>
      )}
      {document && <StartDay document={document} />}
      {document && plan && children(document, plan)}
    </>
  );
}

/** Every sheet starts on the day that the ribbon shows. */
function StartDay({ document }: { readonly document: AheadDocument }) {
  useToday(document);
  return null;
}
