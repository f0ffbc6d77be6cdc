import type { SheetProps } from '../sheets/sheet-props.ts';
import { SheetedPlace } from '../sheets/sheeted-place.tsx';
import { CountsPart } from './counts/counts-part.tsx';
import { FoodPart } from './food/food-part.tsx';
import { LIFE_PARTS, type LifePartId, lifePart } from './life-parts.ts';
import { MorePart } from './more/more-part.tsx';
import { NumbersPart } from './numbers/numbers-part.tsx';
import { PestPart } from './pest/pest-part.tsx';
import { WebPart } from './web/web-part.tsx';
import { WhoPart } from './who/who-part.tsx';

/** The living community of one enclosure: who, how many, on what, and what one more would change. */
export function LifePlace({ id, part }: { readonly id: string; readonly part: string | undefined }) {
  const open = lifePart(part);
  return (
    <SheetedPlace id={id} place="life" name="Life" label="Sheets of life" parts={LIFE_PARTS} open={open}>
      {(sheet) => <Sheet part={open} {...sheet} />}
    </SheetedPlace>
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
    case 'pest':
      return <PestPart {...sheet} />;
    case 'counts':
      return <CountsPart {...sheet} />;
  }
}
