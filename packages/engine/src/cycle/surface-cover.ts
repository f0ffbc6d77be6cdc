import type { Derivation } from '../process/contract.ts';

export interface SurfaceCoverParameters {
  readonly algalStock: number;
  readonly filmStock: number;
}

/** Stock per area [mol/m2]; 0 where there is no area, as nothing can fill it. */
function perArea(stock: number, area: number): number {
  return area > 0 ? stock / area : 0;
}

/**
 * Shares of the room of the two films that are filled [1]. Attached algae grow over the bacterial film and share the lit
 * surface with it as carbon with carbon: f_a = (B_a/A_lit + B_f/A) / a, with A = A_lit + A_dark. The film, which is
 * thinner, is left the surface that it and the algae do not hold: f_f = B_f/(b A) + B_a/(a A). Growth of either ends
 * where its share reaches 1; see `attached-algae` and `bacterial-film`.
 * @validity both films spread evenly; a share may exceed 1 for a while when the water falls
 * @source assumed: competition for space with one full stock each
 */
export const surfaceCover: Derivation<SurfaceCoverParameters> = {
  id: 'surface-cover',
  parameters: {
    algalStock: {
      unit: 'mol C/m²',
      min: 0.02,
      max: 2,
      meaning: 'attached algae per surface at which growth ends',
    },
    filmStock: {
      unit: 'mol C/m²',
      min: 0.002,
      max: 0.5,
      meaning: 'bacterial film per surface at which growth ends',
    },
  },
  reads: ['attachedAlgae', 'biofilm', 'submergedArea', 'darkFilmSurface'],
  provides: ['algalGroundFilled', 'filmGroundFilled'],
  prepare(parameters, setting) {
    const algae = setting.index('attachedAlgae');
    const film = setting.index('biofilm');
    const lit = setting.index('submergedArea');
    const dark = setting.index('darkFilmSurface');
    const algalGround = setting.index('algalGroundFilled');
    const filmGround = setting.index('filmGroundFilled');
    const perAlgae = 1 / parameters.algalStock;
    const perFilm = 1 / parameters.filmStock;
    return {
      derive(values) {
        const litArea = values[lit]!;
        const area = litArea + values[dark]!;
        const spread = perArea(values[film]!, area);
        values[algalGround] = perAlgae * (perArea(values[algae]!, litArea) + spread);
        values[filmGround] = perFilm * spread + perAlgae * perArea(values[algae]!, area);
      },
    };
  },
};
