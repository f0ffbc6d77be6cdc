export interface SeriesSpec {
  readonly name: string;
  /** The keeper's unit, the one the series is recorded and shown in. */
  readonly unit: string;
  readonly digits: number;
}

/**
 * Daily series every run records. Populations add `population:<id>` and `population:<id>:<stage>` [animals], plantings on
 * land `planting:<id>` [% of their ground covered].
 */
export const SERIES = {
  pH: { name: 'pH', unit: '', digits: 2 },
  pHSwing: { name: 'swing of pH within the day', unit: '', digits: 2 },
  KH: { name: 'carbonate hardness', unit: '°dKH', digits: 1 },
  GH: { name: 'general hardness', unit: '°dGH', digits: 1 },
  conductivity: { name: 'conductivity', unit: 'µS/cm', digits: 0 },
  totalAmmonia: { name: 'total ammonia', unit: 'mg N/L', digits: 3 },
  unionisedAmmonia: { name: 'un-ionised ammonia', unit: 'mg N/L', digits: 4 },
  nitrite: { name: 'nitrite', unit: 'mg N/L', digits: 3 },
  nitrate: { name: 'nitrate', unit: 'mg N/L', digits: 1 },
  phosphate: { name: 'phosphate', unit: 'mg P/L', digits: 3 },
  oxygen: { name: 'dissolved oxygen', unit: 'mg/L', digits: 1 },
  oxygenLow: { name: 'lowest dissolved oxygen of the day', unit: 'mg/L', digits: 1 },
  oxygenHigh: { name: 'highest dissolved oxygen of the day', unit: 'mg/L', digits: 1 },
  copper: { name: 'copper', unit: 'µg/L', digits: 1 },
  dissolvedOrganicCarbon: { name: 'coloured organic carbon', unit: 'mg C/L', digits: 1 },
  colour: { name: 'colour of the water', unit: 'mg Pt/L', digits: 0 },
  waterTemperature: { name: 'water temperature', unit: '°C', digits: 1 },
  airTemperature: { name: 'air temperature', unit: '°C', digits: 1 },
  relativeHumidity: { name: 'relative humidity', unit: '%', digits: 0 },
  glassFog: { name: 'fog on the front glass', unit: 'h/d', digits: 1 },
  waterVolume: { name: 'water volume', unit: 'L', digits: 1 },
  waterLevel: { name: 'water level', unit: 'cm', digits: 1 },
  topOff: { name: 'top-off', unit: 'L/d', digits: 2 },
  attachedAlgae: { name: 'attached algae', unit: 'g dry/m²', digits: 2 },
  plantCover: { name: 'cover of submerged plants', unit: '%', digits: 0 },
  floatingCover: { name: 'cover of floating plants', unit: '%', digits: 0 },
  emersedCover: { name: 'cover of plants rooted in wet ground', unit: '%', digits: 0 },
  transpiration: { name: 'water given off by plants on land', unit: 'L/d', digits: 3 },
  suspendedAlgae: { name: 'algae in the water', unit: 'mg dry/L', digits: 2 },
  detritus: { name: 'detritus', unit: 'g dry', digits: 2 },
  litter: { name: 'leaf litter in the water', unit: 'g dry', digits: 1 },
  woodMould: { name: 'mould on bare wood', unit: '%', digits: 0 },
  carbonateSolid: { name: 'solid carbonate left', unit: 'g', digits: 1 },
} as const satisfies Record<string, SeriesSpec>;

export type FixedSeriesId = keyof typeof SERIES;
export type SeriesId = FixedSeriesId | `population:${string}` | `planting:${string}`;

/** Cover of a planting on land. */
const PLANTING: SeriesSpec = { name: 'cover', unit: '%', digits: 0 };

/** Name, unit and digits of any series; populations count animals, plantings are covers. */
export function seriesSpec(id: SeriesId): SeriesSpec {
  if (id in SERIES) return SERIES[id as FixedSeriesId];
  const [kind, population = '', stage] = id.split(':');
  if (kind === 'planting') return { ...PLANTING, name: `cover of ${population}` };
  return { name: stage ? `${population}, ${stage}` : population, unit: 'animals', digits: 0 };
}
