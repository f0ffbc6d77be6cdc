import { DEATH_CAUSES, type DeathCause } from '../life/living-population.ts';
import { bookReader } from '../outlook/book-reader.ts';
import type { AheadDocument, QuantileSeries } from '../outlook/document.ts';
import type { MemberBatch } from '../outlook/ensemble.ts';
import type { PreparedOutlook } from '../outlook/prepare.ts';
import { type SlowingSpell, slowingSentence, slowingSpells } from '../outlook/slowing.ts';
import { expectedDocument, summarise } from '../outlook/summarise.ts';
import { type BookShape, POPULATION_ENTRIES } from '../run/block-book.ts';
import type { RunRecord } from '../run/run.ts';
import type { PestAnswer } from './answers-to-pest.ts';
import { calciumConflicts } from './calcium-conflicts.ts';
import { carryingCapacity, type FoodCapacity } from './carrying-capacity.ts';
import { byWeight } from './conflicts.ts';
import type { FeedingPlan } from './feeding-found.ts';
import { type FoodFlow, foodFlows } from './food-flows.ts';
import { type FoodRival, foodRivals } from './food-rivals.ts';
import type { Conflict } from './inhabitant.ts';
import { type PlantOutlook, plantOutlooks } from './plant-outlook.ts';
import type { AdditionEffect } from './what-if-added.ts';

/** One population over the outlook. */
export interface PopulationOutlook {
  readonly id: string;
  readonly name: string;
  readonly species: string;
  /** All free-living animals, and by stage: brooded, juvenile, adult. */
  readonly total: QuantileSeries;
  readonly stages: Readonly<Record<string, QuantileSeries>>;
  /** Young released and deaths by cause over the expected run [animals]. */
  readonly born: number;
  readonly deaths: Readonly<Record<DeathCause, number>>;
  /** What of the water made them eat less, grow slower and lay fewer eggs over the expected run, worst first. */
  readonly slowed: readonly (SlowingSpell & { readonly sentence: string })[];
}

/** The living community as one document: what `life --json` prints and the app draws. */
export interface LifeDocument {
  readonly enclosure: AheadDocument['enclosure'];
  readonly run: AheadDocument['run'];
  readonly conflicts: readonly Conflict[];
  readonly capacity: readonly FoodCapacity[];
  readonly populations: readonly PopulationOutlook[];
  readonly plants: readonly PlantOutlook[];
  /** Who eats what in the expected run [mg C/week]. */
  readonly flows: readonly FoodFlow[];
  /** Who took whose food over the expected run. */
  readonly rivals: readonly FoodRival[];
  /** What adding animals does, when that was asked. */
  readonly addition?: {
    readonly species: string;
    readonly adults: number;
    readonly effects: readonly AdditionEffect[];
  };
  /** How to feed for the adults wanted, when that was asked. */
  readonly feeding?: FeedingPlan;
  /** What can be done against a species, when that was asked. */
  readonly pest?: {
    readonly species: string;
    readonly name: string;
    readonly answers: readonly PestAnswer[];
  };
}

/** Answers to questions that need runs of their own. */
export type LifeAnswers = Pick<LifeDocument, 'addition' | 'feeding' | 'pest'>;

function populationOutlooks(
  { plan, options }: PreparedOutlook,
  expected: RunRecord,
  { series }: AheadDocument,
  shape: BookShape,
): PopulationOutlook[] {
  const { rowLength, populationOffset } = shape;
  return plan.populations.map(({ id, name, species }, p) => {
    const spells = slowingSpells(expected.bookRows, shape, p, options.days);
    const entry = (at: number): number => {
      let sum = 0;
      for (let row = 0; row < expected.bookRows.length; row += rowLength)
        sum += expected.bookRows[row + populationOffset + p * POPULATION_ENTRIES + at]!;
      return sum;
    };
    const stages = Object.fromEntries(
      ['brooded', 'juvenile', 'adult'].map((stage) => [stage, series[`population:${id}:${stage}`]!]),
    );
    const deaths = Object.fromEntries(DEATH_CAUSES.map((cause, at) => [cause, entry(at + 1)]));
    return {
      id,
      name,
      species,
      total: series[`population:${id}`]!,
      stages,
      born: entry(0),
      deaths: deaths as Record<DeathCause, number>,
      slowed: spells.map((spell) => ({ ...spell, sentence: slowingSentence(name, spell) })),
    };
  });
}

/**
 * The community of a plan over an outlook: conflicts, what each food carries, numbers by stage, who eats what.
 * @param conflicts as `conflictsOf` tells them
 * @throws Error when members are missing or doubled. @source derived
 */
export function lifeDocument(
  prepared: PreparedOutlook,
  runs: { readonly expected: RunRecord; readonly batches: readonly MemberBatch[] },
  conflicts: readonly Conflict[],
  answers: LifeAnswers = {},
): LifeDocument {
  const ahead = summarise(prepared, runs.expected, runs.batches);
  return { ...communityOf(prepared, runs.expected, ahead, conflicts), ...answers };
}

/**
 * The community of a plan by the expected run alone: the document of `lifeDocument` without a spread.
 * @param conflicts as `conflictsOf` tells them. @source derived
 */
export function expectedLifeDocument(
  prepared: PreparedOutlook,
  expected: RunRecord,
  conflicts: readonly Conflict[],
): LifeDocument {
  return communityOf(prepared, expected, expectedDocument(prepared, expected), conflicts);
}

function communityOf(
  prepared: PreparedOutlook,
  expected: RunRecord,
  ahead: AheadDocument,
  conflicts: readonly Conflict[],
): LifeDocument {
  const { plan, options } = prepared;
  const { shape } = bookReader(prepared);
  const flows = foodFlows({ plan, shape, rows: expected.bookRows, days: options.days });
  return {
    enclosure: ahead.enclosure,
    run: ahead.run,
    conflicts: byWeight([
      ...conflicts,
      ...calciumConflicts({
        plan,
        flows,
        counts: (id, stage) => ahead.series[`population:${id}:${stage}`]?.expected ?? [],
      }),
    ]),
    capacity: carryingCapacity(plan, Math.min(options.days, USUAL_DAYS)),
    populations: populationOutlooks(prepared, expected, ahead, shape),
    plants: plantOutlooks(prepared, expected, ahead.series, shape),
    flows,
    rivals: foodRivals(flows, (id) => plan.populations.find((each) => each.id === id)?.name ?? id),
  };
}

const USUAL_DAYS = 120;
