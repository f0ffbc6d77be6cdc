import type { EnclosureFile } from '@shoreglass/contract';
import type { ReactNode } from 'react';
import { Frame } from '../../app/frame.tsx';
import { useFileOutlook } from '../../outlook/use-file-outlook.ts';
import { OpenedEnclosure } from '../opened-enclosure.tsx';
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
  return (
    <OpenedEnclosure id={id} name={name}>
      {(file) => <Sheets file={file} {...place} />}
    </OpenedEnclosure>
  );
}

type SheetsProps = Omit<SheetedPlaceProps, 'id' | 'name'> & { readonly file: EnclosureFile };

function Sheets({ file, place, label, parts, open, children }: SheetsProps) {
  const outlook = useFileOutlook(file);
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
