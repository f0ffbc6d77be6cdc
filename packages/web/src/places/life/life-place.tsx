import type { EnclosureFile } from '@shoreglass/contract';
import { useEffect } from 'react';
import { Frame } from '../../app/frame.tsx';
import { rememberOpened } from '../../app/last-opened.ts';
import { Trouble } from '../../app/trouble.tsx';
import { useEnclosure } from '../../files/queries.ts';
import { lookAheadOn, useOutlook } from '../../outlook/outlook-store.ts';
import { ChangeNote } from '../water/file/change-note.tsx';
import { PartNames } from '../water/part-names.tsx';
import type { SheetProps } from '../water/sheet-props.ts';
import placeStyles from '../water/water-place.module.css';
import { FoodPart } from './food/food-part.tsx';
import { LIFE_PARTS, type LifePartId, lifePart } from './life-parts.ts';
import { MorePart } from './more/more-part.tsx';
import { NumbersPart } from './numbers/numbers-part.tsx';
import { WebPart } from './web/web-part.tsx';
import { WhoPart } from './who/who-part.tsx';

/** The living community of one enclosure: who, how many, on what, and what one more would change. */
export function LifePlace({ id, part }: { readonly id: string; readonly part: string | undefined }) {
  const { data: file, error, refetch } = useEnclosure(id);
  if (file) return <Life file={file} part={lifePart(part)} />;
  return (
    <Frame title={error ? 'Life' : 'Opening …'}>
      {error ? (
        <Trouble error={error} again={() => void refetch()} />
      ) : (
        <p role="status">Opening the enclosure …</p>
      )}
    </Frame>
  );
}

interface LifeProps {
  readonly file: EnclosureFile;
  readonly part: LifePartId;
}

function Life({ file, part }: LifeProps) {
  const of = `${file.id} ${file.version}`;
  const outlook = useOutlook((state) => (state.of === of ? state.outlook : undefined));
  useEffect(() => {
    rememberOpened(file.id);
    lookAheadOn(file);
  }, [file]);
  return (
    <Frame title={file.name} note={file.origin === 'example' ? 'invented example' : `${file.id}.yaml`} bare>
      <PartNames at={`/life/${file.id}`} label="Sheets of life" parts={LIFE_PARTS} open={part} />
      <div className={placeStyles.sheet} data-sheet={part}>
        <ChangeNote file={file} />
        <Sheet file={file} part={part} outlook={outlook} />
      </div>
    </Frame>
  );
}

function Sheet({ part, ...sheet }: SheetProps & { readonly part: LifePartId }) {
  switch (part) {
    case 'who':
      return <WhoPart {...sheet} />;
    case 'web':
      return <WebPart {...sheet} />;
    case 'numbers':
      return <NumbersPart {...sheet} />;
    case 'food':
      return <FoodPart {...sheet} />;
    case 'more':
      return <MorePart {...sheet} />;
  }
}
