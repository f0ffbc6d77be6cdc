import type { Plan, Zone } from '../plan/plan.ts';
import { FIELD_ROWS, type HeightField, heightField } from './height-field.ts';
import { HeightSpread, HeightTable } from './height-table.ts';
import { type Section, sectionOf } from './section.ts';
import { paneDensity, rawOpenArea, sectionHeights, stepDensity, wetGround } from './section-columns.ts';
import { strataOf } from './zone-section.ts';

/** What the ground of a plan is by height z, hardscape left out. */
export interface Profile {
  readonly length: number;
  readonly width: number;
  readonly height: number;
  /** Height of the lowest ground [m]. */
  readonly floor: number;
  /** Heights between which every function here is straight. */
  readonly heights: readonly number[];
  /** Free of ground in plan [m2]. */
  open(z: number): number;
  /** Ground in plan times porosity [m2], and times film surface [m]. */
  pores(z: number): number;
  films(z: number): number;
  /** Wetted width of glass, and of upright steps of the ground [m]. */
  panes(z: number): number;
  steps(z: number): number;
  /** Sloping ground below z [m2]. */
  ground(z: number): number;
}

/** The profile of each field. */
const kept = new WeakMap<HeightField, Profile>();

/** Nodes of the tables by height. */
const NODES = 256;

/** True when the ground of a plan is a section carried across the width, which has closed forms. */
export function isStraightAcross({ zones }: Pick<Plan, 'zones'>): boolean {
  return zones.every(({ outline, roof }) => outline === undefined && roof === undefined);
}

function profileOfSection(section: Section): Profile {
  const { width, zones } = section;
  const inGround = (property: 'porosityAt' | 'filmSurfaceAt') => (z: number) => {
    let total = 0;
    for (const zone of zones) total += zone.length * (1 - zone.openShare(z)) * zone[property](z);
    return width * total;
  };
  return {
    length: section.length,
    width,
    height: section.height,
    floor: Math.min(...zones.map((zone) => zone.low)),
    heights: sectionHeights(section),
    open: rawOpenArea(section),
    pores: inGround('porosityAt'),
    films: inGround('filmSurfaceAt'),
    panes: paneDensity(section),
    steps: stepDensity(section),
    ground: wetGround(section),
  };
}

interface ZoneTable {
  readonly zone: Zone;
  readonly open: HeightTable;
  area: number;
}

interface Roof {
  readonly bottom: number;
  readonly top: number;
  readonly table: ZoneTable;
}

interface FieldTables {
  readonly byZone: readonly ZoneTable[];
  readonly open: HeightTable;
  readonly ground: HeightTable;
  readonly panes: HeightTable;
  readonly steps: HeightTable;
  readonly floor: number;
}

function tablesOf(field: HeightField, height: number): FieldTables {
  const spread = new HeightSpread(height, NODES);
  const table = () => new HeightTable(spread);
  const [open, ground, panes, steps] = [table(), table(), table(), table()] as const;
  const byZone = new Map<number, ZoneTable>();
  let floor = height;
  for (const { owner, area, low, high, slopedArea } of field.patches) {
    floor = Math.min(floor, Math.max(0, low));
    spread.set(low, high);
    open.add(area);
    ground.add(slopedArea);
    if (!owner) continue;
    let own = byZone.get(owner.index);
    if (!own) {
      own = { zone: owner.zone, open: table(), area: 0 };
      byZone.set(owner.index, own);
    }
    own.open.add(area);
    own.area += area;
  }
  for (const { length, ground: z } of field.footings) {
    spread.set(z, z);
    panes.add(length);
  }
  for (const { length, low, high } of field.faces) {
    spread.set(low, low);
    steps.add(length);
    spread.set(high, high);
    steps.add(-length);
  }
  return { byZone: [...byZone.values()], open, ground, panes, steps, floor };
}

function profileOfField(field: HeightField, { length, width, height }: Plan['box']): Profile {
  const { byZone: tables, open, ground, panes, steps, floor } = tablesOf(field, height);
  const roofs = tables.flatMap((own): Roof[] => (own.zone.roof ? [{ ...own.zone.roof, table: own }] : []));
  const inGround = (property: 'porosity' | 'filmSurface') => {
    const strata = tables.map(({ zone }) => strataOf(zone));
    return (z: number) => {
      let total = 0;
      for (const [i, own] of tables.entries()) {
        const stratum = strata[i]!.find((one) => z <= one.top);
        if (stratum) total += (own.area - own.open.at(z)) * stratum[property];
      }
      return total;
    };
  };
  const under = (z: number): number => {
    let total = 0;
    for (const roof of roofs) if (z > roof.bottom && z < roof.top) total += roof.table.open.at(roof.bottom);
    return total;
  };
  const wetRoof = (z: number): number => {
    let total = 0;
    for (const roof of roofs)
      total += roof.table.open.at(roof.bottom) * ((z > roof.bottom ? 1 : 0) + (z > roof.top ? 1 : 0));
    return total;
  };
  return {
    length,
    width,
    height,
    floor,
    heights: [
      ...Array.from({ length: NODES }, (_, k) => (k * height) / NODES),
      ...tables.flatMap(({ zone }) =>
        strataOf(zone)
          .slice(0, -1)
          .map((stratum) => stratum.top),
      ),
      ...roofs.flatMap(({ bottom, top }) => [bottom, top]),
    ],
    open: (z) => open.at(z) - under(z),
    pores: inGround('porosity'),
    films: inGround('filmSurface'),
    panes: (z) => panes.at(z),
    steps: (z) => Math.max(0, steps.at(z)),
    ground: (z) => ground.at(z) + wetRoof(z),
  };
}

/**
 * Returns the profile of a plan: in closed form where its ground is straight across the width, else from the height
 * field.
 * @param plan box and zones
 * @param rows lines of the height field across the width
 * @throws RangeError when the box or a zone cannot be drawn.
 * @source derived
 */
export function profileOf({ box, zones }: Pick<Plan, 'box' | 'zones'>, rows = FIELD_ROWS): Profile {
  if (isStraightAcross({ zones })) return profileOfSection(sectionOf({ box, zones }));
  const field = heightField({ box, zones }, rows);
  const last = kept.get(field);
  if (last) return last;
  const profile = profileOfField(field, box);
  kept.set(field, profile);
  return profile;
}
