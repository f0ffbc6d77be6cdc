import type { AnimalTraits } from '../life/traits.ts';
import type { SeriesId } from '../run/series.ts';
import type { Action, Routine } from './care.ts';
import type { ChangeLimit } from './change-limit.ts';
import type { Devices } from './devices.ts';
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
  /** Litter and soil of the land on the first day; none when left out. */
  readonly land?: LandStart;
  readonly bands: readonly Band[];
  /** How fast the water may be changed for those animals of whom it is known. */
  readonly changeLimits?: readonly ChangeLimit[];
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
  /** Upper edge of the panes: 'free' when left out. */
  readonly topEdge?: 'free' | 'braced';
  /** Mesh over the open part of the cover. */
  readonly coverMesh?: Mesh;
  /** Widest slit between cover and glass [m], for animals that leave; not known when left out. */
  readonly coverGap?: number;
  /** Slots in the panes through which air passes. */
  readonly vents?: readonly Vent[];
  /** Hole in a pane or stand-pipe above which water runs off. */
  readonly overflow?: { readonly height: number; readonly bore: number };
  /** Second pane before the front glass, with still air between [m]. */
  readonly secondPane?: { readonly gap: number; readonly thickness: number };
}

/** Woven mesh: open share of its area [0..1] and width of its holes [m]. */
export interface Mesh {
  readonly openShare: number;
  readonly hole: number;
}

export type PaneName = 'front' | 'back' | 'left' | 'right';

/** A slot in a pane [m]. */
export interface Vent {
  readonly name: string;
  readonly pane: PaneName;
  /** Lower edge above the inner base. */
  readonly height: number;
  readonly length: number;
  readonly opening: number;
  readonly mesh?: Mesh;
}

export type ZoneKind = 'pool' | 'margin' | 'bank' | 'stream' | 'wall' | 'canopy' | 'island' | 'cave';

/** A corner of a zone in plan: x from the left pane, y from the front pane, height of the ground there [m]. */
export interface Corner {
  readonly x: number;
  readonly y: number;
  readonly ground: number;
}

/**
 * A part with one ground build-up. Without an outline it spans the whole width of the box between two x [m]; with one,
 * `from`, `to` and the two grounds tell its ends where the section cuts it in the middle of the width.
 */
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
  /** Corners in order, at least three; the ground between them is spread by mean value coordinates. */
  readonly outline?: readonly Corner[];
  /** Slab above the ground, as over a cave: heights of its underside and of its upper face [m], and its density [kg/m3]. */
  readonly roof?: { readonly bottom: number; readonly top: number; readonly density: number };
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
  /** Dry mass per bulk volume [kg/m3]; not known when left out. */
  readonly bulkDensity?: number;
  /** Part of the layer's volume that stays wet when it drains [0..1]. */
  readonly heldWater?: number;
  /** Height to which its pores lift water [m]. */
  readonly capillaryRise?: number;
  readonly exchanger?: Exchanger;
  readonly phosphateBinder?: PhosphateBinder;
  /** Organic carbon that can leach per bulk volume, quick and slow part [mol/m3]. */
  readonly leachable?: { readonly quick: number; readonly slow: number };
}

export interface PlannedWater {
  /** Height of the water surface above the base [m]. */
  readonly level: number;
  readonly fill: WaterComposition;
  readonly topOff: WaterComposition;
}

/** Litter and active soil of the land on the first day [mol]. */
export interface LandStart {
  readonly litterCarbon: number;
  readonly litterNitrogen: number;
  readonly litterPhosphorus: number;
  readonly soilCarbon: number;
  readonly soilNitrogen: number;
  readonly soilPhosphorus: number;
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

/** Phosphate that ground binds, by a Langmuir isotherm. */
export interface PhosphateBinder {
  /** Most that it binds, per bulk volume [mol/m3]. */
  readonly sites: number;
  /** Phosphate of the water at which it holds half of that [mol/m3]. */
  readonly half: number;
  /** Part of it that it holds when new [0..1]. */
  readonly held: number;
}

/**
 * Cations that ground, peat or moss holds and exchanges. Shares of its sites [0..1]; hydrogen ions hold the rest.
 */
export interface Exchanger {
  /** Sites [eq], of a layer per bulk volume [eq/m3]. */
  readonly sites: number;
  readonly calcium: number;
  readonly magnesium: number;
  readonly sodium: number;
  readonly potassium: number;
  readonly ammonium: number;
  /** Hold on hydrogen ions over that on sodium [1], Gaines-Thomas. */
  readonly acidStrength: number;
}

/** A piece of wood, rock or carbonate, or litter, peat or moss lying in the water. */
export interface HardscapePiece {
  readonly id: string;
  readonly name: string;
  readonly kind: 'wood' | 'stone' | 'carbonate' | 'litter' | 'exchanger';
  readonly material: string;
  /** Dry mass [kg] and displaced volume [m3]. */
  readonly mass: number;
  readonly volume: number;
  /**
   * Course of the piece in the section, [x, z] in m, with its thickness there [m] and its distance from the front pane
   * [m, in the middle of the width when left out]; empty when it lies loose.
   */
  readonly course: readonly (readonly [x: number, z: number, thickness: number, y?: number])[];
  /** What it brings into the pools at the start [mol]. */
  readonly contents: Readonly<{
    woodLeachable?: number;
    woodLeachableSlow?: number;
    carbonateSolid?: number;
    aragoniteSolid?: number;
    litterCarbon?: number;
    litterNitrogen?: number;
    litterPhosphorus?: number;
    litterLeachable?: number;
  }>;
  /** Grain diameter of a carbonate [m]. */
  readonly grain?: number;
  /** Breakdown of a litter over that of oak [1]; 1 when left out. */
  readonly pace?: number;
  readonly exchanger?: Exchanger;
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
  /** Part of it that uses bicarbonate beside carbon dioxide under water [0..1]; none when left out. */
  readonly bicarbonate?: number;
  /** Breakdown of its dead parts in water over that of soft shoots [1]; the usual one of its group when left out. */
  readonly breakdown?: number;
  /** Light below which it does not last, and with which it thrives [umol/(m2 s)]. */
  readonly light?: { readonly least: number; readonly good: number };
  /** Relative growth in good light at 20 degC [1/s]. */
  readonly growth?: number;
  /** Warmest [degC] and driest air [%] it is said to bear. */
  readonly warmest?: number;
  readonly driest?: number;
  /** Part of it that animals take as food [0..1]; all of it when left out. */
  readonly edible?: number;
  /** Sprinkled or painted on as fragments instead of set as plants. */
  readonly fragments?: boolean;
  /** Probability that it came along by accident [0..1]; surely there when left out. */
  readonly chance?: number;
}

export interface Population {
  readonly id: string;
  readonly species: string;
  readonly name: string;
  readonly traits: AnimalTraits;
  readonly founders: readonly Founders[];
  /** Probability that the founders came along by accident [0..1]; surely there when left out. */
  readonly chance?: number;
  /** Calcium carbonate in shell and cuticle per body carbon [mol/mol]; none when left out. */
  readonly shell?: number;
  /** The same in animals that take it from what they eat on land: the book of the water leaves it out [mol/mol]; none when left out. */
  readonly shellOnLand?: number;
  /** What `shell` is made of; calcite when left out. */
  readonly shellMineral?: 'calcite' | 'aragonite';
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
  /** Who needs it, by the name people use: 'ramshorn snails', or 'keeper'. */
  readonly owner: string;
  readonly basis: string;
  readonly source: string;
}
