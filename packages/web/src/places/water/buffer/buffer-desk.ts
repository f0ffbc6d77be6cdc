import { type Band, type BufferQuestion, convert, type Plan } from '@shoreglass/engine';
import type { Shelf } from '../../../worker/messages.ts';
import { isAmount } from '../amount/read-amount.ts';
import { readWritten, type Written } from '../amount/written.ts';

/** The question as it is laid out: carbonates ticked, days and limits as typed. */
export interface BufferDesk {
  readonly materials: readonly string[];
  /** Half and double the usual grain are tried as well. */
  readonly otherGrains: boolean;
  readonly days: Written | undefined;
  readonly probability: number;
  /** Limits to hold instead of those of the inhabitants; empty where theirs count. */
  readonly leastKH: Written | undefined;
  readonly leastPH: Written | undefined;
  readonly mostPH: Written | undefined;
}

/** How sure one may want to be, as shares of the runs. */
export const SURE = [0.5, 0.8, 0.9, 0.95] as const;

export function firstBufferDesk(shelf: Shelf, days: number): BufferDesk {
  const usual = shelf.carbonates.find(({ material }) => material === 'crushed-coral') ?? shelf.carbonates[0];
  return {
    materials: usual ? [usual.material] : [],
    otherGrains: false,
    days: { text: String(days), unit: 'd' },
    probability: 0.9,
    leastKH: undefined,
    leastPH: undefined,
    mostPH: undefined,
  };
}

interface QuestionParts {
  readonly desk: BufferDesk;
  readonly shelf: Shelf;
  readonly plan: Plan;
}

/** The question for the engine; `waits` says what is missing before it can be asked. */
export function bufferQuestion(parts: QuestionParts): BufferQuestion | { readonly waits: string } {
  const { desk, shelf, plan } = parts;
  const days = readWritten(desk.days, 'days');
  if (!isAmount(days)) return { waits: 'Say for how many days it is to hold, up to 1000.' };
  const offers = shelf.carbonates
    .filter(({ material }) => desk.materials.includes(material))
    .map(({ usualGrain, ...offer }) => ({
      ...offer,
      grains: desk.otherGrains ? [usualGrain / 2, usualGrain, usualGrain * 2] : [usualGrain],
    }));
  if (offers.length === 0) return { waits: 'Choose at least one carbonate.' };
  const [KH, low, high] = [
    readWritten(desk.leastKH, 'KH'),
    readWritten(desk.leastPH, 'pH'),
    readWritten(desk.mostPH, 'pH'),
  ].map((amount) => (isAmount(amount) ? amount.value : undefined));
  const bands = ownBands(KH, low, high);
  const limited = plan.bands.some(({ series }) => series === 'pH' || series === 'KH');
  if (bands.length === 0 && !limited)
    return { waits: 'Nobody here sets a limit of pH or KH: write the limits you want held.' };
  return {
    offers,
    days: Math.round(days.value),
    probability: desk.probability,
    seed: 1,
    ...(bands.length > 0 ? { bands } : {}),
  };
}

function ownBands(KH: number | undefined, low: number | undefined, high: number | undefined): Band[] {
  const own = { owner: 'keeper', basis: 'wish', source: 'written at the buffer desk' };
  const bands: Band[] = [];
  if (KH !== undefined) bands.push({ series: 'KH', low: convert(KH, 'meq/L', '°dKH'), ...own });
  if (low !== undefined || high !== undefined)
    bands.push({
      series: 'pH',
      ...(low === undefined ? {} : { low }),
      ...(high === undefined ? {} : { high }),
      ...own,
    });
  return bands;
}
