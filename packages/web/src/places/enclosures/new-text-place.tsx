import type { EnclosureFile } from '@shoreglass/contract';
import { useState } from 'react';
import { Frame } from '../../app/frame.tsx';
import { forgetDraft, recallDraft } from './draft.ts';
import { useOpenSaved } from './just-saved.ts';
import { TextDesk } from './text-desk.tsx';
import styles from './text-place.module.css';

const DRAFT = 'new';

/** An empty desk: paste a text, or open a file from this device. */
export function NewTextPlace() {
  const [start] = useState(() => recallDraft(DRAFT)?.text ?? '');
  const openSaved = useOpenSaved();
  const afterSaving = ({ id }: EnclosureFile) => {
    forgetDraft(DRAFT);
    openSaved(id);
  };
  return (
    <Frame title="Bring a file">
      <p className={styles.lead}>
        Paste the text of an enclosure, or open a file from this device. What does not fit is named beside its
        line.
      </p>
      <TextDesk draftId={DRAFT} start={start} onSaved={afterSaving} />
    </Frame>
  );
}
