import { type AheadDocument, type SeriesId, seriesSpec } from '@shoreglass/engine';
import { dateLabel, quantityText } from '@shoreglass/figures';

/** "14 May: 7.42; nine runs in ten between 7.30 and 7.55." */
export function dayValueWords(document: AheadDocument, id: SeriesId, day: number): string {
  const series = document.series[id];
  const at = Math.min(Math.max(0, Math.round(day)), (series?.days.length ?? 1) - 1);
  const [low, median, high] = [series?.q05[at], series?.q50[at], series?.q95[at]];
  if (low === undefined || median === undefined || high === undefined) return '';
  const { unit, digits } = seriesSpec(id);
  const date = dateLabel(document.enclosure.startDate, at);
  const middle = `${date}: ${quantityText(median, unit, digits)}`;
  const [from, to] = [quantityText(low, '', digits), quantityText(high, '', digits)];
  if (document.run.members <= 1 || from === to) return `${middle}.`;
  return `${middle}; nine runs in ten between ${from} and ${to}.`;
}
