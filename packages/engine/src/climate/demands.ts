import {
  AIR,
  BY_CONDENSING,
  BY_FOG,
  BY_HEATER,
  GLASS,
  KNOWN,
  RATIO,
  UNKNOWNS,
  WATER,
} from './balance-system.ts';

/** Below the setpoint by this much the heater runs at full power [K]. @source assumed */
const HEATER_BAND = 0.25;
/** Per unknown, the tangent to the saturated humidity ratio: its value at 0 degC and its slope [1/K]. */
export const TANGENT = 2;

interface HeaterRating {
  /** [W] */
  readonly power: number;
  /** [degC] */
  readonly setpoint: number;
}

/**
 * What the balance asks for beyond the known: heat of the heater [W], vapour that condenses on the glass and fog that
 * falls from the air [kg/s]. The answers are linear in them, so each follows in closed form, without switching back and
 * forth: the heater from the water's temperature without it; condensing K = k (W - W_s(glass)) but at least what dries
 * the film away; fog J so that the air is just saturated, where it would exceed it.
 */
export class Demands {
  heater = 0;
  condensing = 0;
  fog = 0;
  private readonly answers: Float64Array;
  private readonly tangent: Float64Array;

  /** @param answers of the solved system, and `tangent` per unknown; both are read anew each time */
  constructor(answers: Float64Array, tangent: Float64Array) {
    this.answers = answers;
    this.tangent = tangent;
  }

  /**
   * Finds all three.
   * @param k vapour conductance from air to glass [kg/s]
   * @param driest least condensing, negative: it dries the film away in the step [kg/s]
   */
  settle(k: number, driest: number, rating: HeaterRating | undefined): void {
    const { tangent } = this;
    const heater = this.heaterDemand(rating);
    const atGlass =
      this.excess(GLASS, KNOWN) + heater * this.excess(GLASS, BY_HEATER) - tangent[GLASS * TANGENT]!;
    const inAir = this.excess(AIR, KNOWN) + heater * this.excess(AIR, BY_HEATER) - tangent[AIR * TANGENT]!;
    const glassByCondensing = this.excess(GLASS, BY_CONDENSING);
    const airByCondensing = this.excess(AIR, BY_CONDENSING);
    let condensing = Math.max(driest, (k * atGlass) / (1 - k * glassByCondensing));
    let fog = 0;
    if (inAir + airByCondensing * condensing > 0) {
      const glassByFog = this.excess(GLASS, BY_FOG);
      const airByFog = this.excess(AIR, BY_FOG);
      // fog = -(inAir + airByCondensing K)/airByFog put into K = k (atGlass + glassByCondensing K + glassByFog fog)
      const ratio = glassByFog / airByFog;
      const wet = (k * (atGlass - ratio * inAir)) / (1 - k * (glassByCondensing - ratio * airByCondensing));
      condensing = Math.max(driest, wet);
      fog = Math.max(0, -(inAir + airByCondensing * condensing) / airByFog);
    }
    this.heater = heater;
    this.condensing = condensing;
    this.fog = fog;
  }

  /** Writes the unknowns with all three. */
  addTo(end: Float64Array): void {
    const { answers, heater, condensing, fog } = this;
    for (let i = 0; i < UNKNOWNS; i++) {
      end[i] =
        answers[KNOWN + i]! +
        heater * answers[BY_HEATER + i]! +
        condensing * answers[BY_CONDENSING + i]! +
        fog * answers[BY_FOG + i]!;
    }
  }

  /** Humidity ratio above saturation at an unknown's temperature, for one right-hand side of the solved system. */
  private excess(unknown: number, side: number): number {
    const { answers, tangent } = this;
    return answers[side + RATIO]! - tangent[unknown * TANGENT + 1]! * answers[side + unknown]!;
  }

  /** Proportional within the band below the setpoint, between 0 and the rated power [W]. */
  private heaterDemand(rating: HeaterRating | undefined): number {
    if (!rating || !(rating.power > 0)) return 0;
    const gain = rating.power / HEATER_BAND;
    const without = this.answers[KNOWN + WATER]!;
    const perWatt = this.answers[BY_HEATER + WATER]!;
    const wanted = (gain * (rating.setpoint - without)) / (1 + gain * perWatt);
    return Math.min(rating.power, Math.max(0, wanted));
  }
}
