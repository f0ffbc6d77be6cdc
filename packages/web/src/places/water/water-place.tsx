import type { EnclosureFile } from '@shoreglass/contract';
import { useEffect } from 'react';
import { Frame } from '../../app/frame.tsx';
import { rememberOpened } from '../../app/last-opened.ts';
import { Trouble } from '../../app/trouble.tsx';
import { useEnclosure } from '../../files/queries.ts';
import { lookAheadOn, useOutlook } from '../../outlook/outlook-store.ts';
import { BudgetPart } from './budget/budget-part.tsx';
import { BufferPart } from './buffer/buffer-part.tsx';
import { CoursePart } from './course/course-part.tsx';
import { ChangeNote } from './file/change-note.tsx';
import { PartNames } from './part-names.tsx';
import { ReadingsPart } from './readings/readings-part.tsx';
import { RecipePart } from './recipe/recipe-part.tsx';
import type { SheetProps } from './sheet-props.ts';
import { WATER_PARTS, type WaterPartId, waterPart } from './water-parts.ts';
import styles from './water-place.module.css';
import { WoodPart } from './wood/wood-part.tsx';

/** The water of one enclosure: what it is mixed of, what becomes of it, and what can be done. */
export function WaterPlace({ id, part }: { readonly id: string; readonly part: string | undefined }) {
  const { data: file, error, refetch } = useEnclosure(id);
  if (file) return <Water file={file} part={waterPart(part)} />;
  return (
    <Frame title={error ? 'Water' : 'Opening …'}>
      {error ? (
        <Trouble error={error} again={() => void refetch()} />
      ) : (
        <p role="status">Opening the enclosure …</p>
      )}
    </Frame>
  );
}

interface WaterProps {
  readonly file: EnclosureFile;
  readonly part: WaterPartId;
}

function Water({ file, part }: WaterProps) {
  const of = `${file.id} ${file.version}`;
  const outlook = useOutlook((state) => (state.of === of ? state.outlook : undefined));
  useEffect(() => {
    rememberOpened(file.id);
    lookAheadOn(file);
  }, [file]);
  return (
    <Frame title={file.name} note={file.origin === 'example' ? 'invented example' : `${file.id}.yaml`} bare>
      <PartNames at={`/water/${file.id}`} label="Sheets of the water" parts={WATER_PARTS} open={part} />
      <div className={styles.sheet} data-sheet={part}>
        <ChangeNote file={file} />
        <Sheet file={file} part={part} outlook={outlook} />
      </div>
    </Frame>
  );
}

function Sheet({ part, ...sheet }: SheetProps & { readonly part: WaterPartId }) {
  switch (part) {
    case 'mix':
      return <RecipePart {...sheet} />;
    case 'year':
      return <CoursePart {...sheet} />;
    case 'budget':
      return <BudgetPart {...sheet} />;
    case 'wood':
      return <WoodPart {...sheet} />;
    case 'buffer':
      return <BufferPart {...sheet} />;
    case 'today':
      return <ReadingsPart {...sheet} />;
  }
}
