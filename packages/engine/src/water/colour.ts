/** Colour of a litre that holds 1 mg of coloured organic carbon [mg Pt/mg C]: 18.2 mg Pt per 1/m at 440 nm, 0.45 1/m per mg C/L. */
const COLOUR_PER_CARBON = 18.2 * 0.45;

/**
 * Colour of water beside platinum-cobalt standards [mg Pt/L] from its coloured organic carbon.
 * Lakes count as clear up to 20, as strongly coloured from 50 and as very strongly coloured from 100 mg Pt/L.
 * @param organicCarbon coloured dissolved organic carbon [mg C/L], >= 0
 * @validity humic matter of wood, leaves and peat; single waters differ by half, iron deepens the colour
 * @source cuthbert-del-giorgio-1992 (colour by absorption at 440 nm; memory), griffin-2018 (absorption goes with
 *   organic carbon in forest lakes; the slope of 0.45 is recalled)
 */
export function waterColour(organicCarbon: number): number {
  return COLOUR_PER_CARBON * organicCarbon;
}
