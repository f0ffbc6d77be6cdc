import type { EnclosureFile } from '@shoreglass/contract';
import { Frame } from '../../app/frame.tsx';
import type { Outlook } from '../../outlook/outlook-store.ts';
import { useFileOutlook } from '../../outlook/use-file-outlook.ts';
import { OpenedEnclosure } from '../opened-enclosure.tsx';
import { OutlookFailure } from '../sheets/outlook-failure.tsx';
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
        <div className={styles.failure}>
          <OutlookFailure file={file} outlook={outlook} />
        </div>
      )}
      {outlook?.plan && outlook.document ? (
        <AheadView file={file} plan={outlook.plan} document={outlook.document} outlook={outlook} />
      ) : (
        !outlook?.failure && <Skeleton words="Running the expected year …" />
      )}
    </Frame>
  );
}

function runsNote(outlook: Outlook, file: EnclosureFile): string {
  const kind = file.origin === 'example' ? 'invented example · ' : '';
  if (outlook.failure) return `${kind}expected run only`;
  return outlook.complete
    ? `${kind}${outlook.runs.of} runs`
    : `${kind}${outlook.runs.done} of ${outlook.runs.of} runs`;
}
