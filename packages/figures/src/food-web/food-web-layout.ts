import type { FoodFlow } from '@shoreglass/engine';

export interface FoodWebInput {
  readonly flows: readonly FoodFlow[];
  /** Everybody who may eat or be eaten, in the order of the file. */
  readonly eaters: readonly { readonly id: string; readonly name: string }[];
  /** Week of the run; the mean of the run when left out. */
  readonly week?: number;
  readonly width: number;
}

/** A food at the left or an eater at the right: its bar [px] and what passes through it [mg C/week]. */
export interface WebNode {
  readonly id: string;
  readonly name: string;
  readonly amount: number;
  /** Middle of its place, and upper edge and height of its bar [px]. */
  readonly middle: number;
  readonly top: number;
  readonly height: number;
}

/** What one eater takes of one food: where the band leaves and where it arrives [px]. */
export interface WebBand {
  readonly food: string;
  readonly eater: string;
  readonly amount: number;
  readonly thickness: number;
  readonly from: number;
  readonly to: number;
}

/** What one animal takes of another, or of its own kind. */
export interface WebPrey {
  readonly prey: string;
  readonly eater: string;
  readonly amount: number;
  readonly thickness: number;
}

export interface FoodWebLayout {
  readonly left: number;
  readonly right: number;
  /** Where names of eaters begin; beyond the arcs of those who eat each other. */
  readonly names: number;
  readonly height: number;
  /** There is little room: names are smaller, and arcs carry no amounts. */
  readonly narrow: boolean;
  /** Pixels for a milligram of carbon a week; the same for every week of a run. */
  readonly perMilligram: number;
  readonly foods: readonly WebNode[];
  readonly eaters: readonly WebNode[];
  readonly bands: readonly WebBand[];
  readonly prey: readonly WebPrey[];
}

/** Below this width names stand smaller and closer [px]. */
const NARROW = 640;
/** Room for a name, for the arcs beside the eaters, and the least height of a name with its amount [px]. */
const WIDE_ROOMS = { name: 168, arc: 76, slot: 42 };
const NARROW_ROOMS = { name: 104, arc: 42, slot: 56 };
/** What never reaches this in a week is not drawn; lists name it [mg C/week]. */
export const TRACE_EATEN = 0.01;
const BAR_ROOM = 300;
const GAP = 12;
const TOP = 14;
const FOOT = 48;
const LEAST_BAND = 1.4;
export const BAR = 9;

const isPrey = ({ food }: FoodFlow): boolean => food.startsWith('population:');
const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/** Eaten in the week, or a week on average [mg C/week]. */
export function eatenIn({ weekly, mean }: FoodFlow, week: number | undefined): number {
  return week === undefined ? mean : (weekly[week] ?? 0);
}

/** Whether a flow is never more than a trace. */
export function isTrace({ mean, weekly }: Pick<FoodFlow, 'mean' | 'weekly'>): boolean {
  return mean < TRACE_EATEN && weekly.every((amount) => amount < TRACE_EATEN);
}

/** The most that passes through a set of flows in any week. */
function peakOf(flows: readonly FoodFlow[]): number {
  const weeks = Math.max(0, ...flows.map(({ weekly }) => weekly.length));
  const totals = Array.from({ length: weeks }, (_, week) => sum(flows.map((flow) => eatenIn(flow, week))));
  return Math.max(0, ...totals, sum(flows.map(({ mean }) => mean)));
}

/** Ids with the mean place of those they are tied to, so that bands cross little. */
function byNeighbours(
  ids: readonly string[],
  others: readonly string[],
  ties: readonly { readonly own: string; readonly other: string; readonly weight: number }[],
): string[] {
  const place = (id: string): number => {
    const mine = ties.filter(({ own }) => own === id);
    const weight = sum(mine.map((tie) => tie.weight));
    if (weight === 0) return others.length;
    return sum(mine.map((tie) => tie.weight * others.indexOf(tie.other))) / weight;
  };
  const places = new Map(ids.map((id) => [id, place(id)]));
  return [...ids].sort((a, b) => (places.get(a) ?? 0) - (places.get(b) ?? 0));
}

function orders(flows: readonly FoodFlow[], eaterIds: readonly string[]) {
  let foods = [...new Set(flows.map(({ food }) => food))];
  let eaters = [...eaterIds];
  const ties = flows.map(({ food, eater, mean }) => ({ food, eater, weight: mean }));
  for (let round = 0; round < 6; round++) {
    eaters = byNeighbours(
      eaters,
      foods,
      ties.map(({ food, eater, weight }) => ({ own: eater, other: food, weight })),
    );
    foods = byNeighbours(
      foods,
      eaters,
      ties.map(({ food, eater, weight }) => ({ own: food, other: eater, weight })),
    );
  }
  return { foods, eaters };
}

interface Column {
  /** Least height of a node's place [px]. */
  readonly least: number;
  readonly ids: readonly string[];
  readonly nameOf: (id: string) => string;
  readonly flowsOf: (id: string) => readonly FoodFlow[];
}

