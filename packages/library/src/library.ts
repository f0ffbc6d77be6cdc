import type { PriorTable } from '@shoreglass/engine';
import { nearest } from './nearest.ts';
import { priorTable } from './priors.ts';
import type { LibraryData } from './schema/entries.ts';
import type { Feed } from './schema/feed.ts';
import type { Material } from './schema/material.ts';
import type { Organism } from './schema/organism.ts';
import type { Plant } from './schema/plant.ts';
import type { Salt } from './schema/salt.ts';
import type { Water } from './schema/water.ts';

/** Asked for an entry the library does not hold. */
export class UnknownEntry extends Error {
  readonly kind: string;
  readonly id: string;
  readonly near: readonly string[];
  constructor(kind: string, id: string, near: readonly string[]) {
    const hint =
      near.length > 0
        ? ` Did you mean ${near.map((name) => `'${name}'`).join(' or ')}?`
        : ' Names are those of docs/library/README.md.';
    super(`The library holds no ${kind} '${id}'.${hint}`);
    this.name = 'UnknownEntry';
    this.kind = kind;
    this.id = id;
    this.near = near;
  }
}

/** Looks entries up by id. Every lookup throws UnknownEntry, which holds the nearest names. */
export interface Library {
  readonly organism: (id: string) => Organism;
  readonly plant: (id: string) => Plant;
  readonly feed: (id: string) => Feed;
  readonly material: (id: string) => Material;
  readonly water: (id: string) => Water;
  /** By its id, or by another name it is sold under. */
  readonly salt: (id: string) => Salt;
  /** Text of a bundled enclosure file and of a room series. */
  readonly enclosure: (id: string) => string;
  readonly series: (id: string) => string;
  readonly parameterPriors: () => PriorTable;
  readonly data: LibraryData;
}

/** Finds by id; an id given with other capitals or underscores for hyphens is not guessed but suggested. */
function lookup<T>(kind: string, entries: Readonly<Record<string, T>>): (id: string) => T {
  return (id) => {
    const found = Object.hasOwn(entries, id) ? entries[id] : undefined;
    if (found === undefined) throw new UnknownEntry(kind, id, nearest(id, Object.keys(entries)));
    return found;
  };
}

/** Salts under all their names. */
function withOtherNames(salts: Readonly<Record<string, Salt>>): Record<string, Salt> {
  const others = Object.values(salts).flatMap((salt) =>
    (salt.alsoCalled ?? []).map((name): [string, Salt] => [name, salt]),
  );
  return { ...Object.fromEntries(others), ...salts };
}

export function libraryOf(data: LibraryData): Library {
  const priors = priorTable(data.parameters);
  return {
    organism: lookup('animal', data.organisms),
    plant: lookup('plant', data.plants),
    feed: lookup('feed', data.feeds),
    material: lookup('material', data.materials),
    water: lookup('water', data.waters),
    salt: lookup('salt', withOtherNames(data.salts)),
    enclosure: lookup('enclosure', data.enclosures),
    series: lookup('room series', data.series),
    parameterPriors: () => priors,
    data,
  };
}
