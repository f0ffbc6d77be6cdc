import type { SheetProps } from '../sheets/sheet-props.ts';
import { SheetedPlace } from '../sheets/sheeted-place.tsx';
import { BudgetPart } from './budget/budget-part.tsx';
import { BufferPart } from './buffer/buffer-part.tsx';
import { CoursePart } from './course/course-part.tsx';
import { ReadingsPart } from './readings/readings-part.tsx';
import { RecipePart } from './recipe/recipe-part.tsx';
import { WATER_PARTS, type WaterPartId, waterPart } from './water-parts.ts';
import { WoodPart } from './wood/wood-part.tsx';

/** The water of one enclosure: what it is mixed of, what becomes of it, and what can be done. */
export function WaterPlace({ id, part }: { readonly id: string; readonly part: string | undefined }) {
  const open = waterPart(part);
  return (
    <SheetedPlace
      id={id}
      place="water"
      name="Water"
      label="Sheets of the water"
      parts={WATER_PARTS}
      open={open}
    >
      {(sheet) => <Sheet part={open} {...sheet} />}
    </SheetedPlace>
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
