import {
  type AheadDocument,
  type SeriesId,
  seriesSpec,
  type TurningPoint,
  type TurningPointKind,
} from '@shoreglass/engine';
import { quantityText } from '@shoreglass/figures';

/** True for what ends the time an enclosure can be left to itself. */
export function needsKeeper(kind: TurningPointKind): boolean {
  return kind === 'falls below' || kind === 'rises above' || kind === 'dies out';
}

/** What turns; without a band of its own it is judged by the series'. */
type Turned = Pick<TurningPoint, 'subject' | 'kind'> & Partial<Pick<TurningPoint, 'band'>>;

/** What happens, as a short clause: "Carbonate hardness falls below 3 °dKH". */
export function turningClaim(document: AheadDocument, point: Turned): string {
  const { subject, kind } = point;
  const name = nameOf(document, subject);
  if (kind === 'first young') return `First young ${name}`;
  if (kind === 'dies out') return `${capital(name)} die out`;
  const limit = limitOf(document, point);
  if (kind === 'returns') return `${capital(name)} is back in its band`;
  const verb = subject.startsWith('population:')
    ? { 'falls below': 'fall below', 'rises above': 'rise above' }[kind]
    : kind;
  return `${capital(name)} ${verb} ${limit === undefined ? 'the band' : amount(subject, limit)}`;
}

/** Who sets a limit, spoken to the keeper: "amphipods", "you". */
export function ownerName(owner: string): string {
  return owner === 'keeper' ? 'you' : owner;
}

/** Whose limit it is: "the limit of amphipods", "your own limit"; empty where there is none. */
export function ownerWords(owner: string): string {
  if (owner === '') return '';
  return owner === 'keeper' ? 'your own limit' : `the limit of ${owner}`;
}

/** The budget terms behind it: "Mostly wood leaching (58 %), then nitrification (27 %)."; empty where none is known. */
export function reasonWords(because: TurningPoint['because']): string {
  const [first, second] = because.filter(({ share }) => share >= 0.05);
  if (!first) return '';
  const then = second ? `, then ${second.term} (${percent(second.share)})` : '';
  return `Mostly ${first.term} (${percent(first.share)})${then}.`;
}

export function percent(share: number): string {
  return `${Math.round(share * 100)}\u00a0%`;
}

export function nameOf(document: AheadDocument, subject: SeriesId): string {
  return document.series[subject]?.name ?? seriesSpec(subject).name;
}

/** A limit with its unit and no needless zeros: "3 °dKH", "300". */
function amount(subject: SeriesId, limit: number): string {
  const { unit, digits } = seriesSpec(subject);
  return quantityText(limit, unit === 'animals' ? '' : unit, fewestDigits(limit, digits));
}

function fewestDigits(value: number, most: number): number {
  for (let digits = 0; digits < most; digits++)
    if (Number(value.toFixed(digits)) === Number(value.toFixed(most))) return digits;
  return most;
}

function limitOf(document: AheadDocument, { subject, kind, band }: Turned): number | undefined {
  const judged = band ?? document.series[subject]?.band;
  return kind === 'falls below' ? judged?.low : judged?.high;
}

export function capital(text: string): string {
  // pH is the one name that keeps its small first letter.
  return text.startsWith('pH') ? text : text.charAt(0).toUpperCase() + text.slice(1);
}
