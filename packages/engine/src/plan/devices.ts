import type { WaterComposition } from './water-composition.ts';

/** What runs on electricity in or at the glass; what it has none of is left out. */
export interface Devices {
  readonly lamps: readonly Lamp[];
  readonly heater?: Heater;
  readonly pump?: Pump;
  readonly mister?: Mister;
  readonly fogger?: Fogger;
  readonly fans?: readonly Fan[];
  readonly mats?: readonly HeatMat[];
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
  /** Part of its full power at which it runs, counted in `power` and `photonFlux` already (0..1); 1 when left out. */
  readonly dimmedTo?: number;
  /** Middle of the luminous panel, z above the inner base, and its sides along x and y [m]; over the middle when left out. */
  readonly panel?: {
    readonly x: number;
    readonly y: number;
    readonly z: number;
    readonly length: number;
    readonly breadth: number;
  };
  /** Degree of protection, such as 'IP65'. */
  readonly protection?: string;
}

export interface Heater {
  readonly power: number;
  readonly setpoint: number;
}

/** A mat under the base or behind a pane. */
export interface HeatMat {
  readonly name: string;
  /** [W] */
  readonly power: number;
  readonly under: 'water' | 'land' | 'all';
  /** Ground or water temperature above which it is off [degC]; always on in its hours when left out. */
  readonly setpoint?: number;
  readonly onAt: number;
  readonly hours: number;
}

export interface Fan {
  readonly name: string;
  /** [W] */
  readonly power: number;
  /** Air moved [m3/s]. */
  readonly flow: number;
  /** 'room' draws room air through the box; 'inside' stirs the box air along the front glass. */
  readonly moves: 'room' | 'inside';
  readonly onAt: number;
  readonly hours: number;
  /** Runs only while the box air is more humid than this [0..1]. */
  readonly above?: number;
}

/** Ultrasonic fogger. */
export interface Fogger {
  readonly name: string;
  /** [W] */
  readonly power: number;
  /** Water made into fog while it runs [kg/s]. */
  readonly rate: number;
  readonly from: 'pool' | 'reservoir';
  /** Hours of the day at which it starts, and hours it runs each time. */
  readonly at: readonly number[];
  readonly hours: number;
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
  /** What its label tells; `flow` is worked out from it when the file gives no flow. */
  readonly curve?: { readonly shutOffHead: number; readonly freeFlow: number; readonly exponent: number };
  /** Height of the outlet above the inner base [m]. */
  readonly outlet?: number;
  readonly hose?: Hose;
  /** Width of the lip or stream bed over which the water returns [m]. */
  readonly lip?: number;
  readonly filter?: FilterBed;
}

export interface Hose {
  /** [m] */
  readonly length: number;
  readonly bore: number;
  readonly elbows: number;
  readonly valves: number;
}

/** Foam or gravel that all the pumped water passes. */
export interface FilterBed {
  readonly kind: 'foam' | 'gravel';
  /** Cross-section [m2] and thickness in the direction of flow [m]. */
  readonly area: number;
  readonly thickness: number;
  /** Pores per inch of a foam, or grain diameter of gravel [m]. */
  readonly pores?: number;
  readonly grain?: number;
}

export interface Mister {
  readonly name: string;
  /** Water sprayed a day [kg]. */
  readonly dailyMass: number;
  /** Hours of the day at which it sprays, equal shares. */
  readonly at: readonly number[];
  /** What it sprays; free of salts when left out. */
  readonly water?: WaterComposition;
}