/** Where every node of a column stands, `shift` lower than the first could be. */
function nodesOf(column: Column, week: number | undefined, perMilligram: number, shift: number): WebNode[] {
  let y = TOP + shift;
  return column.ids.map((id) => {
    const flows = column.flowsOf(id);
    const slot = slotOf(flows, perMilligram, column.least);
    const amount = sum(flows.map((flow) => eatenIn(flow, week)));
    const height = sum(flows.map((flow) => thicknessOf(eatenIn(flow, week), perMilligram)));
    const middle = y + slot / 2;
    y += slot + GAP;
    return { id, name: column.nameOf(id), amount, middle, top: middle - height / 2, height };
  });
}

function slotOf(flows: readonly FoodFlow[], perMilligram: number, least: number): number {
  return Math.max(least, peakOf(flows) * perMilligram + 2);
}

function thicknessOf(amount: number, perMilligram: number): number {
  return amount > 0 ? Math.max(LEAST_BAND, amount * perMilligram) : 0;
}

function heightOf(column: Column, perMilligram: number): number {
  return sum(column.ids.map((id) => slotOf(column.flowsOf(id), perMilligram, column.least) + GAP)) - GAP;
}

/** Foods at the left, eaters at the right, bands between; places and scale stay the same from week to week. */
export function foodWebLayout({ flows: all, eaters, week, width }: FoodWebInput): FoodWebLayout {
  const narrow = width < NARROW;
  const rooms = narrow ? NARROW_ROOMS : WIDE_ROOMS;
  const flows = all.filter((flow) => !isTrace(flow));
  const eaten = flows.filter((flow) => !isPrey(flow));
  const order = orders(
    eaten,
    eaters.map(({ id }) => id),
  );
  const perMilligram = BAR_ROOM / Math.max(1e-9, peakOf(flows));
  const foodColumn: Column = {
    least: rooms.slot,
    ids: order.foods,
    nameOf: (id) => eaten.find(({ food }) => food === id)?.foodName ?? id,
    flowsOf: (id) => eaten.filter(({ food }) => food === id),
  };
  const eaterColumn: Column = {
    least: rooms.slot,
    ids: order.eaters,
    nameOf: (id) => eaters.find((each) => each.id === id)?.name ?? id,
    flowsOf: (id) => flows.filter(({ eater }) => eater === id),
  };
  const heights = [heightOf(foodColumn, perMilligram), heightOf(eaterColumn, perMilligram)] as const;
  const tallest = Math.max(...heights);
  const foodNodes = nodesOf(foodColumn, week, perMilligram, (tallest - heights[0]) / 2);
  const eaterNodes = nodesOf(eaterColumn, week, perMilligram, (tallest - heights[1]) / 2);
  const hunted = flows.some(isPrey);
  return {
    left: rooms.name,
    right: width - rooms.name - (hunted ? rooms.arc : 0),
    names: width - rooms.name + BAR + (narrow ? 4 : 8),
    narrow,
    height: TOP + tallest + FOOT,
    perMilligram,
    foods: foodNodes,
    eaters: eaterNodes,
    bands: bandsOf({ eaten, foodNodes, eaterNodes, perMilligram, week }),
    prey: flows.filter(isPrey).flatMap((flow) => {
      const amount = eatenIn(flow, week);
      const prey = flow.food.slice('population:'.length);
      return amount > 0
        ? [{ prey, eater: flow.eater, amount, thickness: thicknessOf(amount, perMilligram) }]
        : [];
    }),
  };
}

interface Banding {
  readonly eaten: readonly FoodFlow[];
  readonly foodNodes: readonly WebNode[];
  readonly eaterNodes: readonly WebNode[];
  readonly perMilligram: number;
  readonly week: number | undefined;
}

function bandsOf({ eaten, foodNodes, eaterNodes, perMilligram, week }: Banding): WebBand[] {
  const leaving = new Map(foodNodes.map(({ id, top }) => [id, top]));
  const arriving = new Map(eaterNodes.map(({ id, top }) => [id, top]));
  const arrivals = new Map<FoodFlow, number>();
  for (const { id } of foodNodes)
    for (const flow of eaten.filter(({ food }) => food === id)) {
      const to = arriving.get(flow.eater) ?? 0;
      arrivals.set(flow, to);
      arriving.set(flow.eater, to + thicknessOf(eatenIn(flow, week), perMilligram));
    }
  return eaterNodes.flatMap(({ id }) =>
    foodNodes.flatMap((node) => {
      const flow = eaten.find(({ food, eater }) => food === node.id && eater === id);
      const amount = flow ? eatenIn(flow, week) : 0;
      if (!flow || amount <= 0) return [];
      const thickness = thicknessOf(amount, perMilligram);
      const from = leaving.get(node.id) ?? 0;
      leaving.set(node.id, from + thickness);
      return [{ food: node.id, eater: id, amount, thickness, from, to: arrivals.get(flow) ?? 0 }];
    }),
  );
}
