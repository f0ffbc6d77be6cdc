import type { EnclosureFile } from '@shoreglass/contract';
import { type ReactNode, useEffect } from 'react';
import { Frame } from '../../app/frame.tsx';
import { rememberOpened } from '../../app/last-opened.ts';
import { Trouble } from '../../app/trouble.tsx';
import { useEnclosure } from '../../files/queries.ts';
import { lookAheadOn, useOutlook } from '../../outlook/outlook-store.ts';
import { ChangeNote } from './file/change-note.tsx';
import { PartNames } from './part-names.tsx';
import type { SheetProps } from './sheet-props.ts';
import styles from './sheeted-place.module.css';

interface SheetedPlaceProps {
  /** Enclosure, and first part of the place's address: 'water'. */
  readonly id: string;
  readonly place: string;
  /** Its name in the row of places, and what the row of its sheets is called. */
  readonly name: string;
  readonly label: string;
  readonly parts: readonly { readonly id: string; readonly name: string }[];
  readonly open: string;
  /** Draws the open sheet. */
  readonly children: (sheet: SheetProps) => ReactNode;
}

/** A place of several sheets about one enclosure, with its outlook under way and the last change of its file at hand. */
export function SheetedPlace({ id, name, ...place }: SheetedPlaceProps) {
  const { data: file, error, refetch } = useEnclosure(id);
  if (file) return <Sheets file={file} {...place} />;
  return (
    <Frame title={error ? name : 'Opening …'}>
      {error ? (
        <Trouble error={error} again={() => void refetch()} />
      ) : (
        <p role="status">Opening the enclosure …</p>
      )}
    </Frame>
  );
}

type SheetsProps = Omit<SheetedPlaceProps, 'id' | 'name'> & { readonly file: EnclosureFile };

function Sheets({ file, place, label, parts, open, children }: SheetsProps) {
  const of = `${file.id} ${file.version}`;
  const outlook = useOutlook((state) => (state.of === of ? state.outlook : undefined));
  useEffect(() => {
    rememberOpened(file.id);
    lookAheadOn(file);
  }, [file]);
  return (
    <Frame title={file.name} note={file.origin === 'example' ? 'invented example' : `${file.id}.yaml`} bare>
      <PartNames at={`/${place}/${file.id}`} label={label} parts={parts} open={open} />
      <div className={styles.sheet} data-sheet={open}>
        <ChangeNote file={file} />
        {children({ file, outlook })}
      </div>
    </Frame>
  );
}
