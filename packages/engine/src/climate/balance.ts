import { DARK_SHARE } from '../cycle/leaf-transpiration.ts';
import type { BalanceSetting } from './balance-setting.ts';
import {
  AIR,
  ANSWERS,
  GLASS,
  GROUND,
  RATIO,
  solveBalance,
  TERM,
  TERMS,
  UNKNOWNS,
  WATER,
} from './balance-system.ts';
import { Demands, TANGENT } from './demands.ts';
import { AIR_HEAT_CAPACITY, LEWIS_FACTOR, latentHeat, quietAirConductance } from './evaporation.ts';
import { type FrontSurroundings, radiationOnGlass } from './front-pane.ts';
import { MASS_RATIO, moistAirDensity, moistAirVolume } from './moist-air.ts';
import { type MoistureFlows, type MoisturePools, WATER_DENSITY } from './moisture-pools.ts';
import { type SaturationCurve, saturationCurve } from './saturation-curve.ts';

/** Latent heat at 24 degC, held constant so that heat closes [J/kg]. */
const LATENT = latentHeat(24);
/** Part of the lamps' heat that arrives as light and radiation on water and ground; the rest warms the air. @source assumed */
const RADIANT_SHARE = 0.6;

/** Wetness of the ground below which roots find less than leaves would give off [0..1]. @source fao-56, depletion of 0.5 */
const ROOTS_SHORT = 0.5;

const FAN_HALVINGS = 8;
/** Positions in `coefficient` [kg/s]: vapour from water, vapour from land, dry air exchanged with the room; leaves included. */
const FROM_WATER = 0;
const FROM_LAND = 1;
const EXCHANGE = 2;
/** Of that from water, what leaves above it give off. */
const FROM_LEAVES = 3;
/** A first pass that moves temperatures less [K], and the humidity ratio by a smaller part, is good enough. */
const NEAR = 0.2;
const NEAR_RATIO = 0.01;
/** A store gives at most this part of itself in a step at the driest air, half of it held back for warming. */
const GIVEABLE = 0.5;

/**
 * The coupled balance of heat and vapour of five stores: air, vapour, water, ground, glass.
 * One step is implicit Euler: saturation curves are replaced by tangents and transfer coefficients taken at the start;
 * where that moves the box noticeably, a second pass takes tangents at the end of the first and mean coefficients.
 */
export class HeatAndVapour {
  readonly pools: MoisturePools;
  heatIn = 0;
  heatOut = 0;
  heaterHeat = 0;
  private readonly setting: BalanceSetting;
  private readonly pressure: number;
  /** Values at the start of the step, and the latest approximation of those at its end, by unknown. */
  private readonly start = new Float64Array(UNKNOWNS);
  private readonly end = new Float64Array(UNKNOWNS);
  private readonly terms = new Float64Array(TERMS);
  private readonly answers = new Float64Array(ANSWERS);
  private readonly curve: SaturationCurve;
  private readonly tangent = new Float64Array(UNKNOWNS * TANGENT);
  private readonly demands = new Demands(this.answers, this.tangent);
  private readonly loose = new Float64Array(TANGENT);
  private readonly coefficient = new Float64Array(4);
  private readonly startCoefficient = new Float64Array(4);
  private readonly flows: MoistureFlows = {
    fromWater: 0,
    fromLand: 0,
    toRoom: 0,
    condensing: 0,
    fog: 0,
    foggedFromPool: 0,
    foggedIn: 0,
  };
  private hour = 0;
  private lampHeat = 0;
  private heaterPower = 0;
  private dryAir = 0;
  /** Leaves in full light, area over resistance [m3/s]: rooted in land, and in the pool's water. */
  private leavesOnLand = 0;
  private leavesOverWater = 0;
  /** How far leaves are open in this hour [0..1]. */
  private leavesOpen = 1;
  /** Part of full speed at which fans with a humidistat run [0..1]. */
  private fanShare = 0;

  constructor(setting: BalanceSetting) {
    this.setting = setting;
    this.pools = setting.pools;
    this.pressure = setting.room.pressure;
    this.curve = saturationCurve(this.pressure);
    const { room, heater } = setting;
    this.end.fill(room.temperature[0]!);
    this.end[RATIO] = room.humidityRatio[0]!;
    if (heater && heater.power > 0) this.end[WATER] = Math.max(this.end[WATER]!, heater.setpoint);
  }

  /** Value of an unknown at the end of the last step. */
  value(unknown: number): number {
    return this.end[unknown]!;
  }

  relativeHumidity(): number {
    this.setTangent(AIR);
    const ratio = this.end[RATIO]!;
    const saturated = this.saturatedRatio(AIR);
    return (ratio * (MASS_RATIO + saturated)) / ((MASS_RATIO + ratio) * saturated);
  }

