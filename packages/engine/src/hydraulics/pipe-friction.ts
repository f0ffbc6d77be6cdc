import { log10, pow } from '../numerics/elementary.ts';

/** Below this Reynolds number flow is laminar, above the next it is turbulent; between them friction is blended. */
const LAMINAR = 2000;
const TURBULENT = 4000;

/**
 * Returns the mean speed in a full round pipe [m/s, >= 0]: 4 Q/(pi D^2).
 * @param flow Q [m3/s]
 * @param bore D [m], above 0
 * @source derived
 */
export function pipeSpeed(flow: number, bore: number): number {
  return (4 * flow) / (Math.PI * bore * bore);
}

/**
 * Returns the Reynolds number [1, >= 0]: V D/nu.
 * @param speed V [m/s]
 * @param size D: bore of a pipe or grain diameter [m]
 * @param viscosity nu, kinematic [m2/s], above 0
 * @source derived
 */
export function reynoldsNumber(speed: number, size: number, viscosity: number): number {
  return (speed * size) / viscosity;
}

/**
 * Returns Darcy's friction factor of turbulent flow [1, > 0]: the root of 1/sqrt f = -2 lg(e/3.7 + 2.51/(Re sqrt f)),
 * by repeated substitution from Haaland's value.
 * @param reynolds Re, above 2000
 * @param roughness e, relative to the bore, 0 to 0.05
 * @source colebrook-1939
 */
export function frictionColebrook1939(reynolds: number, roughness: number): number {
  let x = 1 / Math.sqrt(frictionHaaland1983(reynolds, roughness));
  for (let i = 0; i < 12; i++) x = -2 * log10(roughness / 3.7 + (2.51 * x) / reynolds);
  return 1 / (x * x);
}

/**
 * Returns Darcy's friction factor of turbulent flow, explicit [1, > 0]: 1/sqrt f = -1.8 lg((e/3.7)^1.11 + 6.9/Re).
 * @param reynolds Re, above 2000
 * @param roughness e, relative to the bore, 0 to 0.05
 * @validity within 2 % of Colebrook
 * @source haaland-1983 (memory)
 */
export function frictionHaaland1983(reynolds: number, roughness: number): number {
  const rough = roughness > 0 ? pow(roughness / 3.7, 1.11) : 0;
  const x = -1.8 * log10(rough + 6.9 / reynolds);
  return 1 / (x * x);
}

/**
 * Returns Darcy's friction factor of turbulent flow, explicit [1, > 0]: 0.25/lg(e/3.7 + 5.74/Re^0.9)^2.
 * @param reynolds Re, 5000 to 1e8
 * @param roughness e, relative to the bore, 0 to 0.05
 * @validity within 2 % of Colebrook
 * @source swamee-jain-1976 (memory)
 */
export function frictionSwameeJain1976(reynolds: number, roughness: number): number {
  const x = log10(roughness / 3.7 + 5.74 / pow(reynolds, 0.9));
  return 0.25 / (x * x);
}

/**
 * Returns Darcy's friction factor at the highest speeds, where only roughness counts [1, > 0]: (1.14 + 2 lg(1/e))^-2.
 * @param roughness e, relative to the bore, above 0
 * @source colebrook-1939
 */
export function frictionFullyRough(roughness: number): number {
  const x = 1.14 - 2 * log10(roughness);
  return 1 / (x * x);
}

/**
 * Returns Darcy's friction factor at any speed [1, > 0]: 64/Re below 2000, Colebrook above 4000, straight between.
 * @param reynolds Re, above 0
 * @param roughness relative to the bore, 0 to 0.05
 * @validity between 2000 and 4000 the flow itself is unsteady; the straight line is our convention
 * @source derived; colebrook-1939
 */
export function frictionFactor(reynolds: number, roughness: number): number {
  if (reynolds <= LAMINAR) return 64 / reynolds;
  if (reynolds >= TURBULENT) return frictionColebrook1939(reynolds, roughness);
  const low = 64 / LAMINAR;
  const high = frictionColebrook1939(TURBULENT, roughness);
  return low + ((high - low) * (reynolds - LAMINAR)) / (TURBULENT - LAMINAR);
}
