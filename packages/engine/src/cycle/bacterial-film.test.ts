import { describe, expect, it } from 'vitest';
import { compose } from '../process/compose.ts';
import { type AnyDerivation, listed, listedDerivation } from '../process/contract.ts';
import {
  changesByState,
  checkDerivation,
  checkProcess,
  ratesByName,
  valuesWith,
} from '../process/process-test-kit.ts';
import { VARIABLE_INDEX as V } from '../variables/variables.ts';
import { bacterialFilm } from './bacterial-film.ts';
import { surfaceCover } from './surface-cover.ts';

const DAY = 86400;
const FILM = {
  maximumGrowth: 0.5,
  theta: 1.05,
  yield: 0.4,
  detritusPerFilm: 12,
  oxygenHalf: 0.2,
  decayRate: 0.1,
};
const FED = {
  biofilm: 1,
  detritusCarbon: 1e9,
  detritusNitrogen: 1e9,
  detritusPhosphorus: 1e9,
  oxygen: 1e6,
  submergedArea: 0.5,
  darkFilmSurface: 0.5,
  waterVolume: 1,
  waterTemperature: 20,
};
const process = listed(bacterialFilm);

describe('bacterial film', () => {
  it('keeps the contract', () => checkProcess(process));

  it('grows at the highest rate when nothing is scarce and no light shines', () => {
    const rates = ratesByName(process, FILM, FED);
    expect(rates['growth of bacterial film']! * DAY).toBeCloseTo(0.5, 6);
  });

  it('burns 1.5 of every 2.5 carbon it takes at a yield of 0.4, one oxygen each', () => {
    const change = changesByState(process, { ...FILM, decayRate: 0.005 }, FED);
    expect(change.oxygen! / change.dissolvedInorganicCarbon!).toBeCloseTo(-1, 12);
    const growth = ratesByName(process, FILM, FED)['growth of bacterial film']!;
    expect(change.dissolvedInorganicCarbon! / growth).toBeCloseTo(1.5, 12);
  });

  it('is held by nitrogen on poor remains', () => {
    const rate = (detritusNitrogen: number): number =>
      ratesByName(process, FILM, { ...FED, detritusCarbon: 1, detritusNitrogen })[
        'growth of bacterial film'
      ]!;
    expect(rate(0.02)).toBeLessThan(rate(0.2));
    expect(rate(0)).toBe(0);
  });

  it('grows at half the highest rate where detritus is what it asks for, be the surface much or little', () => {
    for (const darkFilmSurface of [0.5, 500]) {
      const rates = ratesByName(process, FILM, { ...FED, detritusCarbon: 12, darkFilmSurface });
      expect(rates['growth of bacterial film']! * DAY).toBeCloseTo(0.25, 6);
    }
  });

  it('stops where its room is filled', () => {
    const rates = ratesByName(process, FILM, { ...FED, filmGroundFilled: 1 });
    expect(rates['growth of bacterial film']).toBe(0);
  });
});

describe('room on the surfaces', () => {
  const derivation = listedDerivation(surfaceCover);
  /** Stands for the light that the test sets. */
  const LIT: AnyDerivation = {
    id: 'light as set',
    parameters: {},
    reads: [],
    provides: ['lightOnAlgae'],
    prepare: () => ({ derive: () => undefined }),
  };
  const filled = (entries: Parameters<typeof valuesWith>[0]): { algae: number; film: number } => {
    const values = valuesWith({ submergedArea: 1, darkFilmSurface: 3, lightOnAlgae: 1e9, ...entries });
    compose([], [LIT, derivation], {
      'surface-cover': { algalStock: 0.25, stockLight: 80, filmStock: 0.02 },
    }).derive(values);
    return { algae: values[V.algalGroundFilled]!, film: values[V.filmGroundFilled]! };
  };

  it('keeps the contract', () => checkDerivation(derivation));

  it('is shared by algae and film: more of either leaves less for both', () => {
    const bare = filled({ attachedAlgae: 0.1, biofilm: 0.02 });
    for (const more of [
      { attachedAlgae: 0.2, biofilm: 0.02 },
      { attachedAlgae: 0.1, biofilm: 0.04 },
    ]) {
      expect(filled(more).algae).toBeGreaterThan(bare.algae);
      expect(filled(more).film).toBeGreaterThan(bare.film);
    }
  });

  it('of algae is half as much in the light of half the stock, and none in the dark', () => {
    expect(filled({ attachedAlgae: 0.1, lightOnAlgae: 80 }).algae).toBeCloseTo(0.8, 12);
    expect(filled({ lightOnAlgae: 0 }).algae).toBe(1);
  });

  it('is filled by full stocks: 0.25 mol/m² of algae, 0.02 mol/m² of film', () => {
    expect(filled({ attachedAlgae: 0.25 }).algae).toBeCloseTo(1, 6);
    expect(filled({ biofilm: 0.08 }).film).toBeCloseTo(1, 12);
    // a closed lawn of algae on a quarter of the surface takes a quarter from the film
    expect(filled({ attachedAlgae: 0.25 }).film).toBeCloseTo(0.25, 12);
  });
});
