import type { EnclosureFile } from '@shoreglass/contract';
import { useEffect, useState } from 'react';
import { Frame } from '../../app/frame.tsx';
import { rememberOpened } from '../../app/last-opened.ts';
import { Trouble } from '../../app/trouble.tsx';
import { recordSaved } from '../../files/file-histories.ts';
import { useEnclosure } from '../../files/queries.ts';
import { forgetDraft, recallDraft } from './draft.ts';
import { useOpenSaved } from './just-saved.ts';
import { TextDesk } from './text-desk.tsx';
import styles from './text-place.module.css';

/** One enclosure's text, to read, mend and save. */
export function TextPlace({ id }: { readonly id: string }) {
  const { data, error, refetch } = useEnclosure(id);
  return (
    <Frame title={data?.name ?? 'Text'} note={data && `${data.id}.yaml`}>
      {error && !data && <Trouble error={error} again={() => void refetch()} />}
      {!data && !error && <p role="status">Opening the text …</p>}
      {data && <OpenedText file={data} />}
    </Frame>
  );
}

interface Desk {
  readonly start: string;
  /** Version of the file that the text on the desk was written from. */
  readonly basedOn: string;
  readonly fromDraft: boolean;
  /** Counts fresh starts; each gets an empty desk. */
  readonly round: number;
}

function OpenedText({ file }: { readonly file: EnclosureFile }) {
  const [desk, setDesk] = useState(() => deskFor(file));
  const openSaved = useOpenSaved();
  useEffect(() => rememberOpened(file.id), [file.id]);
  const startAgain = () => {
    forgetDraft(file.id);
    setDesk({ start: file.text, basedOn: file.version, fromDraft: false, round: desk.round + 1 });
  };
  const afterSaving = (saved: EnclosureFile) => {
    forgetDraft(file.id);
    recordSaved(file, saved, 'What was written in the text');
    if (saved.id === file.id) setDesk({ ...desk, basedOn: saved.version, fromDraft: false });
    else openSaved(saved.id);
  };
  return (
    <>
      {file.origin === 'example' && (
        <p className={styles.lead}>
          This is an example and stays as it is. What you change is saved as a file of your own.
        </p>
      )}
      {desk.fromDraft && (
        <p className={styles.lead}>
          This is what you last wrote here and did not save.{' '}
          <button type="button" className={styles.inline} onClick={startAgain}>
            Go back to the saved text
          </button>
        </p>
      )}
      <TextDesk
        key={desk.round}
        draftId={file.id}
        start={desk.start}
        fileId={file.id}
        {...(file.origin === 'own'
          ? { target: { id: file.id, basedOn: desk.basedOn } }
          : { nameAfter: 'my ' })}
        onSaved={afterSaving}
      />
    </>
  );
}

function deskFor(file: EnclosureFile): Desk {
  const draft = recallDraft(file.id);
  if (draft === undefined || draft.text === file.text)
    return { start: file.text, basedOn: file.version, fromDraft: false, round: 0 };
  return { start: draft.text, basedOn: draft.basedOn ?? file.version, fromDraft: true, round: 0 };
}
