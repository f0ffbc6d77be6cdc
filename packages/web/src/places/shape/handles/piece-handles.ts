import type { EnclosureEdit, KeyPath } from '@shoreglass/contract';
import {
  type Axis,
  type Handle,
  lengthMeasure,
  type MaterialName,
  type Measure,
  materialChoice,
  type ShapeContent,
  type Write,
} from './handle.ts';

type PieceContent = NonNullable<ShapeContent['hardscape']>[number];
type Course = NonNullable<PieceContent['course']>;

/** Wood and stones: the whole piece, and each point of its course. */
export function pieceHandles(content: ShapeContent, materials: readonly MaterialName[]): Handle[] {
  return (content.hardscape ?? []).flatMap((piece, index) => {
    const course = piece.course ?? [];
    return [
      withMaterial(wholePiece(content, piece, index), piece, index, materials),
      ...(course.length > 1 ? course.map((_, point) => pointHandle(content, { piece, index, point })) : []),
    ];
  });
}

/** A piece keeps being of wood, of stone …; which wood or stone can be chosen. */
function withMaterial(
  handle: Handle,
  { material }: PieceContent,
  index: number,
  materials: readonly MaterialName[],
): Handle {
  const use = materials.find(({ id }) => id === material)?.use ?? 'stone';
  return {
    ...handle,
    choices: [materialChoice(material, ['hardscape', index, 'material'], materials, use)],
  };
}

const nameOf = (piece: PieceContent) => piece.name ?? piece.id;

function massOf({ mass }: PieceContent, index: number): Measure {
  const path: KeyPath = ['hardscape', index, 'mass'];
  return {
    id: 'mass',
    name: 'Dry mass',
    dimension: 'mass',
    value: mass,
    low: 1e-6,
    high: 500,
    path,
    edits: (value, write) => [{ path, value: write(value, 'mass') }],
  };
}

function wholePiece(content: ShapeContent, piece: PieceContent, index: number): Handle {
  const course = piece.course ?? [];
  const base = { id: `piece:${piece.id}`, group: 'pieces', name: nameOf(piece) } as const;
  if (course.length === 0) return { ...base, measures: [massOf(piece, index)] };
  const { length, width, height } = content.glass;
  const across = course.map(({ y }) => y ?? width / 2);
  const x = shift({
    index,
    axis: 'x',
    name: 'Middle, from the left',
    at: course.map((p) => p.x),
    room: length,
  });
  const y = shift({ index, axis: 'y', name: 'Middle, from the front', at: across, room: width });
  const z = shift({
    index,
    axis: 'z',
    name: 'Middle, above the base',
    at: course.map((p) => p.z),
    room: height,
  });
  const single =
    course.length === 1
      ? [thickness(['hardscape', index, 'course', 0, 'thick'], (course as Course)[0]?.thick ?? 0)]
      : [];
  return {
    ...base,
    measures: [x, y, z, ...single, massOf(piece, index)],
    inSection: { x: x.value, z: z.value },
    inPlan: { x: x.value, y: y.value },
  };
}

interface Shift {
  readonly index: number;
  readonly axis: Axis;
  readonly name: string;
  /** Where the points of the course stand along the axis [m]. */
  readonly at: readonly number[];
  readonly room: number;
}

function shift({ index, axis, name, at, room }: Shift): Measure {
  const middle = at.reduce((sum, one) => sum + one, 0) / at.length;
  return {
    id: axis,
    name,
    dimension: 'length',
    value: middle,
    low: middle - Math.min(...at),
    high: Math.max(middle, middle + room - Math.max(...at)),
    path: ['hardscape', index, 'course'],
    drag: { axis, position: middle, valueAt: (position) => position },
    edits: (value: number, write: Write): EnclosureEdit[] =>
      at.map((one, point) => ({
        path: ['hardscape', index, 'course', point, axis],
        value: write(one + value - middle),
      })),
  };
}

function thickness(path: KeyPath, value: number): Measure {
  return lengthMeasure({ id: 'thick', name: 'Thickness', value, low: 0.001, high: 1, path });
}

interface PointOf {
  readonly piece: PieceContent;
  readonly index: number;
  readonly point: number;
}

function pointHandle({ glass }: ShapeContent, { piece, index, point }: PointOf): Handle {
  const { x, y = glass.width / 2, z, thick } = (piece.course as Course)[point] as Course[number];
  const path = (key: string): KeyPath => ['hardscape', index, 'course', point, key];
  const position = (id: Axis, name: string, value: number, high: number) =>
    lengthMeasure({ id, name, value, low: 0, high, path: path(id), axis: id });
  return {
    id: `point:${piece.id}:${point}`,
    group: 'pieces',
    name: `${nameOf(piece)}, point ${point + 1}`,
    measures: [
      position('x', 'From the left', x, glass.length),
      position('y', 'From the front', y, glass.width),
      position('z', 'Above the base', z, glass.height),
      thickness(path('thick'), thick),
    ],
    inSection: { x, z },
    inPlan: { x, y },
  };
}
