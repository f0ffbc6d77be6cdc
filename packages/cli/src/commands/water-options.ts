import {
  type EnclosureContent,
  type MeasuredStart,
  shelfCarbonates,
  shelfWaters,
  startFromReadings,
} from '@shoreglass/contract';
import {
  type Band,
  type BufferOffer,
  type BufferQuestion,
  convert,
  DISSOLVED_IDS,
  type Dimension,
  type Plan,
  readQuantity,
  type SplitChange,
  splitChange,
  toPlanUnit,
  type WaterComposition,
} from '@shoreglass/engine';
import { BadInput } from '../exit-codes.ts';
import type { Belonging } from './options-given.ts';

export interface WaterOptions {
  readonly days: number;
  readonly members: number;
  readonly seed: number;
  readonly json: boolean;
  readonly now?: string;
  readonly buffer?: string;
  readonly grain?: string;
  readonly for?: string;
  readonly sure?: string;
  readonly hold?: string;
  readonly changeTo?: string;
  readonly share?: string;
}

/** What is taken where an option is left out. */
export const WHEN_LEFT_OUT = { for: '200 d', sure: '90 %', share: '50 %' } as const;

const saysMore = (to: string, options: readonly string[]): Belonging => ({
  options,
  to,
  say: [`says more about --${to}, which is not given.`, `say more about --${to}, which is not given.`],
  mend: [`Add --${to}, or leave it out.`, `Add --${to}, or leave them out.`],
});

/** Options that say more about another one: alone they would be passed over in silence. */
export const SAY_MORE = [
  saysMore('buffer', ['grain', 'for', 'sure', 'hold']),
  saysMore('change-to', ['share']),
];

/** A quantity of an option in the plan's unit; a bare number is read in `bare`. */
function quantity(
  option: string,
  text: string,
  { dimension, bare }: { dimension: Dimension; bare?: string },
): number {
  const written = bare && /^[\d.,]+$/.test(text.trim()) ? `${text} ${bare}` : text;
  const read = readQuantity(written);
  if ('wrong' in read)
    throw new BadInput(
      `--${option} ${text} ${read.wrong}. Write a number with its unit, such as ${EXAMPLE[option]}.`,
    );
  const [least, most] = REACH[option] ?? ['0', '0'];
  let value: number;
  try {
    value = toPlanUnit(read.value, read.unit, dimension);
  } catch {
    throw new BadInput(
      `--${option} ${text}: ${read.unit} does not measure ${dimension}. Write it like ${EXAMPLE[option]}.`,
    );
  }
  if (!(value >= inPlan(least, dimension) && value <= inPlan(most, dimension)))
    throw new BadInput(
      `--${option} ${text} is outside ${least} to ${most}. Write it like ${EXAMPLE[option]}.`,
    );
  return value;
}

/** A limit of the table below in the plan's unit. */
function inPlan(text: string, dimension: Dimension): number {
  const read = readQuantity(text);
  if ('wrong' in read) throw new Error(`${text} ${read.wrong}`);
  return toPlanUnit(read.value, read.unit, dimension);
}

/** Least and most that is asked for in earnest. */
const REACH: Readonly<Record<string, readonly [string, string]>> = {
  for: ['1 d', '1500 d'],
  sure: ['50 %', '99 %'],
  grain: ['0.01 mm', '20 cm'],
  share: ['1 %', '100 %'],
};

const EXAMPLE: Readonly<Record<string, string>> = {
  for: '"200 d"',
  sure: '"90 %"',
  grain: '"2 mm"',
  share: '"50 %"',
};

const listed = (text: string): string[] =>
  text
    .split(',')
    .map((part) => part.trim())
    .filter((part) => part !== '');

/** Carbonates by id, by a part of it or by name; 'all' for every one. */
function offersNamed(text: string): BufferOffer[] {
  const shelf = shelfCarbonates();
  if (text.trim() === 'all') return shelf;
  return listed(text).map((wanted) => {
    const exact = shelf.find(({ material }) => material === wanted);
    const near = shelf.filter(({ material, name }) =>
      `${material} ${name}`.toLowerCase().includes(wanted.toLowerCase()),
    );
    const [found] = exact ? [exact] : near;
    if (found && (exact || near.length === 1)) return found;
    const known = (near.length > 1 ? near : shelf).map(({ material }) => material).join(', ');
    throw new BadInput(
      `--buffer ${wanted} ${near.length > 1 ? 'fits several carbonates' : 'is no carbonate of the library'}; there are: ${known}.`,
    );
  });
}

