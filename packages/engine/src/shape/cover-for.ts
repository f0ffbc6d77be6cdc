import { humidityRatio, moistAirDensity } from '../climate/moist-air.ts';
import type { RoomDrivers } from '../climate/room-drivers.ts';
import type { Geometry } from '../geometry/geometry.ts';
import { pow } from '../numerics/elementary.ts';
import type { Plan } from '../plan/plan.ts';
import {
  type ClimateCase,
  climateCase,
  hourlyYear,
  type RareDays,
  rareDays,
  thinnedCase,
} from './climate-year.ts';
import type { CoverAnswer, CoverGoal, CoverOption } from './climate-year-result.ts';

/** Least opening told apart from a closed top, and halvings of its logarithm: openings are found within 2 %. */
const LEAST_OPEN = 0.002;
const HALVINGS = 8;
/** Only every third day is worked out, after some to settle. @source derived: humidity moves by less than 0.005 */
const EVERY = 3;
const SETTLING = 8;
const CHARTED = [0, 0.005, 0.01, 0.02, 0.03, 0.05, 0.08, 0.13, 0.2, 0.35, 0.6, 1] as const;

type Judge = (open: number) => RareDays;

/** The year of a case under any opening, each worked out once. */
function judgeOf(one: ClimateCase): Judge {
  const known = new Map<number, RareDays>();
  return (open) => {
    const last = known.get(open);
    if (last) return last;
    const plan = { ...one.plan, box: { ...one.plan.box, coverOpenFraction: open } };
    const found = rareDays(hourlyYear({ ...one, plan }, SETTLING));
    known.set(open, found);
    return found;
  };
}

/** Where a falling condition turns from true to false between two openings: the last one at which it is true. */
function lastTrue(from: number, to: number, holds: (open: number) => boolean): number {
  if (holds(to)) return to;
  let low = Math.max(from, LEAST_OPEN);
  if (!holds(low)) return from;
  let high = to;
  for (let i = 0; i < HALVINGS; i++) {
    const middle = low * pow(high / low, 0.5);
    if (holds(middle)) low = middle;
    else high = middle;
  }
  return low;
}

/** Humidity and fog both fall as the cover opens: the widest opening for the one, the narrowest for the other. */
function optionOf(name: string, judge: Judge, goal: CoverGoal): CoverOption {
  const at = (open: number, range?: CoverOption['range']): CoverOption => ({
    name,
    ...(range ? { range } : {}),
    open,
    ...judge(open),
  });
  if (judge(0).humidity < goal.humidity) return at(0);
  const widest = lastTrue(0, 1, (open) => judge(open).humidity >= goal.humidity);
  if (judge(widest).fog > goal.fog) return at(widest);
  if (judge(0).fog <= goal.fog) return at(widest / 2, { from: 0, to: widest });
  const foggy = lastTrue(0, widest, (open) => judge(open).fog > goal.fog);
  const narrowest = Math.min(widest, foggy * 1.03);
  return at(0.5 * (narrowest + widest), { from: narrowest, to: widest });
}

/** Room air warmed without adding vapour. */
function warmed(room: RoomDrivers, by: number): RoomDrivers {
  const temperature = room.temperature.map((t) => t + by);
  const density = temperature.map((t, i) =>
    moistAirDensity(t, humidityRatio(room.vapourPressure[i]!, room.pressure), room.pressure),
  );
  return { ...room, temperature, density };
}

/** Part of the open water covered, as by floating plants. */
function halfCovered(geometry: Geometry): Geometry {
  return { ...geometry, openAreaAt: (level) => 0.5 * geometry.openAreaAt(level) };
}

const PANE = { gap: 0.01, thickness: 0.004 } as const;
const FAN = { name: 'fan', power: 1, flow: 20 / 3600, moves: 'inside', onAt: 0, hours: 24 } as const;
/** Sprayed at nine and at six [kg/day] over each square metre of base. */
const MIST_PER_AREA = 0.3;

interface Change {
  readonly name: string;
  to(one: ClimateCase): ClimateCase;
}

function withDevices(one: ClimateCase, change: Partial<Plan['devices']>): ClimateCase {
  return { ...one, plan: { ...one.plan, devices: { ...one.plan.devices, ...change } } };
}

function lampHeat(one: ClimateCase, factor: number): ClimateCase {
  const inside = Math.min(1, (one.parameters.lampHeatInside ?? 0) * factor);
  return { ...one, parameters: { ...one.parameters, lampHeatInside: inside } };
}

