import type { EnclosureFile } from '@shoreglass/contract';
import type { AheadDocument, Plan } from '@shoreglass/engine';
import type { ReactNode } from 'react';
import { Link } from 'wouter';
import { Trouble } from '../../app/trouble.tsx';
import { lookAheadAgain } from '../../outlook/outlook-store.ts';
import { useToday } from '../../outlook/use-today.ts';
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
      {failure && <Failure file={file} {...failure} partly={document !== undefined} />}
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

interface FailureProps {
  readonly file: EnclosureFile;
  readonly message: string;
  readonly findings: readonly unknown[];
  readonly partly: boolean;
}

function Failure({ file, message, findings, partly }: FailureProps) {
  const sentence = partly ? `The spread could not be computed. ${message}` : message;
  return (
    <div className={styles.failure}>
      <Trouble error={new Error(sentence)} again={() => lookAheadAgain(file)} />
      {findings.length > 0 && <Link href={`/enclosures/${file.id}`}>Mend the text</Link>}
    </div>
  );
}
