import type { EnclosureEdit } from '@shoreglass/contract';
import {
  type Axis,
  type Handle,
  lengthMeasure,
  type MaterialName,
  type Measure,
  type ShapeContent,
  type Write,
} from './handle.ts';
import { roofOf } from './zone-handles.ts';

type ZoneContent = ShapeContent['zones'][number];
type Corners = NonNullable<ZoneContent['outline']>;

/** Corners of the zones drawn in plan, one handle each, and one that moves the whole zone. */
export function outlineHandles(content: ShapeContent, materials: readonly MaterialName[]): Handle[] {
  return content.zones.flatMap((zone, index) => {
    if (!zone.outline || zone.outline.length === 0) return [];
    return [
      wholeZone(content, { zone, index }, materials),
      ...zone.outline.map((_, corner) => cornerHandle(content, { zone, index, corner })),
    ];
  });
}

const nameOf = (zone: ZoneContent) => zone.name ?? zone.id;

interface CornerOf {
  readonly zone: ZoneContent;
  readonly index: number;
  readonly corner: number;
}

function cornerHandle({ glass }: ShapeContent, { zone, index, corner }: CornerOf): Handle {
  const { x, y, ground } = (zone.outline as Corners)[corner] as Corners[number];
  const path = ['zones', index, 'outline', corner] as const;
  const along = lengthMeasure({
    id: 'x',
    name: 'From the left',
    value: x,
    low: 0,
    high: glass.length,
    path: [...path, 'x'],
    axis: 'x',
  });
  const across = lengthMeasure({
    id: 'y',
    name: 'From the front',
    value: y,
    low: 0,
    high: glass.width,
    path: [...path, 'y'],
    axis: 'y',
  });
  const height =
    ground === undefined
      ? []
      : [
          lengthMeasure({
            id: 'z',
            name: 'Ground',
            value: ground,
            low: 0,
            high: glass.height,
            path: [...path, 'ground'],
          }),
        ];
  return {
    id: `corner:${zone.id}:${corner}`,
    group: 'ground',
    name: `${nameOf(zone)}, corner ${corner + 1}`,
    measures: [along, across, ...height],
    inPlan: { x, y },
  };
}

/** Moves all corners alike; the ground of a zone whose corners carry none is set here too. */
function wholeZone(
  content: ShapeContent,
  { zone, index }: Omit<CornerOf, 'corner'>,
  materials: readonly MaterialName[],
): Handle {
  const corners = zone.outline as Corners;
  const middle = (axis: 'x' | 'y') => corners.reduce((sum, corner) => sum + corner[axis], 0) / corners.length;
  const { glass } = content;
  const roof = roofOf(zone, index, { materials, height: glass.height });
  return {
    id: `zone:${zone.id}`,
    group: 'ground',
    name: nameOf(zone),
    ...roof,
    measures: [
      shift({ corners, index, axis: 'x', name: 'Middle, from the left', room: glass.length }),
      shift({ corners, index, axis: 'y', name: 'Middle, from the front', room: glass.width }),
      ...slopes(content, zone, index),
      ...roof.measures,
    ],
    inPlan: { x: middle('x'), y: middle('y') },
  };
}

interface Shift {
  readonly corners: Corners;
  readonly index: number;
  readonly axis: Extract<Axis, 'x' | 'y'>;
  readonly name: string;
  /** Inside length of the box that way [m]. */
  readonly room: number;
}

function shift({ corners, index, axis, name, room }: Shift): Measure {
  const positions = corners.map((corner) => corner[axis]);
  const middle = positions.reduce((sum, one) => sum + one, 0) / positions.length;
  return {
    id: axis,
    name,
    dimension: 'length',
    value: middle,
    low: middle - Math.min(...positions),
    high: middle + room - Math.max(...positions),
    path: ['zones', index, 'outline'],
    drag: { axis, position: middle, valueAt: (position) => position },
    edits: (value: number, write: Write): EnclosureEdit[] =>
      positions.map((one, corner) => ({
        path: ['zones', index, 'outline', corner, axis],
        value: write(one + value - middle),
      })),
  };
}

const SIDE_NAMES = {
  left: 'Ground, left',
  right: 'Ground, right',
  front: 'Ground, front',
  back: 'Ground, back',
};

function slopes({ glass }: ShapeContent, zone: ZoneContent, index: number): Measure[] {
  return (['left', 'right', 'front', 'back'] as const).flatMap((side) => {
    const value = zone.ground?.[side];
    if (value === undefined) return [];
    return [
      lengthMeasure({
        id: side,
        name: SIDE_NAMES[side],
        value,
        low: 0,
        high: glass.height,
        path: ['zones', index, 'ground', side],
      }),
    ];
  });
}
