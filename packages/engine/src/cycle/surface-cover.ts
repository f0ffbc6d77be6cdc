import type { Derivation } from '../process/contract.ts';

export interface SurfaceCoverParameters {
  readonly algalStock: number;
  readonly stockLight: number;
  readonly filmStock: number;
}

/** Stock per area [mol/m2]; 0 where there is no area, as nothing can fill it. */
function perArea(stock: number, area: number): number {
  return area > 0 ? stock / area : 0;
}

/**
 * Shares of the room of the two films that are filled [1]. Attached algae carry no thicker a lawn than their light can
 * keep: a(I) = a I/(K_I + I), so that what they make per surface rises with the light. They grow over the bacterial film
 * and share the lit surface with it as carbon with carbon: f_a = (B_a/A_lit + B_f/A) / a(I), with A = A_lit + A_dark,
 * and 1 in the dark. The film, which is thinner, is left the surface that it and the algae do not hold:
 * f_f = B_f/(b A) + B_a/(a A). Growth of either ends where its share reaches 1; see `attached-algae` and
 * `bacterial-film`.
 * @validity both films spread evenly; a share may exceed 1 for a while when the water or the light falls
 * @source assumed: competition for space with one full stock each, that of algae in proportion to weak light
 */
export const surfaceCover: Derivation<SurfaceCoverParameters> = {
  id: 'surface-cover',
  parameters: {
    algalStock: {
      unit: 'mol C/m²',
      min: 0.02,
      max: 4,
      meaning: 'attached algae per surface at which growth ends in the brightest light',
    },
    stockLight: { unit: 'µmol/m²/s', min: 5, max: 500, meaning: 'light on the algae at half that stock' },
    filmStock: {
      unit: 'mol C/m²',
      min: 0.002,
      max: 0.5,
      meaning: 'bacterial film per surface at which growth ends',
    },
  },
  reads: ['attachedAlgae', 'biofilm', 'submergedArea', 'darkFilmSurface', 'lightOnAlgae'],
  provides: ['algalGroundFilled', 'filmGroundFilled'],
  prepare(parameters, setting) {
    const algae = setting.index('attachedAlgae');
    const film = setting.index('biofilm');
    const lit = setting.index('submergedArea');
    const dark = setting.index('darkFilmSurface');
    const light = setting.index('lightOnAlgae');
    const algalGround = setting.index('algalGroundFilled');
    const filmGround = setting.index('filmGroundFilled');
    const perAlgae = 1 / parameters.algalStock;
    const perFilm = 1 / parameters.filmStock;
    return {
      derive(values) {
        const litArea = values[lit]!;
        const area = litArea + values[dark]!;
        const spread = perArea(values[film]!, area);
        const photons = values[light]!;
        values[algalGround] =
          photons > 0
            ? perAlgae * (1 + parameters.stockLight / photons) * (perArea(values[algae]!, litArea) + spread)
            : 1;
        values[filmGround] = perFilm * spread + perAlgae * perArea(values[algae]!, area);
      },
    };
  },
};
