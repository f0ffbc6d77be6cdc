import type { BufferOption } from '@shoreglass/engine';
import type { Edit, Shelf } from '../../../worker/messages.ts';

/** The edits that put a buffer into the file: the first portion as a piece, what follows as work on its days. */
export function bufferEdits(
  { material, name, grain, portions }: BufferOption,
  shelf: Pick<Shelf, 'pieces' | 'actions'>,
): readonly Edit[] {
  const grainText = `${Number((grain * 1000).toPrecision(3))} mm`;
  const [first, ...later] = portions;
  const pieces: Edit[] = first
    ? [
        appended('hardscape', shelf.pieces.length, {
          id: freshId(shelf.pieces),
          name: `Buffer, ${name}`,
          material,
          mass: massText(first.mass),
          grain: grainText,
        }),
      ]
    : [];
  const actions = later.map(({ day, mass }, index) =>
    appended('actions', shelf.actions + index, {
      do: 'add-carbonate',
      material,
      mass: massText(mass),
      grain: grainText,
      after: `${day} d`,
    }),
  );
  return [...pieces, ...actions];
}

/** Appends to a list, or begins it. */
function appended(list: string, length: number, value: Readonly<Record<string, string>>): Edit {
  return length === 0 ? { path: [list], value: [value] } : { path: [list, length], value };
}

function massText(mass: number): string {
  return `${Number((mass * 1000).toPrecision(4))} g`;
}

function freshId(taken: readonly string[]): string {
  if (!taken.includes('buffer')) return 'buffer';
  for (let number = 2; ; number++) if (!taken.includes(`buffer-${number}`)) return `buffer-${number}`;
}
