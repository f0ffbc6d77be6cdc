import type { WaterDocument } from '@shoreglass/contract';
import { massText, type SeriesId } from '@shoreglass/engine';
import { quantityText, textBudget, textFan } from '@shoreglass/figures';
import colours from 'picocolors';
import { calendarDay } from './dates.ts';
import { underlined, wrapped } from './wrapped.ts';

const INDENT = '  ';
const FAN_HEIGHT = 7;
const FANNED = ['pH', 'KH', 'GH', 'conductivity', 'dissolvedOrganicCarbon'] as const;
/** Shown only where one run in twenty comes to what a home test shows [mg N/L]; common practice, no source. */
const FANNED_WHEN_HIGH = ['totalAmmonia', 'nitrite'] as const;
const SHOWN_BY_A_TEST = 0.5;
const BUDGETED = ['alkalinity', 'nitrogen'] as const;
const QUARTERS = 4;
const MOST_TERMS = 8;

type Felt = WaterDocument['start'];
type Water = WaterDocument['waters'][number];

function feltText({ pH, KH, GH, conductivity }: Felt): string {
  const parts = [
    `pH ${pH.toFixed(1)}`,
    `KH ${quantityText(KH, '°dKH', 1)}`,
    `GH ${quantityText(GH, '°dGH', 1)}`,
    quantityText(conductivity, 'µS/cm'),
  ];
  return parts.join(', ');
}

const ION_NAMES: readonly (readonly [keyof Water['ions'], string])[] = [
  ['calcium', 'Ca'],
  ['magnesium', 'Mg'],
  ['sodium', 'Na'],
  ['potassium', 'K'],
  ['chloride', 'Cl'],
  ['sulfate', 'SO4'],
  ['nitrate', 'NO3'],
  ['phosphate', 'PO4'],
  ['dissolvedOrganicCarbon', 'organic C'],
];

function waterLines({ name, use, ions, dissolvedSolids, felt, assumed }: Water, width: number): string[] {
  const present = ION_NAMES.flatMap(([id, symbol]) =>
    ions[id] > 0 ? [`${symbol} ${Number(ions[id].toPrecision(3))}`] : [],
  );
  const solids = `dissolved solids ${quantityText(dissolvedSolids, 'mg/L')}`;
  return [
    wrapped(`${colours.bold(name)} (${use.join('; ')})`, width, INDENT),
    wrapped(`${feltText(felt)}, ${solids}.`, width, INDENT + INDENT),
    wrapped(
      `${present.length > 0 ? `${present.join(', ')} mg/L` : 'nothing dissolved'}.`,
      width,
      INDENT + INDENT,
    ),
    ...assumed.map((sentence) => wrapped(sentence, width, INDENT + INDENT)),
  ];
}

function startLines({ start, measured }: WaterDocument, width: number): string[] {
  if (!measured) return [wrapped(`On the first day: ${feltText(start)}.`, width, INDENT)];
  return [
    wrapped(
      `Started from readings: ${measured.readings.join(', ')}. As computed: ${feltText(start)}.`,
      width,
      INDENT,
    ),
    ...measured.inferred.map((sentence) => wrapped(`Inferred: ${sentence}`, width, INDENT)),
  ];
}

function bandText({ band }: WaterDocument['series'][string]): string {
  if (!band) return '';
  const low =
    band.low === undefined ? [] : [`at least ${Number(band.low.toPrecision(3))} for ${band.lowOwner}`];
  const high =
    band.high === undefined ? [] : [`at most ${Number(band.high.toPrecision(3))} for ${band.highOwner}`];
  return [...low, ...high].join(', ');
}

function fanLines({ series }: WaterDocument, width: number): string[] {
  const high = FANNED_WHEN_HIGH.filter((id) => (series[id]?.q95 ?? []).some((q) => q >= SHOWN_BY_A_TEST));
  return [...FANNED, ...high].flatMap((id) => {
    const one = series[id];
    if (!one) return [];
    const unit = one.unit ? ` [${one.unit}]` : '';
    const band = bandText(one);
    const fan = textFan({
      id: id satisfies SeriesId,
      series: one,
      width: width - INDENT.length,
      height: FAN_HEIGHT,
    });
    return [
      wrapped(`${colours.bold(`${one.name}${unit}`)}${band ? ` ${colours.dim(band)}` : ''}`, width, INDENT),
      ...fan.map((line) => INDENT + line),
      '',
    ];
  });
}

/** Days in which a fresh water still finds its balance; what moves in them is no swing of the day. */
const SETTLING = 7;

/** How far pH and oxygen move between dawn and dusk, on the day on which it is most. */
function dayLines({ series, enclosure }: WaterDocument, width: number): string[] {
  const { pHSwing, oxygenLow, oxygenHigh } = series;
  if (!pHSwing || !oxygenLow || !oxygenHigh) return [];
  const settled = pHSwing.q50.slice(SETTLING);
  if (settled.length === 0) return [];
  const most = Math.max(...settled);
  const day = SETTLING + settled.indexOf(most);
  const [dawn, dusk] = [oxygenLow, oxygenHigh].map(({ q50 }) => (q50[day] ?? 0).toFixed(1));
  const text = `Within a day pH moves most about ${calendarDay(enclosure.startDate, day)}: by ${most.toFixed(2)} (median; ${(pHSwing.q95[day] ?? 0).toFixed(2)} in one run of twenty or more), while oxygen goes from ${dawn} to ${dusk} mg/L.`;
  return [wrapped(text, width, INDENT), ''];
}

