export type PaletteName = 'day' | 'night';

/** Named inks; a figure names the ink, never the colour. */
export interface Palette {
  readonly name: PaletteName;
  readonly paper: string;
  /** Slightly lifted paper, behind things that can be accepted or dragged. */
  readonly raised: string;
  readonly ink: string;
  /** Second voice: intervals, axes, notes. Still at least 4.5:1 on paper and raised. */
  readonly softInk: string;
  readonly rule: string;
  readonly water: string;
  readonly waterDeep: string;
  readonly moss: string;
  readonly mossDeep: string;
  readonly soil: string;
  readonly soilDeep: string;
  readonly litter: string;
  readonly wood: string;
  readonly stone: string;
  readonly algae: string;
  /** Only for what needs the keeper, and for the chosen day. */
  readonly vermilion: string;
  /** The range in which those who live there are fine, and its edge. */
  readonly band: string;
  readonly bandEdge: string;
  /** Outlook fan: 5-95 % and 25-75 %. */
  readonly fanOuter: string;
  readonly fanInner: string;
}

export type Ink = Exclude<keyof Palette, 'name'>;

const DAY: Palette = {
  name: 'day',
  paper: '#f6f1e4',
  raised: '#fbf8ef',
  ink: '#24302c',
  softInk: '#60665a',
  rule: '#cfc6b0',
  water: '#a9cfcb',
  waterDeep: '#6fa6a6',
  moss: '#83945a',
  mossDeep: '#5f7040',
  soil: '#9a7a56',
  soilDeep: '#75593a',
  litter: '#bf8a4b',
  wood: '#c39a66',
  stone: '#aaa69a',
  algae: '#6e8a3a',
  vermilion: '#b23f25',
  band: '#e6e5cd',
  bandEdge: '#a3a982',
  fanOuter: '#b9d3cf',
  fanInner: '#86b1af',
};

const NIGHT: Palette = {
  name: 'night',
  paper: '#14100b',
  raised: '#1c150e',
  ink: '#e9b877',
  softInk: '#b08850',
  rule: '#43341f',
  water: '#3a2c14',
  waterDeep: '#5d461b',
  moss: '#6a5522',
  mossDeep: '#85692a',
  soil: '#543a1f',
  soilDeep: '#7a5730',
  litter: '#7d5022',
  wood: '#6b4722',
  stone: '#5c4a30',
  algae: '#6f5f20',
  vermilion: '#e0603a',
  band: '#241c10',
  bandEdge: '#66502c',
  fanOuter: '#3f2d16',
  fanInner: '#6b4b22',
};

export function palette(name: PaletteName): Palette {
  return name === 'night' ? NIGHT : DAY;
}
