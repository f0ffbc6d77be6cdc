/** Width below which a name in the row can hardly be read or hit [px]; "Journal" in bold takes 60. */
const LEAST_WIDTH = 64;

/**
 * How many of the places of an enclosure stand in a row of that width [px] beside the button for the others; what finds no
 * room is behind that button.
 */
export function placesInRow(places: number, width: number): number {
  // Before the row was measured, as many as there are.
  if (width <= 0) return places;
  const cells = Math.floor(width / LEAST_WIDTH);
  return Math.max(1, Math.min(places, cells - 1));
}
