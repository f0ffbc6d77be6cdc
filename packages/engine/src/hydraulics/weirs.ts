import { GRAVITY } from '../climate/openings.ts';
import { cbrt } from '../numerics/elementary.ts';

const threeHalves = (x: number): number => x * Math.sqrt(x);

/**
 * Returns the flow over a sharp crest [m3/s, >= 0]: 1.84 (L - 0.1 n H) H^1.5.
 * @param crestLength L [m], above 3 H
 * @param head H of the water above the crest [m], above 0.03
 * @param contractions n, ends at which the sheet draws in: 0, 1 or 2
 * @validity heads above 3 cm; thinner sheets cling, break into rivulets and run back below the lip
 * @source francis-1883 (memory)
 */
export function weirFlowFrancis1883(crestLength: number, head: number, contractions: number): number {
  return 1.84 * (crestLength - 0.1 * contractions * head) * threeHalves(head);
}

/**
 * Returns the flow through a notch in a sharp crest [m3/s, >= 0]:
 * 0.554 (1 - 0.0035 h1/h2)(b + 0.0025) sqrt(g) (h1 + 0.0001)^1.5.
 * @param head h1 above the crest [m], above 0.03
 * @param crestHeight h2 above the bed [m], above 0.1
 * @param width b [m], above 0.15
 * @source kindsvater-carter-1957, as in Blevins
 */
export function weirFlowKindsvaterCarter1957(head: number, crestHeight: number, width: number): number {
  const coefficient = 0.554 * (1 - (0.0035 * head) / crestHeight);
  return coefficient * (width + 0.0025) * Math.sqrt(GRAVITY) * threeHalves(head + 0.0001);
}

/**
 * Returns the flow over a sharp crest across the whole width [m3/s, >= 0]:
 * 2/3 (0.602 + 0.083 h1/h2) sqrt(2 g) b (h1 + 0.0012)^1.5.
 * @param head h1 above the crest [m], above 0.03
 * @param crestHeight h2 above the bed [m]
 * @param width b [m]
 * @source rehbock-1929 (memory)
 */
export function weirFlowRehbock1929(head: number, crestHeight: number, width: number): number {
  const coefficient = 0.602 + (0.083 * head) / crestHeight;
  return (2 / 3) * coefficient * Math.sqrt(2 * GRAVITY) * width * threeHalves(head + 0.0012);
}

/**
 * Returns the flow over a round or broad lip [m3/s, >= 0]: 1.70 b H^1.5.
 * @param width b [m]
 * @param head H of the water above the lip [m]
 * @source derived: critical flow (memory)
 */
export function broadLipFlow(width: number, head: number): number {
  return 1.7 * width * threeHalves(head);
}

/**
 * Returns the depth of the water on a broad lip [m, >= 0]: (q^2/g)^(1/3).
 * @param flowPerWidth q [m2/s]
 * @source derived: critical depth
 */
export function criticalDepth(flowPerWidth: number): number {
  return cbrt((flowPerWidth * flowPerWidth) / GRAVITY);
}

/**
 * Returns how far a falling sheet lands from its lip [m, >= 0]: V sqrt(2 z/g).
 * @param speed V at the lip [m/s]
 * @param fall z [m]
 * @source derived: free fall
 */
export function sheetReach(speed: number, fall: number): number {
  return speed * Math.sqrt((2 * fall) / GRAVITY);
}

/**
 * Returns the flow through an orifice [m3/s, >= 0]: C A sqrt(2 g h).
 * @param area A [m2]
 * @param head h of the water above its middle [m], >= 0
 * @param discharge C, 0.60 to 0.62 for a sharp edge
 * @source derived: Torricelli
 */
export function orificeFlow(area: number, head: number, discharge: number): number {
  return discharge * area * Math.sqrt(2 * GRAVITY * head);
}

/** A tank with upright walls that empties through a hole. */
export interface EmptyingTank {
  /** Of the tank and of the hole [m2]. */
  readonly tankArea: number;
  readonly holeArea: number;
  /** Water above the hole at the start and at the end [m]. */
  readonly startHead: number;
  readonly endHead: number;
  readonly discharge: number;
}

/**
 * Returns the time in which a tank empties from one level to another [s]:
 * 2 A_t/(C A_o sqrt(2 g)) (sqrt h0 - sqrt h1).
 * @param tank areas, levels and discharge coefficient
 * @source derived: integral of Torricelli's law
 */
export function emptyingTime(tank: EmptyingTank): number {
  const { tankArea, holeArea, startHead, endHead, discharge } = tank;
  const perRoot = (2 * tankArea) / (discharge * holeArea * Math.sqrt(2 * GRAVITY));
  return perRoot * (Math.sqrt(startHead) - Math.sqrt(endHead));
}

/**
 * Returns the flow down an overflow pipe [m3/s, >= 0]: the lesser of a weir along its rim and an orifice of its bore.
 * @param bore [m]
 * @param head of the water above the rim [m], >= 0
 * @param discharge of the orifice
 * @source derived; francis-1883 for the rim
 */
export function standpipeFlow(bore: number, head: number, discharge: number): number {
  const rim = weirFlowFrancis1883(Math.PI * bore, head, 0);
  return Math.min(rim, orificeFlow((Math.PI * bore * bore) / 4, head, discharge));
}
