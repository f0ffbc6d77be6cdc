import { type Band, convert, MOLAR_MASS, type RecipeQuantity, type RecipeTarget } from '@shoreglass/engine';

/** A target drawn from those who live in the enclosure, and who asks for each end of it. */
export interface BandTarget {
  readonly target: RecipeTarget;
  readonly lowBy?: string;
  readonly highBy?: string;
  /** Whether one needs more than another bears; the target then has no limits, and its aim lies between the two. */
  readonly conflict?: string;
}

/** Series that a recipe decides, and their value in the plan's unit. */
const DECIDED = {
  GH: { quantity: 'GH', plain: (value: number) => convert(value, '°dGH', 'mol/m³'), unit: '°dGH' },
  KH: { quantity: 'KH', plain: (value: number) => convert(value, '°dKH', 'meq/L'), unit: '°dKH' },
  conductivity: { quantity: 'conductivity', plain: (value: number) => value, unit: 'µS/cm' },
  nitrate: {
    quantity: 'nitrate',
    plain: (value: number) => value / MOLAR_MASS.nitrogen,
    unit: 'mg N/L',
  },
} as const satisfies Record<string, { quantity: RecipeQuantity; plain: (v: number) => number; unit: string }>;

type DecidedSeries = keyof typeof DECIDED;

/** Quantities a recipe aims at; the others it only keeps below or above. */
const AIMED: readonly RecipeQuantity[] = ['GH', 'KH'];

/**
 * Where in a band to aim: half again above what is needed, but not beyond the geometric middle: evaporation and
 * feeding raise hardness, and less is to be weighed. @source assumed
 */
function aimWithin(low: number | undefined, high: number | undefined): number | undefined {
  if (low === undefined) return undefined;
  if (high === undefined) return 1.5 * low;
  return low > 0 ? Math.min(1.5 * low, Math.sqrt(low * high)) : high / 4;
}

function ends(bands: readonly Band[], series: DecidedSeries) {
  const mine = bands.filter((band) => band.series === series);
  const lows = mine.filter((band) => band.low !== undefined).sort((a, b) => (b.low ?? 0) - (a.low ?? 0));
  const highs = mine.filter((band) => band.high !== undefined).sort((a, b) => (a.high ?? 0) - (b.high ?? 0));
  return { low: lows[0], high: highs[0] };
}

function targetOf(bands: readonly Band[], series: DecidedSeries): BandTarget[] {
  const { low: needy, high: frail } = ends(bands, series);
  const { quantity, plain, unit } = DECIDED[series];
  const low = needy?.low === undefined ? undefined : plain(needy.low);
  const high = frail?.high === undefined ? undefined : plain(frail.high);
  if (low === undefined && high === undefined) return [];
  const by = {
    ...(needy && low !== undefined ? { lowBy: needy.owner } : {}),
    ...(frail && high !== undefined ? { highBy: frail.owner } : {}),
  };
  if (low !== undefined && high !== undefined && low > high)
    return [
      {
        target: { quantity, aim: (low + high) / 2 },
        ...by,
        conflict: `${series} is to be at least ${needy?.low} ${unit} for ${needy?.owner} and at most ${frail?.high} ${unit} for ${frail?.owner}: no water suits both, and the recipe aims between.`,
      },
    ];
  const aim = AIMED.includes(quantity) ? aimWithin(low, high) : undefined;
  const target: RecipeTarget = {
    quantity,
    ...(low === undefined ? {} : { low }),
    ...(aim === undefined ? {} : { aim }),
    ...(high === undefined ? {} : { high }),
  };
  return [{ target, ...by }];
}

/** What those who live in an enclosure ask of its water, from their bands in the units of the series. */
export function targetsOfBands(bands: readonly Band[]): BandTarget[] {
  return (Object.keys(DECIDED) as DecidedSeries[]).flatMap((series) => targetOf(bands, series));
}
