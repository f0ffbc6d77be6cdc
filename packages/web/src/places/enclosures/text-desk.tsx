import type { EnclosureFile, LocatedFinding } from '@shoreglass/contract';
import { type FormEvent, useRef, useState } from 'react';
import { Link } from 'wouter';
import { checkText } from '../../engine-client.ts';
import desk from '../sheets/desk.module.css';
import { rememberDraft } from './draft.ts';
import { findingLinks } from './finding-links.ts';
import { FindingList } from './finding-list.tsx';
import { takeJustSaved } from './just-saved.ts';
import { OpenFile } from './open-file.tsx';
import { SaveName } from './saving/save-name.tsx';
import { useSaving } from './saving/use-saving.ts';
import { slugOf } from './slug.ts';
import styles from './text-desk.module.css';
import { goToFinding, TextField } from './text-field.tsx';
import { useChecked } from './use-checked.ts';

interface TextDeskProps {
  /** Under which the draft is kept; the file's id, or "new". */
  readonly draftId: string;
  readonly start: string;
  /** Id of the file the text is of; nothing for one that has none yet. */
  readonly fileId?: string;
  /** Own file that is written over; absent where the text needs a name first. */
  readonly target?: { readonly id: string; readonly basedOn: string };
  /** Put before the name that the text suggests, where that one is taken. */
  readonly nameAfter?: string;
  readonly onSaved: (file: EnclosureFile) => void;
}

/** A text, what is found in it, and the way to keep it. */
export function TextDesk({ draftId, start, fileId, target, nameAfter = '', onSaved }: TextDeskProps) {
  const [text, setText] = useState(start);
  const [notice, setNotice] = useState<string>();
  const [savedId, setSavedId] = useState(takeJustSaved);
  const area = useRef<HTMLTextAreaElement>(null);
  const newest = useRef(start);
  const keeping = useRef(false);
  const checked = useChecked(text, `${draftId}.yaml`);
  const offered = (name = '') => slugOf(`${nameAfter}${name}`);
  const saving = useSaving({ target, suggested: offered(checked.name) });

  const write = (next: string) => {
    setText(next);
    newest.current = next;
    setNotice(undefined);
    saving.startOver();
    setSavedId(undefined);
    rememberDraft(draftId, { text: next, basedOn: target?.basedOn ?? null });
  };

  const keep = async () => {
    setSavedId(undefined);
    // What is shown may have been found before the last keys; what is saved is looked through as it stands.
    const { name, findings } = await checkText(text, `${draftId}.yaml`).catch(() => checked);
    const reason = whyNotYet(findings);
    setNotice(reason);
    const file = reason === undefined ? await saving.keep(text, offered(name)) : undefined;
    if (!file) return;
    const writtenOn = newest.current !== text;
    if (!writtenOn) setSavedId(file.id);
    onSaved(file);
    if (writtenOn) rememberDraft(file.id, { text: newest.current, basedOn: file.version });
  };
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    if (keeping.current) return;
    keeping.current = true;
    await keep().finally(() => {
      keeping.current = false;
    });
  };

  return (
    <form className={styles.desk} onSubmit={submit} noValidate>
      <div className={styles.tools}>
        <OpenFile onText={write} onTrouble={setNotice} />
        <div className={styles.saving}>
          <SaveName saving={saving} />
          <button type="submit" className={desk.primary} disabled={saving.busy} aria-busy={saving.busy}>
            {saving.busy ? 'Saving …' : 'Save'}
          </button>
        </div>
      </div>
      <p role="status" className={styles.notice}>
        {notice ?? (saving.trouble !== undefined && `Not saved: ${saving.trouble}`)}
        {savedId !== undefined && (
          <>
            Saved. <Link href={`/ahead/${savedId}`}>Look ahead</Link>
          </>
        )}
      </p>
      <TextField
        text={text}
        onChange={write}
        findings={checked.findings}
        area={area}
        describedBy="findings"
      />
      <FindingList
        id="findings"
        findings={checked.findings}
        linksOf={(finding) => findingLinks(finding, text, fileId)}
        onChoose={(finding) => area.current && goToFinding(area.current, finding)}
      />
    </form>
  );
}

function whyNotYet(findings: readonly LocatedFinding[]): string | undefined {
  const errors = findings.filter(({ severity }) => severity === 'blocking').length;
  if (errors === 0) return undefined;
  return `Not saved: the text has ${errors === 1 ? 'an error' : `${errors} errors`}. It stays here on this device meanwhile.`;
}
