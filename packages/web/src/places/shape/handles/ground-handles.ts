import { type Handle, lengthMeasure, type Measure, type ShapeContent } from './handle.ts';

/** Closer than this two heights, or two ends, are one [m]. */
const SAME = 5e-4;
/** A zone is at least this wide [m]. */
const NARROWEST = 0.005;

type ZoneContent = ShapeContent['zones'][number];

interface Strip {
  readonly zone: ZoneContent;
  readonly index: number;
  readonly from: number;
  readonly to: number;
  readonly left: number;
  readonly right: number;
}

/** Zones from pane to pane, left to right, whose ground runs from left to right. */
function stripsOf({ zones }: ShapeContent): Strip[] {
  return zones
    .flatMap((zone, index): Strip[] => {
      if (zone.outline || zone.from === undefined || zone.to === undefined) return [];
      const { left, right, front, back } = zone.ground ?? {};
      const level = left ?? right ?? ((front ?? back ?? 0) + (back ?? front ?? 0)) / 2;
      return [{ zone, index, from: zone.from, to: zone.to, left: left ?? level, right: right ?? level }];
    })
    .sort((a, b) => a.from - b.from);
}

const nameOf = ({ zone }: Strip) => zone.name ?? zone.id;
const alongOnly = ({ zone }: Strip) => zone.ground?.front === undefined && zone.ground?.back === undefined;

/** The corners of the ground as the section shows them; two zones that meet at one height have one between them. */
export function groundHandles(content: ShapeContent): Handle[] {
  const strips = stripsOf(content);
  return strips.flatMap((strip, position) => {
    const before = strips[position - 1];
    const after = strips[position + 1];
    const joined = before && Math.abs(before.to - strip.from) < SAME ? before : undefined;
    const closed = after && Math.abs(after.from - strip.to) < SAME;
    return [
      ...borderHandles(content, joined, strip),
      ...(closed ? [] : [endHandle(content, strip, 'right')]),
      ...frontAndBack(content, strip),
    ];
  });
}

function borderHandles(content: ShapeContent, before: Strip | undefined, strip: Strip): Handle[] {
  if (!before) return [endHandle(content, strip, 'left')];
  const x = borderMeasure(before, strip);
  const name = `Border of ${nameOf(before)} and ${nameOf(strip)}`;
  const ids = [`ground:${before.zone.id}:right`, `ground:${strip.zone.id}:left`] as const;
  const mark = { inPlan: { x: strip.from, y: content.glass.width * 0.1 } };
  const one = Math.abs(before.right - strip.left) < SAME && alongOnly(before) && alongOnly(strip);
  if (one) {
    const z = heightMeasure(content, strip, 'left', [['zones', before.index, 'ground', 'right']]);
    return [
      {
        id: ids[1],
        aliases: [ids[0]],
        group: 'ground',
        name,
        measures: [x, z],
        inSection: { x: strip.from, z: strip.left },
        ...mark,
      },
    ];
  }
  return [
    {
      id: ids[0],
      group: 'ground',
      name: `${nameOf(before)}, right end`,
      measures: [x, ...heightOf(content, before, 'right')],
      inSection: { x: before.to, z: before.right },
    },
    {
      id: ids[1],
      group: 'ground',
      name: `${nameOf(strip)}, left end`,
      measures: [x, ...heightOf(content, strip, 'left')],
      inSection: { x: strip.from, z: strip.left },
      ...mark,
    },
  ];
}

function borderMeasure(before: Strip, strip: Strip): Measure {
  return lengthMeasure({
    id: 'x',
    name: 'From the left',
    value: strip.from,
    low: before.from + NARROWEST,
    high: strip.to - NARROWEST,
    path: ['zones', strip.index, 'from'],
    also: [['zones', before.index, 'to']],
    axis: 'x',
  });
}

function heightOf(content: ShapeContent, strip: Strip, side: 'left' | 'right'): Measure[] {
  return alongOnly(strip) ? [heightMeasure(content, strip, side)] : [];
}

function heightMeasure(
  { glass }: ShapeContent,
  strip: Strip,
  side: 'left' | 'right',
  also: readonly (readonly (string | number)[])[] = [],
): Measure {
  return lengthMeasure({
    id: 'z',
    name: 'Ground',
    value: strip[side],
    low: 0,
    high: glass.height,
    path: ['zones', strip.index, 'ground', side],
    also,
    axis: 'z',
  });
}

/** An end at which no other zone begins: at a pane it can only be raised and lowered. */
function endHandle(content: ShapeContent, strip: Strip, side: 'left' | 'right'): Handle {
  const at = side === 'left' ? strip.from : strip.to;
  const atPane = at < SAME || Math.abs(at - content.glass.length) < SAME;
  const x = lengthMeasure({
    id: 'x',
    name: 'From the left',
    value: at,
    low: side === 'left' ? 0 : strip.from + NARROWEST,
    high: side === 'left' ? strip.to - NARROWEST : content.glass.length,
    path: ['zones', strip.index, side === 'left' ? 'from' : 'to'],
    axis: 'x',
  });
  return {
    id: `ground:${strip.zone.id}:${side}`,
    group: 'ground',
    name: `${nameOf(strip)}, ${side} end`,
    measures: [...(atPane ? [] : [x]), ...heightOf(content, strip, side)],
    inSection: { x: at, z: strip[side] },
    ...(atPane ? {} : { inPlan: { x: at, y: content.glass.width * 0.1 } }),
  };
}

/** Ground that rises from front to back is set by its two heights. */
function frontAndBack(content: ShapeContent, strip: Strip): Handle[] {
  if (alongOnly(strip)) return [];
  const { front, back } = strip.zone.ground ?? {};
  const x = (strip.from + strip.to) / 2;
  return (['front', 'back'] as const).map((side) => ({
    id: `ground:${strip.zone.id}:${side}`,
    group: 'ground',
    name: `${nameOf(strip)}, ${side}`,
    measures: [
      lengthMeasure({
        id: 'z',
        name: 'Ground',
        value: strip.zone.ground?.[side] ?? front ?? back ?? 0,
        low: 0,
        high: content.glass.height,
        path: ['zones', strip.index, 'ground', side],
      }),
    ],
    inPlan: { x, y: side === 'front' ? 0 : content.glass.width },
  }));
}
