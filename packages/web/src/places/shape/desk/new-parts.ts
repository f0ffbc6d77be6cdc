import type { EditValue, EnclosureEdit, KeyPath } from '@shoreglass/contract';
import type { Handle, ShapeContent, Write } from '../handles/handle.ts';

/** A part that can be added: where it stands in the file, and what it is at first. */
export interface NewPart {
  readonly name: string;
  /** Below the file; a list takes one more. */
  readonly at: readonly [string, string];
  readonly isList?: true;
  /** First word of the name of its handle. */
  readonly handle: string;
  fresh(content: ShapeContent, write: Write): EditValue;
}

/** Ordinary devices of a box as wide as a table, to be changed from there. @source common practice, no source */
export const NEW_PARTS: readonly NewPart[] = [
  {
    name: 'Lamp',
    at: ['devices', 'lamps'],
    isList: true,
    handle: 'lamp',
    fresh: ({ glass }, write) => ({
      power: '30 W',
      photons: '60 µmol/s',
      on: '09:00',
      lit: '11 h',
      panel: lampPanel(glass, write),
    }),
  },
  {
    name: 'Heater',
    at: ['devices', 'heater'],
    handle: 'heater',
    fresh: () => ({ power: '25 W', setpoint: '22 °C' }),
  },
  {
    name: 'Pump',
    at: ['devices', 'pump'],
    handle: 'pump',
    fresh: ({ glass, water }, write) => ({
      power: '4 W',
      curve: { head: '80 cm', flow: '300 L/h' },
      outlet: write(Math.min(glass.height, water.level + 0.05)),
      hose: { length: '80 cm', bore: '12 mm' },
    }),
  },
  {
    name: 'Mister',
    at: ['devices', 'mister'],
    handle: 'mister',
    fresh: () => ({ amount: '100 mL', at: ['08:30', '20:30'] }),
  },
  {
    name: 'Fogger',
    at: ['devices', 'fogger'],
    handle: 'fogger',
    fresh: () => ({ power: '20 W', rate: '0.2 L/h', from: 'reservoir', at: ['08:30'], runs: '0.25 h' }),
  },
  {
    name: 'Fan',
    at: ['devices', 'fans'],
    isList: true,
    handle: 'fan',
    fresh: () => ({ power: '1 W', flow: '3 m³/h', moves: 'inside' }),
  },
  {
    name: 'Heat mat',
    at: ['devices', 'mats'],
    isList: true,
    handle: 'mat',
    fresh: () => ({ power: '10 W', under: 'land', setpoint: '24 °C' }),
  },
  {
    name: 'Vent in the front pane',
    at: ['glass', 'vents'],
    isList: true,
    handle: 'vent',
    fresh: ({ glass, water }, write) => ({
      pane: 'front',
      height: write((water.level + glass.height) / 2),
      length: write(glass.length / 2),
      opening: '1 cm',
      mesh: { open: '36 %', hole: '0.5 mm' },
    }),
  },
  {
    name: 'Overflow',
    at: ['glass', 'overflow'],
    handle: 'overflow',
    fresh: ({ glass, water }, write) => ({
      height: write(Math.min(glass.height, water.level + 0.02)),
      bore: '25 mm',
    }),
  },
];

/** A lamp over the middle, a little above the rim. */
export function lampPanel({ length, width, height }: ShapeContent['glass'], write: Write): EditValue {
  return {
    x: write(length / 2),
    y: write(width / 2),
    z: write(height + 0.05),
    length: write(length * 0.8),
    breadth: write(0.06),
  };
}

interface Added {
  readonly edits: (content: ShapeContent, write: Write) => readonly EnclosureEdit[];
  /** Name the handle of the new part will have. */
  readonly handle: string;
}

/** How a part is added to a file, or nothing where there can be only one and it is there. */
export function added({ at, isList, handle, fresh }: NewPart, content: ShapeContent): Added | undefined {
  const holder = holderOf(content, at[0]);
  const there = holder?.[at[1]];
  if (!isList && there !== undefined) return undefined;
  const count = Array.isArray(there) ? there.length : 0;
  return {
    handle: isList ? `${handle}:${count}` : handle,
    edits: (now, write) => {
      const part = fresh(now, write);
      if (count > 0) return [{ path: [...at, count], value: part }];
      const value = isList ? [part] : part;
      // What stands in no map yet gets its map with it.
      return holder ? [{ path: at, value }] : [{ path: [at[0]], value: { [at[1]]: value } }];
    },
  };
}

function holderOf(content: ShapeContent, key: string): Readonly<Record<string, unknown>> | undefined {
  return (content as unknown as Readonly<Record<string, Readonly<Record<string, unknown>> | undefined>>)[key];
}

/** What has to go from the file for a part to be gone: with the last of a list goes the list. */
export function pathOfPart({ id }: Pick<Handle, 'id'>, content: ShapeContent): KeyPath | undefined {
  const [kind = '', place = ''] = id.split(':');
  const part = NEW_PARTS.find(({ handle }) => handle === kind);
  if (!part) return undefined;
  const holder = holderOf(content, part.at[0]) ?? {};
  const there = holder[part.at[1]];
  if (Array.isArray(there) && there.length > 1) return [...part.at, Number(place)];
  const isLast = Object.values(holder).filter((value) => value !== undefined).length === 1;
  return isLast ? [part.at[0]] : part.at;
}
