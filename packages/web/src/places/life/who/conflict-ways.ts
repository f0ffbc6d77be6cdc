import { type Conflict, RUN_IN } from '@shoreglass/engine';
import type { Draft } from './draft.ts';

/** A way out of a conflict: a change of the sheet, or another place of the app where it is mended. */
export type Way =
  | { readonly words: string; readonly change: (draft: Draft) => Draft }
  | { readonly words: string; readonly href: string };

interface Known {
  /** Id of the opened file. */
  readonly file: string;
  /** How many of a species make a start. */
  readonly leastFounders: Readonly<Record<string, number>>;
  nameOf(id: string): string;
}

/** What resolves a conflict in one step; nothing where the keeper has to weigh, ask or do it by hand. */
export function conflictWays({ kind, who }: Conflict, known: Known): Way[] {
  const [first] = who;
  const takeOut = (id: string): Way => ({
    words: `Take out ${known.nameOf(id)}`,
    change: (draft) => without(draft, id),
  });
  const shape: Way = { words: 'Change the shape', href: `/shape/${known.file}` };
  const water: Way = { words: 'Change the water', href: `/water/${known.file}` };
  switch (kind) {
    case 'eaten':
    case 'range':
      return who.map(takeOut);
    case 'toxin':
      return who.length > 1 && first !== undefined ? [takeOut(first)] : [];
    case 'few': {
      const least = first === undefined ? undefined : known.leastFounders[first];
      if (first === undefined || least === undefined) return [];
      return [
        {
          words: `Start with ${least} ${known.nameOf(first)}`,
          change: (draft) => startedWith(draft, first, least),
        },
      ];
    }
    case 'too soon':
      if (first === undefined) return [];
      return [
        {
          words: `Let ${known.nameOf(first)} come on day ${RUN_IN}`,
          change: (draft) => comingOn(draft, first, RUN_IN),
        },
      ];
    case 'space':
      return first === undefined ? [shape] : [takeOut(first), shape];
    case 'way out':
    case 'drowning':
      return [shape];
    case 'salt':
    case 'copper':
      return [water];
    default:
      return [];
  }
}

/** A way that stands for several remarks, and how many of them it settles. */
export interface CommonWay {
  readonly way: Way;
  readonly settles: number;
}

/** What resolves most of several remarks first; where each is mended by a change of its own, all of these in one. */
export function commonWays(
  conflicts: readonly Conflict[],
  waysOf: (conflict: Conflict) => readonly Way[],
): CommonWay[] {
  const byWords = new Map<string, CommonWay>();
  for (const way of conflicts.flatMap(waysOf))
    byWords.set(way.words, { way, settles: (byWords.get(way.words)?.settles ?? 0) + 1 });
  const ways = [...byWords.values()].sort((a, b) => b.settles - a.settles);
  const together = TOGETHER[conflicts[0]?.kind ?? ''];
  if (together === undefined || ways.length < 2) return ways;
  const changes = ways.flatMap(({ way }) => ('change' in way ? [way.change] : []));
  const change = (draft: Draft): Draft => changes.reduce((so, each) => each(so), draft);
  return [{ way: { words: together, change }, settles: conflicts.length }];
}

/** Words for a change that mends all remarks of a kind at once. */
const TOGETHER: Readonly<Record<string, string>> = {
  few: 'Start with enough of each',
  'too soon': `Let all of them come on day ${RUN_IN}`,
};

function without({ animals, plants }: Draft, id: string): Draft {
  return {
    animals: animals.filter(({ species }) => species !== id),
    plants: plants.filter(({ plant }) => plant !== id),
  };
}

/** Adults are added to the first entry of the species until all its entries together hold so many. */
function startedWith(draft: Draft, id: string, least: number): Draft {
  const own = draft.animals.filter(({ species }) => species === id);
  const there = own.reduce((sum, { adults, juveniles }) => sum + Number(adults) + Number(juveniles), 0);
  const more = Math.max(0, least - there);
  const animals = draft.animals.map((row) =>
    row === own[0] ? { ...row, adults: String(Number(row.adults) + more) } : row,
  );
  return { ...draft, animals };
}

function comingOn(draft: Draft, id: string, day: number): Draft {
  const animals = draft.animals.map((row) =>
    row.species === id && Number(row.after) < day ? { ...row, after: String(day) } : row,
  );
  return { ...draft, animals };
}
