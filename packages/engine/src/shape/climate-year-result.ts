/** Heat and moisture of a plan over a year, the pool topped off every day. */
export interface ClimateYear {
  readonly months: readonly ClimateMonth[];
  /** A mean day of each month, hour by hour: 12 days of 24 values. */
  readonly days: readonly ClimateDay[];
  /** Over all days. */
  readonly year: ClimateMonth;
  /** Closure of heat and water over the year, relative. */
  readonly closure: { readonly heat: number; readonly water: number };
}

export interface ClimateMonth {
  /** 1 to 12; 0 for the whole year. */
  readonly month: number;
  /** Mean, lowest and highest hour [degC]. */
  readonly air: Spread;
  readonly water: Spread;
  readonly frontGlass: Spread;
  /** [degC] */
  readonly dewPoint: Spread;
  /** Relative humidity [0..1]. */
  readonly humidity: Spread;
  /** Mean humidity of the driest day in twenty [0..1]. */
  readonly dryDay: number;
  /** Hours a day on which the front pane is fogged: mean, and on the foggiest day in twenty. */
  readonly fog: number;
  readonly foggyDay: number;
  /** Evaporated from the open water, carried into the room, and what tops the pool off, negative where mist brings more than goes [m3/day]. */
  readonly evaporated: number;
  readonly lost: number;
  readonly topOff: number;
  /** Wetness of land and moss, 1 when soaked [0..1]; share of hours in which it is below a third. */
  readonly landWetness: number;
  readonly dryHours: number;
  /** Mean powers [W]. */
  readonly heaterPower: number;
}

export interface Spread {
  readonly mean: number;
  readonly low: number;
  readonly high: number;
}

export interface ClimateDay {
  readonly month: number;
  readonly air: readonly number[];
  readonly water: readonly number[];
  readonly frontGlass: readonly number[];
  readonly dewPoint: readonly number[];
  readonly humidity: readonly number[];
  /** Part of the hour during which the front pane is fogged [0..1]. */
  readonly fogged: readonly number[];
}

/** What the cover is asked to keep. */
export interface CoverGoal {
  /** Mean humidity of the day on 19 days of 20 [0..1]. */
  readonly humidity: number;
  /** Hours of fog on the front pane on 19 days of 20 [h/day]. */
  readonly fog: number;
}

export interface CoverOption {
  /** 'as drawn', 'room 2 K warmer', … */
  readonly name: string;
  /** Openings between which both hold [0..1]; none when both cannot be had. */
  readonly range?: { readonly from: number; readonly to: number };
  /** The opening that comes nearest, or the middle of the range, and what it gives there. */
  readonly open: number;
  readonly humidity: number;
  readonly fog: number;
  /** Mean top-off [m3/day]. */
  readonly topOff: number;
}

export interface CoverAnswer {
  readonly goal: CoverGoal;
  readonly asDrawn: CoverOption;
  /** Humidity and fog against opening, for a chart. */
  readonly curve: {
    readonly open: readonly number[];
    readonly humidity: readonly number[];
    readonly fog: readonly number[];
  };
  /** What else would help, each computed; those that reach the goal first. */
  readonly alternatives: readonly CoverOption[];
  readonly sentence: string;
}
