import type { EnclosureFile, Finding } from '@shoreglass/contract';
import { useEffect } from 'react';
import { Link } from 'wouter';
import { Frame } from '../../app/frame.tsx';
import { rememberOpened } from '../../app/last-opened.ts';
import { Trouble } from '../../app/trouble.tsx';
import { useEnclosure } from '../../files/queries.ts';
import { lookAheadAgain, lookAheadOn, type Outlook, useOutlook } from '../../outlook/outlook-store.ts';
import styles from './ahead-place.module.css';
import { AheadView } from './ahead-view.tsx';
import { Skeleton } from './skeleton.tsx';

/** The year of one enclosure. */
export function AheadPlace({ id }: { readonly id: string }) {
  const { data: file, error, refetch } = useEnclosure(id);
  if (file) return <Ahead file={file} />;
  return (
    <Frame title={error ? 'Ahead' : 'Opening …'}>
      {error ? (
        <Trouble error={error} again={() => void refetch()} />
      ) : (
        <Skeleton words="Opening the enclosure …" />
      )}
    </Frame>
  );
}

function Ahead({ file }: { readonly file: EnclosureFile }) {
  const of = `${file.id} ${file.version}`;
  const outlook = useOutlook((state) => (state.of === of ? state.outlook : undefined));
  useEffect(() => {
    rememberOpened(file.id);
    lookAheadOn(file);
  }, [file]);
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
