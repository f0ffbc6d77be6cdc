import type { PaneName, ZoneKind } from '../plan/plan.ts';

/**
 * Everything a plan's shape tells before anything is bought: SI units throughout (m, m2, m3, kg, N, Pa, W, s,
 * umol/(m2 s), mol/(m2 day)); heights above the inner base, x from the left pane, y from the front pane.
 */
export interface ShapeSheet {
  readonly geometry: GeometryFigures;
  readonly zones: readonly ZoneFigures[];
  readonly masses: MassFigures;
  readonly structure: StructureFigures;
  /** Left out when nothing pumps. */
  readonly flow?: FlowFigures;
  readonly light: LightFigures;
  /** What speaks against the plan as drawn, worst first. */
  readonly remarks: readonly ShapeRemark[];
  /** What to mind beside the equipment and work it concerns. */
  readonly cautions: readonly ShapeCaution[];
}

/** Something that needs a look: place in the plan, what is wrong, how to mend it. */
export interface ShapeRemark {
  readonly severity: 'blocking' | 'warning' | 'note';
  /** Place in the plan, such as `zones.bank.outline` or `devices.pump.curve`. */
  readonly place: string;
  readonly message: string;
  readonly mend: string;
  readonly source?: string;
}

export interface ShapeCaution {
  /** Part of the plan it belongs beside. */
  readonly place:
    | 'glass'
    | 'cover'
    | 'lamps'
    | 'heater'
    | 'pump'
    | 'mister'
    | 'fogger'
    | 'fans'
    | 'mats'
    | 'ground'
    | 'hardscape'
    | 'building';
  readonly message: string;
}

export interface GeometryFigures {
  readonly level: number;
  /** All liquid, of it above the ground, and in the pores of the ground below the level [m3]. */
  readonly waterVolume: number;
  readonly openVolume: number;
  readonly poreVolume: number;
  /** Full to the lowest opening [m3]. */
  readonly capacity: number;
  /** Free water surface, land in plan, upright faces of ground and walls above the water [m2]. */
  readonly surfaceArea: number;
  readonly landArea: number;
  readonly wallArea: number;
  /** Ground from 3 cm below to 5 cm above the water, in plan [m2]. */
  readonly marginArea: number;
  /** Everything under water on which films grow; and with the inside of soaked layers [m2]. */
  readonly submergedArea: number;
  readonly filmArea: number;
  /** Bulk volume of all ground, of its topsoil (substrate and litter layers above the water), of the hardscape under water [m3]. */
  readonly groundVolume: number;
  readonly soilVolume: number;
  readonly displaced: number;
  readonly airVolume: number;
  readonly lowestOpening: { readonly name: string; readonly height: number };
  /** Lowest opening less level [m]. */
  readonly freeboard: number;
  /** Volume and surface against level, for a chart: same length, ascending. */
  readonly curve: {
    readonly levels: readonly number[];
    readonly volumes: readonly number[];
    readonly areas: readonly number[];
  };
  readonly field: FieldFigures;
  readonly escapes: EscapeFigures;
  readonly gaps: readonly GapFigure[];
}

/** The height field of the ground in plan, row by row from the front pane, each row from the left pane. */
export interface FieldFigures {
  readonly columns: number;
  readonly rows: number;
  /** Size of a cell along x and y [m]. */
  readonly cellLength: number;
  readonly cellWidth: number;
  /** Top of the ground in the middle of each cell [m], `rows * columns` values. */
  readonly ground: readonly number[];
  /** Position in `zones` of the zone of each cell, -1 for bare base. */
  readonly zone: readonly number[];
  /** Water volume on this grid against one of twice the cell size, relative. */
  readonly convergence: number;
}

/** Ways out of the water for animals that do not swim for long. */
export interface EscapeFigures {
  /** Length of the shoreline, of it with a ground of at most 45 degrees [m]. */
  readonly shoreline: number;
  readonly climbable: number;
  /** Pieces of hardscape that pass through the water surface. */
  readonly pieces: readonly string[];
  readonly hasWayOut: boolean;
}

/** An opening through which animals may leave. */
export interface GapFigure {
  readonly place: string;
  readonly name: string;
  /** Largest body that passes: width [m]. */
  readonly width: number;
}

export type Drainage = 'under water' | 'soggy' | 'moist' | 'drains';

export interface ZoneFigures {
  readonly id: string;
  readonly name: string;
  readonly kind: ZoneKind;
  /** In plan, of it under water [m2]. */
  readonly area: number;
  readonly waterArea: number;
  readonly lowest: number;
  readonly highest: number;
  /** Steepest slope of its ground [m/m]; upright steps at its border are not counted. */
  readonly steepest: number;
  /** Water above it [m3], mean depth over its water area and greatest depth [m]. */
  readonly waterVolume: number;
  readonly meanDepth: number;
  readonly greatestDepth: number;
  /** Bulk volume of substrate and litter layers [m3]. */
  readonly soilVolume: number;
  /** Height to which its pores lift the water [m], and how much of its ground above that drains freely [m]. */
  readonly wetFront: number;
  readonly drainHeight: number;
  readonly drainage: Drainage;
}