  /** Saturated humidity ratio at any temperature [kg/kg]. */
  saturatedRatioAt(temperature: number): number {
    this.curve.tangent(temperature, this.loose, 0);
    return this.loose[0]! + this.loose[1]! * temperature;
  }

  /** What the front pane meets at the end of the last step. */
  aroundFront(hour: number): FrontSurroundings {
    const { envelope, room, air } = this.setting;
    return {
      air: this.end[AIR]!,
      ratio: this.end[RATIO]!,
      ...radiationOnGlass(envelope, this.end[WATER]!, this.end[GROUND]!),
      room: room.temperature[hour]!,
      stirred: air.stirred,
    };
  }

  /** Fills the air of the box with vapour at the present humidity ratio; for the start of a run. */
  fillAir(): void {
    this.weighAir();
    this.pools.vapour = this.dryAir * this.end[RATIO]!;
  }

  storedHeat(): number {
    const { envelope, pools } = this.setting;
    const { end } = this;
    return (
      this.dryAir * AIR_HEAT_CAPACITY * end[AIR]! +
      envelope.waterHeat * end[WATER]! +
      envelope.groundHeat * end[GROUND]! +
      envelope.glassHeat * end[GLASS]! +
      LATENT * pools.vapour
    );
  }

  /** Sets the leaves that give off water, area over resistance in full light [m3/s]. */
  setLeaves(onLand: number, overWater: number): void {
    this.leavesOnLand = onLand;
    this.leavesOverWater = overWater;
  }

  /** Sets the hour's drivers; the envelope has been refreshed before. */
  beginHour(hour: number, lampPower: number): void {
    this.hour = hour;
    this.lampHeat = lampPower * this.setting.parameters.lampHeatInside;
    this.leavesOpen = lampPower > 0 ? 1 : DARK_SHARE;
    this.heatIn = 0;
    this.heatOut = 0;
    this.heaterHeat = 0;
    this.weighAir();
    this.end[RATIO] = this.pools.vapour / this.dryAir;
    this.setting.air.set(hour % 24, this.relativeHumidity(), this.end[WATER]!, this.end[GROUND]!);
  }

  private weighAir(): void {
    // Dry air at 24 degC and 80 % RH, held constant in the hour; a few percent off at other temperatures.
    this.dryAir = this.setting.envelope.airVolume / moistAirVolume(24, 0.015, this.pressure);
  }

  /** Moves on by `dt` seconds with the pool holding `poolWater` [kg]. */
  advance(dt: number, poolWater: number): void {
    this.start.set(this.end);
    this.fanShare = 0;
    this.pass(dt);
    if (this.setting.air.gatedFlow > 0) this.settleFan(dt);
    this.bookHeat(dt);
    this.setFlows();
    this.pools.settle(this.flows, dt, poolWater);
  }

  /** From the start of the step to its end. */
  private pass(dt: number): void {
    this.setCoefficients(dt);
    this.startCoefficient.set(this.coefficient);
    this.solve(dt);
    if (!this.hasMoved()) return;
    this.setCoefficients(dt);
    for (let i = 0; i < this.coefficient.length; i++) {
      this.coefficient[i] = 0.5 * (this.coefficient[i]! + this.startCoefficient[i]!);
    }
    this.solve(dt);
  }

  /** Finds how far a humidistat turns its fans on: air is the drier the more they run, so halving is sure. */
  private settleFan(dt: number): void {
    const { air } = this.setting;
    let low = 0;
    let high = Math.min(1, air.runsAt(this.relativeHumidity()));
    for (let i = 0; i < FAN_HALVINGS && high > low; i++) {
      this.fanShare = 0.5 * (low + high);
      this.end.set(this.start);
      this.pass(dt);
      if (air.runsAt(this.relativeHumidity()) > this.fanShare) low = this.fanShare;
      else high = this.fanShare;
    }
  }

  /** True when the first pass went so far that tangents and coefficients at its start no longer serve. */
  private hasMoved(): boolean {
    const { start, end } = this;
    return (
      Math.abs(end[AIR]! - start[AIR]!) > NEAR ||
      Math.abs(end[GLASS]! - start[GLASS]!) > NEAR ||
      Math.abs(end[GROUND]! - start[GROUND]!) > NEAR ||
      Math.abs(end[WATER]! - start[WATER]!) > NEAR ||
      Math.abs(end[RATIO]! - start[RATIO]!) > NEAR_RATIO * start[RATIO]!
    );
  }

  private setTangent(unknown: number): void {
    this.curve.tangent(this.end[unknown]!, this.tangent, unknown * TANGENT);
  }

