import { expectedRun, prepareOutlook } from '@shoreglass/engine';
import { library as bundled, type Library, libraryOf, type Organism } from '@shoreglass/library';
import { openEnclosure } from '../enclosure/check/check-enclosure.ts';
import { trialBox } from './trial-box.ts';

/** What became of a species by itself in an invented box that suits it. */
export interface Trial {
  readonly days: number;
  readonly founders: number;
  /** Grown animals, young and eggs at the end of the run with mean births and deaths. */
  readonly adults: number;
  readonly young: number;
  readonly eggs: number;
  /** Day on which the first young were there; undefined when there were none. */
  readonly firstYoung?: number;
  /** Largest relative closure error over all elements. */
  readonly closure: number;
  /** True when every recorded value is a finite number. */
  readonly staysFinite: boolean;
  /** Day by day. */
  readonly courses: Readonly<Record<'adult' | 'juvenile' | 'brooded', Float64Array>>;
}

/** The bundled library with one more, or another, animal. */
export function libraryWith(organism: Organism, library: Library = bundled): Library {
  const { data } = library;
  return libraryOf({ ...data, organisms: { ...data.organisms, [organism.id]: organism } });
}

/**
 * A species by itself in an invented box that suits it, over some days.
 * @throws Error when the box made for it cannot be planned; says why
 */
export function trialOf(organism: Organism, days: number, library: Library = bundled): Trial {
  const { text, founders } = trialBox(organism);
  const { plan, findings } = openEnclosure(text, `trial-of-${organism.id}.yaml`, {
    library: libraryWith(organism, library),
  });
  if (!plan) {
    const [first] = findings;
    throw new Error(`no box could be planned for ${organism.name}: ${first?.path} ${first?.message}`);
  }
  const prepared = prepareOutlook(plan, { days, members: 2, seed: 1 });
  const record = expectedRun(prepared);
  const course = (stage: string): Float64Array =>
    record.series[
      prepared.setting.seriesIds.indexOf(`population:${organism.id}:${stage}` as `population:${string}`)
    ] ?? new Float64Array(days);
  const courses = { adult: course('adult'), juvenile: course('juvenile'), brooded: course('brooded') };
  const firstYoung = courses.juvenile.findIndex((count) => count >= 1);
  const last = (values: Float64Array): number => values[days - 1] ?? 0;
  return {
    days,
    founders,
    adults: last(courses.adult),
    young: last(courses.juvenile),
    eggs: last(courses.brooded),
    ...(firstYoung >= 0 ? { firstYoung: firstYoung + 1 } : {}),
    closure: Math.max(...Object.values(record.closure).map(Math.abs)),
    staysFinite: record.series.every((values) => values.every((value) => Number.isFinite(value))),
    courses,
  };
}