export interface MassFigures {
  readonly parts: readonly { readonly name: string; readonly mass: number }[];
  readonly total: number;
  /** Total without water, as when it is emptied for moving [kg]. */
  readonly drained: number;
  /** Mean pressure on the outer footprint [Pa] and line load on each of the two long sides of a stand [N/m]. */
  readonly floorPressure: number;
  readonly standLineLoad: number;
  /** Bodies that float up when the water reaches them: net uplift [N], positive when it has to be held down, and its place in the plan. */
  readonly uplift: readonly { readonly name: string; readonly force: number; readonly place: string }[];
  readonly assumption: string;
}

export interface PaneCase {
  /** Water depth against the pane [m]. */
  readonly depth: number;
  readonly stress: number;
  readonly deflection: number;
  /** Strength taken over stress. */
  readonly factor: number;
}

export interface PaneFigures {
  readonly pane: PaneName;
  readonly length: number;
  readonly height: number;
  /** At the planned level, or the ground against it where that is higher; full to the rim; and full with the other top edge. */
  readonly planned?: PaneCase;
  readonly full?: PaneCase;
  readonly otherEdge?: PaneCase;
  /** Greatest depth at which the allowed stress is kept [m]. */
  readonly fillTo?: number;
  /** Least thickness for the allowed stress when full, and the next stock thickness [m]. */
  readonly least?: number;
  readonly stock?: number;
  /** Why there is no figure. */
  readonly outside?: string;
}

export interface StructureFigures {
  readonly topEdge: 'free' | 'braced';
  readonly thickness: number;
  /** Working stress taken for annealed glass under lasting load [Pa]. */
  readonly allowedStress: number;
  readonly panes: readonly PaneFigures[];
  /** Sentences: what the figures say, what they assume, when to ask a professional. */
  readonly advice: readonly string[];
  readonly silicone: {
    /** Length of all joints [m], bonded area [m2], volume with 15 % waste [m3], cartridges of 310 mL. */
    readonly jointLength: number;
    readonly area: number;
    readonly volume: number;
    readonly cartridges: number;
    /** Time a bead of this thickness cures through, and time before filling [s]. */
    readonly throughCure: number;
    readonly beforeFilling: number;
  };
  readonly foam?: {
    /** Volume sprayed [m3], cans of 750 mL at half their yield, time to leave it [s]. */
    readonly volume: number;
    readonly cans: number;
    readonly cure: number;
  };
}

export interface OperatingFigures {
  readonly flow: number;
  /** Head the pump gives there, of it lift and losses in hose, fittings and filter [m]. */
  readonly head: number;
  readonly lift: number;
  readonly hoseLoss: number;
  readonly fittingLoss: number;
  readonly filterLoss: number;
  /** Turnovers of the whole water in an hour. */
  readonly turnover: number;
}

export interface FlowFigures {
  /** Clean; half clogged; and fouled, the filter at a hundredth of its permeability with biofilm in the hose. */
  readonly clean: OperatingFigures;
  readonly halfFouled: OperatingFigures;
  readonly fouled: OperatingFigures;
  /** Flow and head of pump and of the way, for a chart; left out when the pump has no curve. */
  readonly curve?: {
    readonly flows: readonly number[];
    readonly pump: readonly number[];
    readonly clean: readonly number[];
    readonly fouled: readonly number[];
  };
  /** Share of the water that has passed the filter once in an hour, evenly mixed [0..1]. */
  readonly filteredInHour: number;
  /** Speed in the hose and through the filter bed [m/s]. */
  readonly hoseSpeed?: number;
  readonly bedSpeed?: number;
  readonly sheet?: {
    /** Flow by width of the lip [m2/s], depth on the lip, thickness where it lands, how far it lands from the lip [m]. */
    readonly perWidth: number;
    readonly depth: number;
    readonly thickness: number;
    readonly reach: number;
    readonly isClosed: boolean;
  };
  /** Water thrown out of the fall as fine drops [m3/day], order of magnitude. */
  readonly splash: number;
  /** What comes back when the pump stops. */
  readonly stop: {
    readonly drainBack: number;
    /** Rise of the level, and freeboard left [m]. */
    readonly rise: number;
    readonly freeboardLeft: number;
  };
  readonly assumption: string;
}

export interface ZoneLight {
  readonly zone: string;
  readonly name: string;
  /** On the ground above the water, or at the bottom under it: lowest, mean, highest [umol/(m2 s)]; mean light of a day. */
  readonly lowest: number;
  readonly mean: number;
  readonly highest: number;
  readonly daily: number;
}

export interface PlantLight {
  readonly planting: string;
  readonly name: string;
  readonly zone: string;
  /** At the height of the plant [umol/(m2 s)] and its day [mol/(m2 day)]. */
  readonly light: number;
  readonly daily: number;
  readonly least?: number;
  readonly good?: number;
  readonly verdict: 'too dark' | 'lasts' | 'thrives' | 'not known';
}

export interface LightFigures {
  /** Mean at the water plane [umol/(m2 s)], and mean light of a day [mol/(m2 day)]; hours with light. */
  readonly atWater: number;
  readonly daily: number;
  readonly hours: number;
  /** Attenuation of the water taken [1/m]. */
  readonly attenuation: number;
  readonly zones: readonly ZoneLight[];
  /** Light by depth below the water surface, mean over the pool: same length. */
  readonly depths: readonly number[];
  readonly byDepth: readonly number[];
  readonly plants: readonly PlantLight[];
  /** Places where algae will like it: zones whose wet ground gets more than 100 umol/(m2 s) or 4 mol/(m2 day). */
  readonly algae: readonly { readonly zone: string; readonly light: number; readonly why: string }[];
  readonly assumption: string;
}