  /** Saturated humidity ratio at the latest temperature of an unknown, on its tangent. */
  private saturatedRatio(unknown: number): number {
    return this.tangent[unknown * TANGENT]! + this.tangent[unknown * TANGENT + 1]! * this.end[unknown]!;
  }

  private setCoefficients(dt: number): void {
    const { coefficient } = this;
    this.setTangent(AIR);
    this.setTangent(WATER);
    this.setTangent(GROUND);
    this.setTangent(GLASS);
    const dryDensity = 1 / moistAirVolume(this.end[AIR]!, this.end[RATIO]!, this.pressure);
    coefficient[FROM_LEAVES] = this.waterLeafConductance(dryDensity, dt);
    coefficient[FROM_WATER] = this.waterConductance(dryDensity, dt) + coefficient[FROM_LEAVES];
    coefficient[FROM_LAND] = this.landConductance(dryDensity, dt);
    coefficient[EXCHANGE] = this.airExchange();
  }

  private waterConductance(dryDensity: number, dt: number): number {
    const { envelope, parameters } = this.setting;
    const ratio = this.saturatedRatio(WATER);
    const atWater = 1 / moistAirVolume(this.end[WATER]!, ratio, this.pressure);
    const mean = 0.5 * (ratio + this.end[RATIO]!);
    const perArea = quietAirConductance(atWater, dryDensity - atWater, mean, this.pressure);
    const most = (GIVEABLE * envelope.openVolume * WATER_DENSITY) / (dt * ratio);
    return Math.min(parameters.evaporationFactor * envelope.openArea * perArea, most);
  }

  /** Leaves of plants rooted in the pool's water, rho A/r. */
  private waterLeafConductance(dryDensity: number, dt: number): number {
    if (this.leavesOverWater === 0) return 0;
    const most =
      (GIVEABLE * this.setting.envelope.openVolume * WATER_DENSITY) / (dt * this.saturatedRatio(WATER));
    return Math.min(dryDensity * this.leavesOverWater * this.leavesOpen, most);
  }

  /**
   * rho A/(r_a + r (1 - w)/w), w the wetness of the land, and leaves as long as their roots find enough, rho A/r
   * min(1, w/0.5): both vanish as it dries out.
   */
  private landConductance(dryDensity: number, dt: number): number {
    const { envelope, parameters, pools } = this.setting;
    const capacity = pools.landCapacity();
    if (!(capacity > 0)) return 0;
    const wetness = Math.min(1, pools.land / capacity);
    const resistance = parameters.airResistance * wetness + parameters.drynessResistance * (1 - wetness);
    const most = (GIVEABLE * pools.land) / (dt * this.saturatedRatio(GROUND));
    const leaves = this.leavesOnLand * this.leavesOpen * Math.min(1, wetness / ROOTS_SHORT);
    return Math.min(dryDensity * ((envelope.landArea * wetness) / resistance + leaves), most);
  }

  /** Dry air exchanged with the room: buoyancy and draught through the open cover, leakage [kg/s]. */
  private airExchange(): number {
    const { envelope, parameters, room, paths, air } = this.setting;
    const outsideDensity = room.density[this.hour]!;
    const insideDensity = moistAirDensity(this.end[AIR]!, this.end[RATIO]!, this.pressure);
    const buoyant = paths.exchange(insideDensity, outsideDensity);
    const leaking = (parameters.leakage / 3600) * envelope.airVolume;
    const flow =
      buoyant + parameters.draught * paths.area + leaking + air.roomFlow + this.fanShare * air.gatedFlow;
    return (flow * outsideDensity) / (1 + room.humidityRatio[this.hour]!);
  }

  private solve(dt: number): void {
    this.assemble(dt);
    solveBalance(this.terms, LATENT, this.answers);
    this.settleUnknowns(dt);
  }

