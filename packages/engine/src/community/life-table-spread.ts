import { type AnimalTraits, checkTraits } from '../life/traits.ts';
import { type Spread, spreadOf } from '../numerics/quantiles.ts';
import { createRandom } from '../numerics/random.ts';
import { drawParameters } from '../outlook/draw.ts';
import { type LifeTable, lifeTable } from './life-table.ts';

/** A species and what is believed of its traits. */
export interface BelievedSpecies {
  readonly id: string;
  readonly traits: AnimalTraits;
}

/** How well the figures of a life table are known, over draws of the traits; figures that fewer than half have are left out. */
export interface LifeSpread {
  readonly draws: number;
  /** Part of the draws in which anybody is born [0..1], and in which numbers grow. */
  readonly breeding: number;
  readonly growing: number;
  /** [d] */
  readonly firstYoung?: Spread;
  /** Days in which numbers double, of the draws in which they grow. */
  readonly doubling?: Spread;
  readonly clutch: Spread;
}

/** Draws enough for a tenth and nine tenths. */
const USUAL_DRAWS = 40;

/**
 * Spread of a life table over what is believed of a species' traits: times [d], numbers [1], parts [0..1]. Draws are those of
 * an ensemble, every trait by itself.
 * @param temperature of water and air [degC]
 * @param sampling draws, 40 when left out, and a seed, 1
 * @throws RangeError as `lifeTable`, or when there are fewer than two draws
 * @source derived from `lifeTable`
 */
export function lifeTableSpread(
  { id, traits }: BelievedSpecies,
  temperature: number,
  sampling: { readonly draws?: number; readonly seed?: number } = {},
): LifeSpread {
  const { draws = USUAL_DRAWS, seed = 1 } = sampling;
  if (!(Number.isInteger(draws) && draws >= 2))
    throw new RangeError(`a spread needs two draws at least, not ${draws}`);
  const random = createRandom(seed, `life-table-${id}`);
  const tables = Array.from({ length: draws }, (_, draw): LifeTable => {
    const { [id]: values = {} } = drawParameters({ [id]: traits.priors }, random.split(String(draw)));
    return lifeTable({ id, traits, values: checkTraits(id, values) }, temperature);
  });
  const of = (figure: (table: LifeTable) => number | undefined): number[] =>
    tables.map(figure).filter((value) => value !== undefined);
  const [first, doubling] = [of(({ firstYoung }) => firstYoung), of((table) => table.doubling)];
  return {
    draws,
    breeding: first.length / draws,
    growing: doubling.length / draws,
    ...(first.length >= draws / 2 ? { firstYoung: spreadOf(first) } : {}),
    ...(doubling.length >= draws / 2 ? { doubling: spreadOf(doubling) } : {}),
    clutch: spreadOf(of(({ clutch }) => clutch)),
  };
}
