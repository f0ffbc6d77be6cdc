import { applyCare } from '../care/apply-care.ts';
import type { LampSegment } from '../light/surface-light.ts';
import { VARIABLE_INDEX as V } from '../variables/variables.ts';
import type { Book } from './book.ts';
import type { EatenReader } from './eaten.ts';
import type { FeedingTimes, TimedCare } from './feeding-times.ts';
import type { Recorder } from './recorder.ts';
import { isDriedUp, setWaterDrivers, type World } from './world.ts';

/** What reads and books a day of the cycle. */
export interface CycleTools {
  readonly book: Book;
  readonly recorder: Recorder;
  readonly eaten: EatenReader;
}

function meanBetween(hourly: Float64Array, from: number, to: number): number {
  let sum = 0;
  for (let hour = Math.floor(from); hour < to; hour += 1) {
    const overlap = Math.min(to, hour + 1) - Math.max(from, hour);
    sum += hourly[hour]! * overlap;
  }
  return sum / (to - from);
}

const lengthOf = ({ from, to }: LampSegment): number => to - from;

/** Runs the cycle through a stretch whose drivers are set; its sample stands for some hours. It rests without water. */
function advance(world: World, stretch: LampSegment, hours: number, { book, recorder }: CycleTools): void {
  world.values[V.lightAtSurface] = stretch.ppfd * (world.landPlants?.lightLeftForWater ?? 1);
  if (isDriedUp(world)) {
    recorder.sample(world, hours);
    return;
  }
  world.system.derive(world.values);
  recorder.sample(world, hours);
  world.integrator.advance(world.values, lengthOf(stretch) * 3600, book.extents());
}

/** A day without feed at an hour: animals choose once what they eat. */
function plainDay(world: World, hourly: Float64Array, tools: CycleTools): void {
  world.life.demand(world.values);
  tools.eaten.begin(tools.book.extents());
  const { segments } = world.setting;
  let before = lengthOf(segments[segments.length - 1]!);
  for (const segment of segments) {
    const { from, to } = segment;
    setWaterDrivers(world, meanBetween(hourly, from, to));
    advance(world, segment, 0.5 * (before + to - from), tools);
    before = lengthOf(segment);
  }
}

interface FedDay {
  readonly stretches: FeedingTimes['stretches'];
  /** Feed of this day, in order of hours. */
  readonly due: readonly TimedCare[];
}

/**
 * A day on which feed is given at an hour: it goes in at its hour, and animals choose anew what they eat whenever feed
 * came or the light changed. Leaves what was eaten in the last stretch to `step`.
 */
function fedDay(world: World, hourly: Float64Array, { stretches, due }: FedDay, tools: CycleTools): void {
  const { book, eaten } = tools;
  let before = lengthOf(stretches[stretches.length - 1]!);
  let begun = 0;
  let given = 0;
  for (const stretch of stretches) {
    const { from, to, activity, begins } = stretch;
    setWaterDrivers(world, meanBetween(hourly, from, to));
    for (; given < due.length && due[given]!.hour <= from; given += 1) {
      applyCare(world, book, due[given]!.care);
    }
    if (begins) {
      if (from > begun) world.life.eat(world.values, eaten.read(book.extents()), (from - begun) / 24);
      begun = from;
      eaten.begin(book.extents());
      world.life.demand(world.values, activity);
    }
    advance(world, stretch, 0.5 * (before + to - from), tools);
    before = lengthOf(stretch);
  }
}

/**
 * Runs the cycle through a day. The water is sampled where stretches meet, so that dawn and dusk are seen; a sample
 * stands for half of the stretch on either side.
 * @param hourly water temperatures of the day [degC], 24 of them
 * @throws RangeError as the integrator
 * @source derived
 */
export function passCycle(world: World, day: number, hourly: Float64Array, tools: CycleTools): void {
  const { feeding } = world.setting;
  const due = feeding?.care[day];
  if (feeding && due && due.length > 0) fedDay(world, hourly, { stretches: feeding.stretches, due }, tools);
  else plainDay(world, hourly, tools);
}