function changesFor({ plan, geometry }: ClimateCase): Change[] {
  const { devices, box } = plan;
  const changes: Change[] = [
    { name: 'a room 2 K warmer, without more vapour', to: (one) => ({ ...one, room: warmed(one.room, 2) }) },
    {
      name: 'a small fan inside, 20 m³/h along the front',
      to: (one) => withDevices(one, { fans: [...(one.plan.devices.fans ?? []), FAN] }),
    },
    {
      name: 'half of the open water covered',
      to: (one) => ({ ...one, geometry: halfCovered(one.geometry) }),
    },
  ];
  if (!box.secondPane)
    changes.push({
      name: 'a second pane 10 mm before the front',
      to: (one) => ({ ...one, plan: { ...one.plan, box: { ...one.plan.box, secondPane: PANE } } }),
    });
  if (devices.lamps.length > 0)
    changes.push(
      { name: 'lamps that leave twice the heat inside', to: (one) => lampHeat(one, 2) },
      { name: 'lamps that leave half the heat inside', to: (one) => lampHeat(one, 0.5) },
    );
  if (!devices.mister) {
    const mister = { name: 'mister', dailyMass: MIST_PER_AREA * geometry.baseArea, at: [9, 18] };
    changes.push({
      name: `misting ${Math.round(mister.dailyMass * 1000)} mL a day`,
      to: (one) => withDevices(one, { mister }),
    });
  }
  return changes;
}

/** Each change alone, nearest to the goal first; where none reaches it, the two nearest together as well. */
function alternativesFor(one: ClimateCase, goal: CoverGoal): CoverOption[] {
  const nearest = (a: CoverOption, b: CoverOption) => missOf(a, goal) - missOf(b, goal);
  const tried = changesFor(one)
    .map((change) => ({ change, option: optionOf(change.name, judgeOf(change.to(one)), goal) }))
    .sort((a, b) => nearest(a.option, b.option));
  const alone = tried.map(({ option }) => option);
  const [first, second] = tried;
  if (!first || !second || alone.some(({ range }) => range)) return alone;
  const name = `${first.change.name}, and ${second.change.name}`;
  const both = optionOf(name, judgeOf(second.change.to(first.change.to(one))), goal);
  return [...alone, both].sort(nearest);
}

const percent = (share: number): string => `${(100 * share).toFixed(share < 0.1 ? 1 : 0)} %`;
const hours = (value: number): string => `${value.toFixed(1)} h`;

/** How far a choice misses the goal: 0 when both hold. */
function missOf({ humidity, fog }: RareDays, goal: CoverGoal): number {
  return Math.max(0, goal.humidity - humidity) * 24 + Math.max(0, fog - goal.fog);
}

function sentenceOf(goal: CoverGoal, asDrawn: CoverOption, alternatives: readonly CoverOption[]): string {
  const wish = `${percent(goal.humidity)} humidity and at most ${hours(goal.fog)} of fog on the front, on 19 days of 20`;
  const { range } = asDrawn;
  if (range)
    return `${wish}: open the cover between ${percent(range.from)} and ${percent(range.to)}. At ${percent(asDrawn.open)} it is ${percent(asDrawn.humidity)} and ${hours(asDrawn.fog)}.`;
  const reached = alternatives.filter((one) => one.range);
  const helps =
    reached.length > 0
      ? `What would do: ${reached.map((one) => `${one.name}, ${percent(one.range!.from)} to ${percent(one.range!.to)} open`).join('; ')}.`
      : `None of the changes tried does it; nearest is ${alternatives[0]?.name ?? 'none'}.`;
  const why =
    asDrawn.open === 0
      ? `Even closed, the air keeps only ${percent(asDrawn.humidity)}.`
      : `At ${percent(asDrawn.open)} open, the widest that keeps the humidity, the front is fogged ${hours(asDrawn.fog)}.`;
  return `${wish}: both cannot be had with this box. ${why} ${helps}`;
}

/**
 * Returns how far the cover may be open to keep humidity and clear glass, or why both cannot be had, with what else would
 * help, each computed (`CoverAnswer`). Both fall as the cover opens, so each has one limit, found by halving.
 * @param plan that can be drawn
 * @param goal humidity [0..1] and fog [h/day] on 19 days of 20
 * @throws RangeError for a humidity outside 0 to 1 or fog outside 0 to 24 h, or when the climate cannot be worked out.
 * @validity at the medians of the climate's parameters; air in the box evenly mixed; every third day of the year
 * @source derived; docs/science/climate.md
 */
export function coverFor(plan: Plan, goal: CoverGoal): CoverAnswer {
  if (!(goal.humidity >= 0 && goal.humidity <= 1))
    throw new RangeError(`a humidity of ${goal.humidity * 100} %: give 0 to 100 %`);
  if (!(goal.fog >= 0 && goal.fog <= 24)) throw new RangeError(`${goal.fog} h of fog a day: give 0 to 24 h`);
  const one = thinnedCase(climateCase(plan), EVERY);
  const judge = judgeOf(one);
  const asDrawn = optionOf('as drawn', judge, goal);
  const curve = {
    open: [...CHARTED],
    humidity: CHARTED.map((open) => judge(open).humidity),
    fog: CHARTED.map((open) => judge(open).fog),
  };
  const alternatives = alternativesFor(one, goal);
  return { goal, asDrawn, curve, alternatives, sentence: sentenceOf(goal, asDrawn, alternatives) };
}
