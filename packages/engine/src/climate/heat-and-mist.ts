import { AIR_HEAT_CAPACITY } from './evaporation.ts';

/**
 * Returns how fast water warms [K/s]: P/(m c).
 * @param power P into the water [W], negative when it leaves
 * @param mass m [kg], above 0
 * @param heatCapacity c [J/(kg K)]
 * @source derived
 */
export function warmingRate(power: number, mass: number, heatCapacity: number): number {
  return power / (mass * heatCapacity);
}

/** What warms a box in steady state without evaporation. */
export interface SteadyBox {
  /** Heat released inside [W]. */
  readonly gain: number;
  /** Conductance of all panes [W/K]. */
  readonly conductance: number;
  /** Air exchanged [m3/s], and its density [kg/m3]. */
  readonly exchange: number;
  readonly airDensity: number;
  /** [degC] */
  readonly roomTemperature: number;
}

/**
 * Returns the air temperature of a box in steady state [degC]: t_room + G/(UA + Q rho c_p).
 * @param box gains and losses; conductance or exchange above 0
 * @validity sensible heat only: evaporation keeps a wet box cooler
 * @source derived
 */
export function steadyBoxTemperature(box: SteadyBox): number {
  const loss = box.conductance + box.exchange * box.airDensity * AIR_HEAT_CAPACITY;
  return box.roomTemperature + box.gain / loss;
}

/**
 * Returns the water one spraying brings [kg]: n q t, at 1 kg/L.
 * @param nozzles n
 * @param flowPerNozzle q [m3/s]
 * @param duration t [s]
 * @source derived
 */
export function mistDose(nozzles: number, flowPerNozzle: number, duration: number): number {
  return nozzles * flowPerNozzle * duration * 1000;
}

/**
 * Returns the vapour needed to moisten air at constant temperature [kg]: V/v (W2 - W1).
 * @param airVolume V [m3]
 * @param specificVolume v of the air at the start [m3/kg dry air]
 * @param ratioRise W2 - W1 [kg/kg]
 * @source derived
 */
export function humidifyingMass(airVolume: number, specificVolume: number, ratioRise: number): number {
  return (airVolume / specificVolume) * ratioRise;
}