function turningLines({ turningPoints, enclosure }: WaterDocument, width: number): string[] {
  if (turningPoints.length === 0)
    return [wrapped('Nothing in the water leaves its band in 5 % of the runs or more.', width, INDENT)];
  return turningPoints.map(({ window, sentence, band }) => {
    const when = calendarDay(enclosure.startDate, window.median);
    return wrapped(`${colours.bold(when)} ${sentence} Band of ${band.owner}.`, width, INDENT);
  });
}

function budgetLines({ budgets }: WaterDocument, width: number): string[] {
  return BUDGETED.flatMap((id) => {
    const budget = budgets.find((each) => each.id === id);
    if (!budget) return [];
    const [first = 0] = budget.stock;
    const last = budget.stock.at(-1) ?? 0;
    const head = `${colours.bold(`${budget.name} [${budget.unit}]`)}: ${first.toFixed(0)} in the water at first, ${last.toFixed(0)} at the end. ${budget.about}`;
    const lines = textBudget({ budget, width: width - INDENT.length, periods: QUARTERS, most: MOST_TERMS });
    return [wrapped(head, width, INDENT), ...lines.map((line) => INDENT + line), ''];
  });
}

function pieceLines({ pieces }: WaterDocument, width: number): string[] {
  if (pieces.length === 0)
    return [wrapped('There is no wood, litter, peat or carbonate in the water.', width, INDENT)];
  return pieces.map(({ sentence }) => wrapped(sentence, width, INDENT));
}

function changeLines({ change, enclosure }: WaterDocument, width: number): string[] {
  if (!change) return [];
  const steps = change.steps.map(({ day, amount, after }) => {
    const when = calendarDay(enclosure.startDate, day).padStart(7);
    const text = `${when}  replace ${String(Math.round(amount * 100)).padStart(2)} %  then ${feltText(after)}`;
    return wrapped(text, width, INDENT + INDENT + INDENT, INDENT + INDENT);
  });
  return [
    `\n${colours.underline('The water change, step by step')}`,
    wrapped(change.sentence, width, INDENT),
    ...steps,
  ];
}

function bufferLines({ buffer }: WaterDocument, width: number): string[] {
  if (!buffer) return [];
  const { options, best } = buffer;
  const percent = Math.round(buffer.probability * 100);
  const rows = options.map(({ name, grain, mass, verdict, inBand }, at) => {
    const { share, low, high } = inBand;
    const shares = [share, low, high].map((part) => Math.round(part * 100));
    return `${INDENT}${INDENT}${at === best ? '→' : ' '} ${`${name.split(',')[0]}, ${Number((grain * 1000).toPrecision(2))} mm`.padEnd(36)} ${verdict === 'found' ? massText(mass).padStart(8) : '     none'}  ${shares[0]} % (${shares[1]} to ${shares[2]} %)`;
  });
  return [
    `\n${colours.underline(`A buffer for ${buffer.days} days, ${percent} % sure`)}`,
    ...buffer.sentences.map((sentence) => wrapped(sentence, width, INDENT)),
    ...(rows.length > 1
      ? [
          `${INDENT}${INDENT}  ${'material and grain'.padEnd(36)} ${'mass'.padStart(8)}  in band (90 % interval)`,
          ...rows,
          wrapped(
            `${best === undefined ? 'Shares are' : 'The share at → is counted in fresh runs, those of the others'} of the runs that chose, which flatter.`,
            width,
            INDENT + INDENT,
          ),
        ]
      : []),
  ];
}

/** The water over the days for people, as text for a terminal `width` characters wide. */
export function waterText(document: WaterDocument, width: number): string {
  const { enclosure, run, waters } = document;
  const title = (text: string): string => `\n${underlined(text, width)}`;
  return [
    `\n${colours.bold(`The water of ${enclosure.name}`)}, ${run.days} days from ${calendarDay(enclosure.startDate, 0)}, ${run.members} runs, seed ${run.seed}`,
    title('Waters as read, in balance with the air'),
    ...waters.flatMap((water) => waterLines(water, width)),
    ...startLines(document, width),
    title('The course: median, half and nine tenths of the runs, dots along the band'),
    ...fanLines(document, width),
    ...dayLines(document, width),
    title('What turns, and when'),
    ...turningLines(document, width),
    title('Who gives and who takes, in all and by days'),
    ...budgetLines(document, width),
    title('What wood, litter and carbonate do, with against without: median (9 runs of 10)'),
    ...pieceLines(document, width),
    ...changeLines(document, width),
    ...bufferLines(document, width),
  ].join('\n');
}
