import { openEnclosure } from '@shoreglass/contract';
import {
  DEATH_CAUSES,
  type DeathCause,
  expectedRun,
  type Plan,
  prepareOutlook,
  type SeriesId,
} from '@shoreglass/engine';
import { bookReader } from '../packages/engine/src/outlook/book-reader.ts';
import { POPULATION_ENTRIES } from '../packages/engine/src/run/block-book.ts';

/** The plan of an enclosure file. @throws Error with every blocking finding of one that cannot be run. */
export function planOfFile(text: string): Plan {
  const { plan, findings } = openEnclosure(text, 'test.yaml');
  if (plan) return plan;
  const blocking = findings.filter(({ severity }) => severity === 'blocking');
  throw new Error(JSON.stringify(blocking, undefined, 1));
}

/** The expected run of a plan, and its courses by name. */
export interface Kept {
  readonly plan: Plan;
  readonly prepared: ReturnType<typeof prepareOutlook>;
  readonly record: ReturnType<typeof expectedRun>;
  /** One value a day; undefined for what this plan does not record. */
  course(id: SeriesId): Float64Array | undefined;
}

/** Runs a plan with medians and mean births and deaths. */
export function keep(plan: Plan, days: number): Kept {
  const prepared = prepareOutlook(plan, { days, members: 2, seed: 1 });
  const record = expectedRun(prepared);
  const { seriesIds } = prepared.setting;
  return { plan, prepared, record, course: (id) => record.series[seriesIds.indexOf(id)] };
}

/** Last value of a course; not a number for one that is not recorded. */
export const last = (course: Float64Array | undefined): number => course?.at(-1) ?? Number.NaN;

/** Animals of all populations that died over the run, by cause. */
export function deathsIn({ prepared, record }: Kept): Record<DeathCause, number> {
  const { shape } = bookReader(prepared);
  const deaths = Object.fromEntries(DEATH_CAUSES.map((cause) => [cause, 0])) as Record<DeathCause, number>;
  for (let row = 0; row < record.bookRows.length; row += shape.rowLength)
    for (let p = 0; p < shape.populations; p += 1)
      for (const [at, cause] of DEATH_CAUSES.entries())
        deaths[cause] += record.bookRows[row + shape.populationOffset + p * POPULATION_ENTRIES + 1 + at]!;
  return deaths;
}

/** What one pool of shrimps differs in from another. */
export interface ShrimpPool {
  readonly adults: number;
  /** Days until they come. */
  readonly after: number;
  /** Feed its filter handles a day [mg], algae on the first day [g/m²], mean of the room [°C], and the lamp. */
  readonly handles: number;
  readonly algae: number;
  readonly warmth: number;
  readonly lamp: string;
  /** Sections `plants` and further routines. */
  readonly plants?: string;
  readonly routines?: string;
}

/** The file of an invented pool of cherry shrimps: matured filter, gravel, a lamp, hard water changed every fortnight. */
export function shrimpPool({
  adults,
  after,
  handles,
  algae,
  warmth,
  lamp,
  plants = '',
  routines = '',
}: ShrimpPool): string {
  return `
shoreglass: 1
name: Shrimp pool
start: 2026-03-01
glass: { length: 45 cm, width: 30 cm, height: 30 cm, thickness: 5 mm }
cover: { open: 2 %, transmission: 90 % }
zones:
  - id: pool
    name: Pool
    kind: pool
    from: 0 cm
    to: 45 cm
    ground: { left: 4 cm, right: 4 cm }
    layers:
      - { kind: substrate, material: fine-gravel }
water: { level: 22 cm, fill: hard-tap, top-off: reverse-osmosis }
settled: { filter: matured, handles: ${handles} mg, algae: ${algae} g/m², detritus: 0.3 g }
room:
  temperature: { mean: ${warmth} °C, season: 1 K, day: 1 K, peak: 07-25 }
  humidity: { mean: 55 %, season: 5 %, day: -3 %, peak: 08-10 }
  carbon-dioxide: 600 ppm
devices:
  lamps:
    - ${lamp}
  pump: { name: Sponge filter, power: 3 W, flow: 80 L/h, films: 0.3 m² }
${plants}
animals:
  - { species: neocaridina-davidi, zone: pool, adults: ${adults}, after: ${after} d }
routines:
${routines}  - { do: top-off, every: 3 d }
  - { do: water-change, share: 20 %, water: hard-tap, every: 14 d }
`;
}