  private assemble(dt: number): void {
    const { terms, coefficient, tangent, start, setting, hour } = this;
    const { envelope: e, parameters, room, pump, air: devices } = setting;
    const kw = coefficient[FROM_WATER]!;
    const kg = coefficient[FROM_LAND]!;
    const exchange = coefficient[EXCHANGE]!;
    const roomTemperature = room.temperature[hour]!;
    const airToWater = (kw - coefficient[FROM_LEAVES]!) * AIR_HEAT_CAPACITY * LEWIS_FACTOR;
    const airToGround =
      (e.landArea * this.dryAir * AIR_HEAT_CAPACITY) / (e.airVolume * parameters.airResistance);
    const exchangeHeat = exchange * AIR_HEAT_CAPACITY;
    const waterSlope = LATENT * kw * tangent[WATER * TANGENT + 1]!;
    const groundSlope = LATENT * kg * tangent[GROUND * TANGENT + 1]!;
    const waterBase = LATENT * kw * tangent[WATER * TANGENT]!;
    const groundBase = LATENT * kg * tangent[GROUND * TANGENT]!;
    const air = (this.dryAir * AIR_HEAT_CAPACITY) / dt;
    const vapour = (LATENT * this.dryAir) / dt;
    const water = e.waterHeat / dt;
    const ground = e.groundHeat / dt;
    const glass = e.glassHeat / dt;
    const radiant = RADIANT_SHARE * this.lampHeat;
    const onWater = radiant * e.openShare;

    terms[TERM.air] = air + airToWater + airToGround + e.airToGlass + exchangeHeat;
    terms[TERM.ratio] = vapour + LATENT * (kw + kg + exchange);
    terms[TERM.water] = water + airToWater + e.waterToGlass + e.waterToRoom + e.waterToGround + waterSlope;
    terms[TERM.ground] =
      ground + airToGround + e.groundToGlass + e.groundToRoom + e.waterToGround + groundSlope;
    terms[TERM.glass] = glass + e.airToGlass + e.waterToGlass + e.groundToGlass + e.glassToRoom;
    terms[TERM.airWater] = airToWater;
    terms[TERM.airGround] = airToGround;
    terms[TERM.airGlass] = e.airToGlass;
    terms[TERM.waterGround] = e.waterToGround;
    terms[TERM.waterGlass] = e.waterToGlass;
    terms[TERM.groundGlass] = e.groundToGlass;
    terms[TERM.waterToRatio] = LATENT * kw;
    terms[TERM.groundToRatio] = LATENT * kg;
    terms[TERM.ratioByWater] = waterSlope;
    terms[TERM.ratioByGround] = groundSlope;
    // Droplets of a fogger take their heat of evaporation from the air; those too many fall again as fog.
    const fogged = LATENT * devices.fogRate;
    terms[TERM.knownAir] =
      air * start[AIR]! + exchangeHeat * roomTemperature + this.lampHeat - radiant + devices.fanHeat - fogged;
    terms[TERM.knownRatio] =
      vapour * start[RATIO]! +
      waterBase +
      groundBase +
      LATENT * exchange * room.humidityRatio[hour]! +
      fogged;
    terms[TERM.knownWater] =
      water * start[WATER]! +
      e.waterToRoom * roomTemperature +
      onWater +
      (pump?.power ?? 0) -
      waterBase +
      devices.matToWater;
    terms[TERM.knownGround] =
      ground * start[GROUND]! +
      e.groundToRoom * roomTemperature +
      radiant -
      onWater -
      groundBase +
      devices.matToGround;
    terms[TERM.knownGlass] = glass * start[GLASS]! + e.glassToRoom * roomTemperature;
  }

  /** Adds heater, condensing and fog to the known solution. */
  private settleUnknowns(dt: number): void {
    const { demands, end, flows, setting } = this;
    const conductance = setting.envelope.airToGlass / (AIR_HEAT_CAPACITY * LEWIS_FACTOR);
    demands.settle(conductance, -setting.pools.film / dt, setting.heater);
    demands.addTo(end);
    this.heaterPower = demands.heater;
    flows.condensing = demands.condensing;
    flows.fog = demands.fog;
  }

  private setFlows(): void {
    const { coefficient, end, flows, setting, hour } = this;
    const ratio = end[RATIO]!;
    flows.fromWater = coefficient[FROM_WATER]! * (this.saturatedRatio(WATER) - ratio);
    flows.fromLand = coefficient[FROM_LAND]! * (this.saturatedRatio(GROUND) - ratio);
    flows.toRoom = coefficient[EXCHANGE]! * (ratio - setting.room.humidityRatio[hour]!);
    const { fogRate, fogFromPool } = setting.air;
    flows.foggedFromPool = fogFromPool ? fogRate : 0;
    flows.foggedIn = fogFromPool ? 0 : fogRate;
  }

  private bookHeat(dt: number): void {
    const { coefficient, end, setting, hour } = this;
    const { envelope: e, room, pump, air } = setting;
    const roomTemperature = room.temperature[hour]!;
    const gained =
      this.lampHeat + (pump?.power ?? 0) + this.heaterPower + air.fanHeat + air.matToWater + air.matToGround;
    const conducted =
      e.waterToRoom * (end[WATER]! - roomTemperature) +
      e.groundToRoom * (end[GROUND]! - roomTemperature) +
      e.glassToRoom * (end[GLASS]! - roomTemperature);
    const carried =
      coefficient[EXCHANGE]! *
      (AIR_HEAT_CAPACITY * (end[AIR]! - roomTemperature) +
        LATENT * (end[RATIO]! - room.humidityRatio[hour]!));
    this.heatIn += gained * dt;
    this.heatOut += (conducted + carried) * dt;
    this.heaterHeat += this.heaterPower * dt;
  }
}