/** Half, once and twice the usual grain, unless sizes are given; the usual one alone where many are on offer. */
const FINER_AND_COARSER = [0.5, 1, 2] as const;
const MANY = 3;

function withGrains(offers: readonly BufferOffer[], grain: string | undefined): BufferOffer[] {
  const given =
    grain && listed(grain).map((each) => quantity('grain', each, { dimension: 'length', bare: 'mm' }));
  return offers.map((offer) => {
    const [usual = 0] = offer.grains;
    const sizes = offers.length > MANY ? [usual] : FINER_AND_COARSER.map((factor) => factor * usual);
    return { ...offer, grains: given || sizes };
  });
}

const HOLD = /^(pH|KH)\s*([\d.,]+)?\s*(?:to|-|–)\s*([\d.,]+)?\s*(\S.*)?$/i;

function statedBand(text: string): Band {
  const [, name = '', low, high, unit = '°dKH'] = HOLD.exec(text) ?? [];
  if (!name || (!low && !high))
    throw new BadInput(
      `--hold '${text}' is not a band. Write it like --hold "KH 3 to 8 °dKH, pH 6.5 to 8"; either end may be left out.`,
    );
  const series = name.toLowerCase() === 'ph' ? ('pH' as const) : ('KH' as const);
  const value = (end: string): number => {
    const number = Number(end.replace(',', '.'));
    if (series === 'pH') return number;
    try {
      return convert(number, unit.trim(), '°dKH');
    } catch {
      throw new BadInput(
        `--hold '${text}': ${unit.trim()} does not measure carbonate hardness. Use °dKH, meq/L or ppm CaCO3.`,
      );
    }
  };
  const [least, most] = [low, high].map((end) => (end ? value(end) : undefined));
  if (least !== undefined && most !== undefined && least >= most)
    throw new BadInput(
      `--hold '${text}' leaves nothing between ${low} and ${high}. Write the lower end first, such as --hold "KH 3 to 8 °dKH".`,
    );
  return {
    series,
    ...(least !== undefined && { low: least }),
    ...(most !== undefined && { high: most }),
    owner: 'the band you state',
    basis: 'assumed',
    source: 'stated on the command line',
  };
}

/** The buffer's question, where one is asked. */
export function questionOf(options: WaterOptions): Omit<BufferQuestion, 'seed'> | undefined {
  if (options.buffer === undefined) return undefined;
  const days = Math.round(
    quantity('for', options.for ?? WHEN_LEFT_OUT.for, { dimension: 'time', bare: 'd' }) / 86_400,
  );
  return {
    offers: withGrains(offersNamed(options.buffer), options.grain),
    days,
    probability: quantity('sure', options.sure ?? WHEN_LEFT_OUT.sure, { dimension: 'share', bare: '%' }),
    ...(options.hold && {
      bands: options.hold.split(/[,;]\s*(?=[pK])/i).map((band) => statedBand(band.trim())),
    }),
  };
}

/** The plan started from readings, where there are some. */
export function startOf(plan: Plan, { now }: WaterOptions): MeasuredStart | undefined {
  if (now === undefined) return undefined;
  const start = startFromReadings(plan, now);
  if ('wrong' in start) throw new BadInput(`--now: ${start.wrong}. ${start.mend}`);
  return start;
}

/** The water change asked for, spread over days. */
export function changeOf(
  plan: Plan,
  content: EnclosureContent,
  { changeTo, share }: WaterOptions,
): SplitChange | undefined {
  if (changeTo === undefined) return undefined;
  const shelf = shelfWaters(content);
  const water = shelf.find(({ id }) => id === changeTo);
  if (!water)
    throw new BadInput(
      `--change-to ${changeTo} is no water of the file or the library; there are: ${shelf.map(({ id }) => id).join(', ')}.`,
    );
  const temperature = plan.room.temperature.mean;
  const composition = Object.fromEntries(
    DISSOLVED_IDS.map((id) => [id, water.composition[id] ?? 0]),
  ) as unknown as WaterComposition;
  return splitChange(
    plan,
    { composition: plan.water.fill, temperature },
    {
      kind: 'water change',
      fraction: quantity('share', share ?? WHEN_LEFT_OUT.share, { dimension: 'share', bare: '%' }),
      water: { composition, temperature },
    },
  );
}
