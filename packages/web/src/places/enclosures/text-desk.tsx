import { type EnclosureFile, isEnclosureId, type LocatedFinding } from '@shoreglass/contract';
import { type FormEvent, useRef, useState } from 'react';
import { Link } from 'wouter';
import { useSaveEnclosure } from '../../files/queries.ts';
import { Refused, ServerGone } from '../../files/server.ts';
import { rememberDraft } from './draft.ts';
import { FindingList } from './finding-list.tsx';
import { takeJustSaved } from './just-saved.ts';
import { OpenFile } from './open-file.tsx';
import { slugOf } from './slug.ts';
import styles from './text-desk.module.css';
import { goToFinding, TextField } from './text-field.tsx';
import { useChecked } from './use-checked.ts';

interface TextDeskProps {
  /** Under which the draft is kept; the file's id, or "new". */
  readonly draftId: string;
  readonly start: string;
  /** Own file that is written over; absent where the text needs a name first. */
  readonly target?: { readonly id: string; readonly basedOn: string };
  /** Put before the name that the text suggests, where that one is taken. */
  readonly nameAfter?: string;
  readonly onSaved: (file: EnclosureFile) => void;
}

/** A text, what is found in it, and the way to keep it. */
export function TextDesk({ draftId, start, target, nameAfter = '', onSaved }: TextDeskProps) {
  const [text, setText] = useState(start);
  const [typedName, setTypedName] = useState<string>();
  const [notice, setNotice] = useState<string>();
  const [savedId, setSavedId] = useState(takeJustSaved);
  const [mustRename, setMustRename] = useState(false);
  const area = useRef<HTMLTextAreaElement>(null);
  const checked = useChecked(text, `${draftId}.yaml`);
  const save = useSaveEnclosure();
  const named = target === undefined || mustRename;
  const id = named ? (typedName ?? slugOf(`${nameAfter}${checked.name ?? ''}`)) : target.id;

  const write = (next: string) => {
    setText(next);
    setNotice(undefined);
    setSavedId(undefined);
    rememberDraft(draftId, { text: next, basedOn: target?.basedOn ?? null });
  };

  const keep = async (event: FormEvent) => {
    event.preventDefault();
    setSavedId(undefined);
    const reason = whyNotYet(id, checked.findings);
    if (reason !== undefined) return setNotice(reason);
    try {
      const file = await save.mutateAsync({ id, text, basedOn: named ? null : target.basedOn });
      setNotice(undefined);
      setSavedId(file.id);
      onSaved(file);
    } catch (error) {
      if (error instanceof Refused && error.status === 409) setMustRename(true);
      setNotice(sentenceFor(error));
    }
  };

  return (
    <form className={styles.desk} onSubmit={keep} noValidate>
      <div className={styles.tools}>
        <OpenFile onText={write} onTrouble={setNotice} />
        <div className={styles.saving}>
          {named && (
            <label className={styles.name}>
              <span>Save as</span>
              <input
                value={id}
                onChange={(event) => setTypedName(event.target.value)}
                spellCheck={false}
                autoCapitalize="off"
                autoComplete="off"
              />
              <span aria-hidden="true">.yaml</span>
            </label>
          )}
          <button type="submit" className={styles.save} disabled={save.isPending}>
            {save.isPending ? 'Saving …' : 'Save'}
          </button>
        </div>
      </div>
      <p role="status" className={styles.notice}>
        {notice}
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
        onChoose={(finding) => area.current && goToFinding(area.current, finding)}
      />
    </form>
  );
}

function whyNotYet(id: string, findings: readonly LocatedFinding[]): string | undefined {
  const errors = findings.filter(({ severity }) => severity === 'blocking').length;
  if (errors > 0)
    return `Not saved: the text has ${errors === 1 ? 'an error' : `${errors} errors`}. It stays here on this device meanwhile.`;
  if (!isEnclosureId(id))
    return 'Not saved: it needs a name first, of a-z, 0-9 and single hyphens, such as alder-corner.';
  return undefined;
}

function sentenceFor(error: unknown): string {
  if (error instanceof Refused) return `Not saved: ${error.message}`;
  if (error instanceof ServerGone)
    return `Not saved: ${error.message} The text stays here on this device meanwhile.`;
  return 'Not saved, for a reason unknown. The text stays here on this device meanwhile.';
}
