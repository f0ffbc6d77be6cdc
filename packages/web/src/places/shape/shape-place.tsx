import type { EnclosureFile } from '@shoreglass/contract';
import { useEffect, useState } from 'react';
import { Link, useLocation } from 'wouter';
import { useStore } from 'zustand';
import { Frame } from '../../app/frame.tsx';
import { rememberOpened } from '../../app/last-opened.ts';
import { Trouble } from '../../app/trouble.tsx';
import { Skeleton } from '../ahead/skeleton.tsx';
import { OpenedEnclosure } from '../opened-enclosure.tsx';
import { createDesk, type Desk, isSound } from './desk/shape-desk-store.ts';
import styles from './shape-view.module.css';
import { ShapeView } from './shape-view.tsx';

/** The shape of one enclosure, to draw and to reckon with. */
export function ShapePlace({ id }: { readonly id: string }) {
  return (
    <OpenedEnclosure id={id} name="Shape" meanwhile={<Skeleton words="Opening the enclosure …" />}>
      {(file) => <Opened file={file} />}
    </OpenedEnclosure>
  );
}

function Opened({ file }: { readonly file: EnclosureFile }) {
  const desk = useDesk(file);
  useEffect(() => rememberOpened(file.id), [file.id]);
  return (
    <Frame title={file.name} note={file.origin === 'example' ? 'invented example' : `${file.id}.yaml`} bare>
      {desk ? <OnDesk file={file} desk={desk} /> : <Skeleton words="Setting up the desk …" />}
    </Frame>
  );
}

/** One desk for one file, as long as the place is open; what comes from the server later does not disturb it. */
function useDesk(file: EnclosureFile): Desk | undefined {
  const [opened] = useState(file);
  const [desk, setDesk] = useState<Desk>();
  useEffect(() => {
    const made = createDesk(opened);
    setDesk(made);
    return () => made.end();
  }, [opened]);
  return desk;
}

function OnDesk({ file, desk }: { readonly file: EnclosureFile; readonly desk: Desk }) {
  const [, navigate] = useLocation();
  const { reading, glance, failure, fromDraft } = useStore(desk);
  if (failure && !reading) return <Trouble error={failure} again={desk.readAgain} />;
  if (!reading) return <Skeleton words="Measuring the shape …" />;
  if (!isSound(reading)) return <Unsound file={file} desk={desk} />;
  const now = isSound(glance) ? glance : reading;
  return (
    <>
      {failure && <Trouble error={failure} again={desk.readAgain} />}
      {fromDraft && (
        <p className={styles.lead}>
          This is what you last shaped or wrote here and did not save.{' '}
          <button type="button" className={styles.inline} onClick={desk.startAgain}>
            Go back to the saved text
          </button>
        </p>
      )}
      <ShapeView
        file={file}
        desk={desk}
        shape={now.sound}
        findings={now.findings}
        settled={reading.sound}
        onMoved={(id) => navigate(`/shape/${id}`)}
      />
    </>
  );
}

/** The text cannot be drawn: every error with its mend, and the way to the text. */
function Unsound({ file, desk }: { readonly file: EnclosureFile; readonly desk: Desk }) {
  const { reading, saved, history } = useStore(desk);
  const errors = reading?.findings.filter(({ severity }) => severity === 'blocking') ?? [];
  return (
    <div className={styles.unsound} role="alert">
      <p>
        <strong>
          The text has {errors.length === 1 ? 'an error' : `${errors.length} errors`} and cannot be drawn.
        </strong>{' '}
        <Link href={`/enclosures/${file.id}`}>Mend the text</Link>
        {history.text !== saved.text && (
          <>
            {' or '}
            <button type="button" className={styles.inline} onClick={desk.startAgain}>
              go back to the saved text
            </button>
          </>
        )}
      </p>
      <ul>
        {errors.map(({ line, path, message, mend }) => (
          <li key={`${line} ${path} ${message}`}>
            Line {line}, {path}: {message}. <span className={styles.mend}>{mend}</span>
          </li>
        ))}
      </ul>
    </div>
  );
}
