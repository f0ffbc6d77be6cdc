import { type AheadDocument, type SeriesId, seriesSpec } from '@shoreglass/engine';
import { quantityText } from '@shoreglass/figures';
import { ownerWords } from '../../../outlook/turning-words.ts';

/** How a reading stands to those who live there and to the outlook of that day. */
export interface Standing {
  /** "below 3 °dKH, the limit of amphipods" or "within the band" */
  readonly band: string;
  /** Outside somebody's band. */
  readonly alarm: boolean;
  /** "higher than nineteen runs in twenty (5.1 to 5.8)"; empty without an outlook of that day. */
  readonly outlook: string;
}

export function standingOf(
  document: AheadDocument,
  id: SeriesId,
  { value, day }: { readonly value: number; readonly day: number | undefined },
): Standing | undefined {
  const series = document.series[id];
  if (!series) return undefined;
  return { ...bandStanding(series, id, value), outlook: outlookStanding(document, id, { value, day }) };
}

function bandStanding(
  { band }: AheadDocument['series'][string],
  id: SeriesId,
  value: number,
): Pick<Standing, 'band' | 'alarm'> {
  const { low, high, lowOwner = '', highOwner = '' } = band ?? {};
  if (low === undefined && high === undefined) return { band: 'Nobody here sets a limit.', alarm: false };
  const limit = (edge: number, owner: string) => `${amount(id, edge)}, ${ownerWords(owner)}`;
  if (low !== undefined && value < low) return { band: `Below ${limit(low, lowOwner)}.`, alarm: true };
  if (high !== undefined && value > high) return { band: `Above ${limit(high, highOwner)}.`, alarm: true };
  return { band: 'Within the band of those who live here.', alarm: false };
}

function outlookStanding(
  document: AheadDocument,
  id: SeriesId,
  { value, day }: { readonly value: number; readonly day: number | undefined },
): string {
  const series = document.series[id];
  if (day === undefined || !series || document.run.members <= 1) return '';
  const [low, high] = [series.q05[day], series.q95[day]];
  if (low === undefined || high === undefined) return '';
  const range = `${amount(id, low)} to ${amount(id, high)}`;
  if (value < low) return `Lower than nineteen runs in twenty (${range}).`;
  if (value > high) return `Higher than nineteen runs in twenty (${range}).`;
  return `As computed: nine runs in ten lie within ${range}.`;
}

function amount(id: SeriesId, value: number): string {
  const { unit, digits } = seriesSpec(id);
  return quantityText(value, unit, digits);
}
