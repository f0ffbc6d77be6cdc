import type { EnclosureFile, Finding } from '@shoreglass/contract';
import { Link } from 'wouter';
import { Frame } from '../../app/frame.tsx';
import { Trouble } from '../../app/trouble.tsx';
import { lookAheadAgain, type Outlook } from '../../outlook/outlook-store.ts';
import { useFileOutlook } from '../../outlook/use-file-outlook.ts';
import { OpenedEnclosure } from '../opened-enclosure.tsx';
import styles from './ahead-place.module.css';
import { AheadView } from './ahead-view.tsx';
import { Skeleton } from './skeleton.tsx';

/** The year of one enclosure. */
export function AheadPlace({ id }: { readonly id: string }) {
  return (
    <OpenedEnclosure id={id} name="Ahead" meanwhile={<Skeleton words="Opening the enclosure …" />}>
      {(file) => <Ahead file={file} />}
    </OpenedEnclosure>
  );
}

function Ahead({ file }: { readonly file: EnclosureFile }) {
  const outlook = useFileOutlook(file);
  return (
    <Frame title={file.name} note={outlook && runsNote(outlook, file)} bare>
      {outlook?.failure && (
        <Failure file={file} {...outlook.failure} partly={outlook.document !== undefined} />
      )}
      {outlook?.plan && outlook.document ? (
        <AheadView file={file} plan={outlook.plan} document={outlook.document} outlook={outlook} />
      ) : (
        !outlook?.failure && <Skeleton words="Running the expected year …" />
      )}
    </Frame>
  );
}

interface FailureProps {
  readonly file: EnclosureFile;
  readonly message: string;
  readonly findings: readonly Finding[];
  /** The expected run came through, and stands below. */
  readonly partly: boolean;
}

function Failure({ file, message, findings, partly }: FailureProps) {
  const sentence = partly
    ? `The spread could not be computed; what stands below is the expected run. ${message}`
    : message;
  return (
    <div className={styles.failure}>
      <Trouble error={new Error(sentence)} again={() => lookAheadAgain(file)} />
      {findings.length > 0 && (
        <p>
          <Link href={`/enclosures/${file.id}`}>Mend the text</Link>
        </p>
      )}
    </div>
  );
}

function runsNote(outlook: Outlook, file: EnclosureFile): string {
  const kind = file.origin === 'example' ? 'invented example · ' : '';
  if (outlook.failure) return `${kind}expected run only`;
  return outlook.complete
    ? `${kind}${outlook.runs.of} runs`
    : `${kind}${outlook.runs.done} of ${outlook.runs.of} runs`;
}
