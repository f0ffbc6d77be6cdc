import type { KeyPath } from '@shoreglass/contract';
import { COVER_KEYS, GLASS_KEYS, VENT_KEYS } from './box-keys.ts';
import { type Handle, lengthMeasure, type Measure, type ShapeContent } from './handle.ts';
import { keysOfPart } from './part-keys.ts';

/** The water level, marked on the pane beside which it stands. */
export function waterHandle(content: ShapeContent): Handle {
  const { glass, water } = content;
  const groundAt = (end: 'left' | 'right') => {
    const at = end === 'left' ? 0 : glass.length;
    const zone = content.zones.find(({ from = -1, to = -1 }) => at >= from - 1e-4 && at <= to + 1e-4);
    return zone?.ground?.[end] ?? zone?.ground?.left ?? zone?.ground?.front ?? 0;
  };
  const atLeft = groundAt('left') < water.level || groundAt('right') >= water.level;
  return {
    id: 'water',
    group: 'water',
    name: 'Water level',
    measures: [
      lengthMeasure({
        id: 'z',
        name: 'Above the base',
        value: water.level,
        low: 0.01,
        high: glass.height,
        path: ['water', 'level'],
        axis: 'z',
      }),
    ],
    inSection: { x: atLeft ? 0 : glass.length, z: water.level },
  };
}

/** The open part of the cover, an overflow, vents and the slit of the cover. */
export function openingHandles(content: ShapeContent): Handle[] {
  const { cover, glass } = content;
  const { length, height } = glass;
  const open: Measure = {
    id: 'open',
    name: 'Open part',
    dimension: 'share',
    value: cover.open,
    low: 0,
    high: 1,
    path: ['cover', 'open'],
    drag: {
      axis: 'x',
      position: length * (1 - cover.open),
      valueAt: (x) => Math.round(1000 * (1 - x / length)) / 1000,
    },
    edits: (value, write) => [{ path: ['cover', 'open'], value: write(value, 'share') }],
  };
  const { overflow, vents = [] } = glass;
  const ofCover = keysOfPart(['cover'], cover, COVER_KEYS);
  return [
    {
      id: 'cover',
      group: 'openings',
      name: 'Cover',
      ...ofCover,
      measures: [open, ...ofCover.measures],
      inSection: { x: length * (1 - cover.open), z: height },
    },
    ...(overflow
      ? [
          {
            id: 'overflow',
            group: 'openings',
            name: 'Overflow',
            measures: [
              rising('Lower edge', overflow.height, ['glass', 'overflow', 'height'], height),
              plain('Inner diameter', overflow.bore, ['glass', 'overflow', 'bore'], [0.005, 0.2]),
            ],
            inSection: { x: length, z: overflow.height },
          } satisfies Handle,
        ]
      : []),
    ...vents.map((vent, index): Handle => {
      const root: KeyPath = ['glass', 'vents', index];
      const keys = keysOfPart(root, vent, VENT_KEYS);
      const side = vent.pane === 'left' ? 0 : vent.pane === 'right' ? length : undefined;
      return {
        id: `vent:${index}`,
        group: 'openings',
        name: vent.name ?? `Vent in the ${vent.pane} pane`,
        ...keys,
        measures: [rising('Lower edge', vent.height, [...root, 'height'], height), ...keys.measures],
        ...(side === undefined ? {} : { inSection: { x: side, z: vent.height } }),
      };
    }),
  ];
}

/** Inner dimensions and thickness; what reaches to the right pane keeps reaching to it. */
export function glassHandle({ glass, zones }: ShapeContent): Handle {
  const ends = zones.flatMap(({ to }, index): KeyPath[] =>
    to !== undefined && Math.abs(to - glass.length) < 5e-4 ? [['zones', index, 'to']] : [],
  );
  const secondPane = keysOfPart(['glass'], glass, GLASS_KEYS);
  return {
    id: 'glass',
    group: 'glass',
    name: 'Glass',
    more: secondPane.more,
    less: secondPane.less,
    choices: [
      {
        id: 'top',
        name: 'Upper edge',
        value: glass.top ?? 'rimless',
        options: [
          { value: 'rimless', name: 'rimless, free' },
          { value: 'rimmed', name: 'rimmed or braced' },
        ],
        path: ['glass', 'top'],
      },
    ],
    measures: [
      lengthMeasure({
        id: 'length',
        name: 'Length inside',
        value: glass.length,
        low: 0.1,
        high: 5,
        path: ['glass', 'length'],
        also: ends,
      }),
      plain('Width inside', glass.width, ['glass', 'width'], [0.1, 3]),
      plain('Height inside', glass.height, ['glass', 'height'], [0.1, 3]),
      plain('Thickness of the panes', glass.thickness, ['glass', 'thickness'], [0.002, 0.04]),
      ...secondPane.measures,
    ],
  };
}

/** A length that is only typed. */
export function plain(
  name: string,
  value: number,
  path: KeyPath,
  [low, high]: readonly [number, number],
): Measure {
  return lengthMeasure({ id: String(path.at(-1)), name, value, low, high, path });
}

/** A height that is dragged up and down. */
export function rising(name: string, value: number, path: KeyPath, high: number): Measure {
  return lengthMeasure({ id: 'z', name, value, low: 0, high, path, axis: 'z' });
}
