import type { AnimalTraits } from '../life/traits.ts';
import type { SeriesId } from '../run/series.ts';
import type { Action, Routine } from './care.ts';
import type { PriorTable } from './prior.ts';
import type { WaterComposition } from './water-composition.ts';

/**
 * An enclosure ready to be run: the keeper's file with every reference to the library resolved.
 * SI throughout: m, kg, mol, s, W, Pa, degC; concentrations in mol/m3 (= mmol/L).
 * x runs along the length from the left pane, z upwards from the inner base.
 */
export interface Plan {
  readonly id: string;
  readonly name: string;
  /** First day of the run, ISO date; sets the season. */
  readonly startDate: string;
  readonly box: Box;
  readonly zones: readonly Zone[];
  readonly water: PlannedWater;
  readonly start: LivingStart;
  readonly room: Room;
  readonly devices: Devices;
  readonly hardscape: readonly HardscapePiece[];
  readonly plants: readonly Planting[];
  readonly populations: readonly Population[];
  readonly routines: readonly Routine[];
  readonly actions: readonly Action[];
  readonly bands: readonly Band[];
  /** Values and spread of every process parameter, by process id and key. */
  readonly priors: PriorTable;
  /** What the file holds that the engine does not model yet, one sentence each. */
  readonly notModelled: readonly string[];
}

/** Inner dimensions of the glass [m] and its cover. */
export interface Box {
  readonly length: number;
  readonly width: number;
  readonly height: number;
  readonly glassThickness: number;
  /** Open part of the top [0..1] and the share of light the closed part lets through [0..1]. */
  readonly coverOpenFraction: number;
  readonly coverTransmission: number;
}

export type ZoneKind = 'pool' | 'margin' | 'bank' | 'stream' | 'wall' | 'canopy';

/** A part with one ground build-up, spanning the whole width of the box between two x [m]. */
export interface Zone {
  readonly id: string;
  readonly name: string;
  readonly kind: ZoneKind;
  readonly from: number;
  readonly to: number;
  /** Height of the ground surface at `from` and at `to` [m]; straight in between. */
  readonly groundStart: number;
  readonly groundEnd: number;
  /** Bottom up; the topmost layer reaches the ground surface whatever its thickness says. */
  readonly layers: readonly Layer[];
}

export type LayerKind = 'false bottom' | 'drainage' | 'foam' | 'mesh' | 'substrate' | 'litter';

export interface Layer {
  readonly kind: LayerKind;
  readonly material: string;
  readonly name: string;
  /** [m] */
  readonly thickness: number;
  /** Part of the layer's volume that water fills when it is below the water level [0..1]. */
  readonly porosity: number;
  /** Surface per bulk volume on which films grow, when submerged [m2/m3]. */
  readonly filmSurface: number;
}

export interface PlannedWater {
  /** Height of the water surface above the base [m]. */
  readonly level: number;
  readonly fill: WaterComposition;
  readonly topOff: WaterComposition;
}

/** Living and dead pools in the water on the first day [mol C], medians; members vary them. */
export interface LivingStart {
  /** From a matured filter: biomass = capacity x yield / maximum growth; a new one has a trace. */
  readonly ammoniaOxidisers: number;
  readonly nitriteOxidisers: number;
  readonly attachedAlgae: number;
  readonly detritusCarbon: number;
}

/** Room climate: a seasonal course, or hourly series that repeat when the run is longer. */
export interface Room {
  readonly temperature: SeasonalCourse;
  /** Relative humidity [0..1]. */
  readonly humidity: SeasonalCourse;
  readonly series?: RoomSeries;
  /** CO2 in dry air [umol/mol]. */
  readonly carbonDioxide: number;
  /** [Pa] */
  readonly pressure: number;
}

/** mean + yearAmplitude cos(2 pi (day - peakDay) / 365.25) + dayAmplitude cos(2 pi (hour - 15) / 24). */
export interface SeasonalCourse {
  readonly mean: number;
  readonly yearAmplitude: number;
  readonly peakDay: number;
  readonly dayAmplitude: number;
}

export interface RoomSeries {
  readonly name: string;
  readonly source: string;
  /** Hourly, degC, starting at midnight of the first day. */
  readonly temperature: Float64Array;
  /** Hourly, relative humidity 0..1. */
  readonly humidity: Float64Array;
}

export interface Devices {
  readonly lamps: readonly Lamp[];
  readonly heater?: Heater;
  readonly pump?: Pump;
  readonly mister?: Mister;
}
export interface Lamp {
  readonly name: string;
  /** Electrical input [W]. */
  readonly power: number;
  /** Photons 400-700 nm that reach the plane of the cover [umol/s]. */
  readonly photonFlux: number;
  /** Hour of the day at which it turns on, and hours lit. */
  readonly onAt: number;
  readonly hours: number;
}
export interface Heater {
  readonly power: number;
  readonly setpoint: number;
}
export interface Pump {
  readonly name: string;
  readonly power: number;
  /** Water moved [m3/s]. */
  readonly flow: number;
  /** Free fall of the return [m]; 0 when it enters below the surface. */
  readonly fallHeight: number;
  /** Surface for films inside the filter [m2]. */
  readonly filmSurface: number;
}
export interface Mister {
  readonly name: string;
  /** Water sprayed a day [kg]. */
  readonly dailyMass: number;
  /** Hours of the day at which it sprays, equal shares. */
  readonly at: readonly number[];
}

/** A piece of wood, rock or carbonate, or litter spread on the pool floor. */
export interface HardscapePiece {
  readonly id: string;
  readonly name: string;
  readonly kind: 'wood' | 'stone' | 'carbonate' | 'litter';
  readonly material: string;
  /** Dry mass [kg] and displaced volume [m3]. */
  readonly mass: number;
  readonly volume: number;
  /** Course of the piece in the section, [x, z] in m, with its thickness there [m]; empty when it lies loose. */
  readonly course: readonly (readonly [x: number, z: number, thickness: number])[];
  /** What it brings into the pools at the start [mol]. */
  readonly contents: Readonly<{
    woodLeachable?: number;
    carbonateSolid?: number;
    litterCarbon?: number;
    litterNitrogen?: number;
    litterPhosphorus?: number;
    litterLeachable?: number;
  }>;
  /** Grain diameter of a carbonate [m]. */
  readonly grain?: number;
}

export type PlantGroup = 'submerged' | 'floating' | 'moss' | 'emersed' | 'land';

export interface Planting {
  readonly id: string;
  readonly name: string;
  readonly group: PlantGroup;
  readonly zone: string;
  /** Part of the zone's ground covered at the start [0..1]. */
  readonly cover: number;
  /** Biomass at full cover [mol C/m2]. */
  readonly fullCoverBiomass: number;
}

export interface Population {
  readonly id: string;
  readonly species: string;
  readonly name: string;
  readonly traits: AnimalTraits;
  readonly founders: readonly Founders[];
  /** Where on the section its label points: the zone it mostly uses. */
  readonly zone: string;
}
export interface Founders {
  readonly stage: 'juvenile' | 'adult';
  readonly count: number;
}

/** The range in which a quantity is fine for somebody who lives there. */
export interface Band {
  readonly series: SeriesId;
  readonly low?: number;
  readonly high?: number;
  /** First day of the run on which the owner lives here; 0 when left out. */
  readonly fromDay?: number;
  /** Who needs it: 'Gammarus pulex', 'keeper'. */
  readonly owner: string;
  readonly basis: string;
  readonly source: string;
}
