import type { EnclosureFile } from '@shoreglass/contract';
import { useState } from 'react';
import { Frame } from '../../app/frame.tsx';
import { rememberOpened } from '../../app/last-opened.ts';
import { forgetDraft, recallDraft } from './draft.ts';
import { TextDesk } from './text-desk.tsx';
import styles from './text-place.module.css';

const DRAFT = 'new';

/** An empty desk: paste a text, or open a file from this device. */
export function NewTextPlace() {
  const [start] = useState(() => recallDraft(DRAFT)?.text ?? '');
  const afterSaving = ({ id }: EnclosureFile) => {
    forgetDraft(DRAFT);
    rememberOpened(id);
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
