import { lifeSentence } from '@shoreglass/contract';
import type { LifeSpread, LifeTable, LifeTableRow } from '@shoreglass/engine';
import { figuresOf, type Organism } from '@shoreglass/library';
import colours from 'picocolors';
import { table } from './table.ts';
import { wrapped } from './wrapped.ts';

const ROWS = 12;
/** Steps between ages that people count in [d]. */
const STEPS = [1, 2, 5, 7, 10, 14, 20, 30, 60, 90, 180, 365, 730] as const;
/** Part alive below which a table says no more. */
const FEW = 0.01;

const threeFigures = (value: number): string => figuresOf(Number(value.toPrecision(3)));
const share = (part: number): string =>
  part > 0 && part < 0.001 ? 'less than 0.1 %' : `${(100 * part).toFixed(part < 0.1 ? 1 : 0)} %`;

/** About a dozen ages from the first day to that at which one in a hundred is left. */
export function agesShown(rows: readonly LifeTableRow[]): readonly LifeTableRow[] {
  const few = rows.findIndex(({ alive }) => alive < FEW);
  const last = few < 0 ? rows.length - 1 : few;
  const step = STEPS.find((each) => each * ROWS >= last) ?? Math.ceil(last / ROWS);
  return rows.filter(({ age }) => age % step === 0 && age <= last);
}

function ageRows({ rows }: LifeTable): string[][] {
  return [
    ['age', 'alive', 'length', 'young so far'],
    ...agesShown(rows).map(({ age, alive, length, young }) => [
      `${age} d`,
      share(alive),
      length === undefined ? '' : `${threeFigures(length)} mm`,
      threeFigures(young),
    ]),
  ];
}

function populationLines({ renewal, structure, medianAge, maturity, lineDiesOut }: LifeTable): string[] {
  const [young = 0] = structure?.stable ?? [];
  const worth = structure?.worth[1];
  return [
    ...(maturity === undefined ? [] : [`Grown after ${maturity} days.`]),
    ...(medianAge === undefined ? [] : [`Half of the newborn reach ${medianAge} days.`]),
    ...(renewal
      ? [
          `${threeFigures(renewal.netReproduction)} young per newborn in a whole life (R0); numbers change by ${(100 * renewal.growthRate).toFixed(2)} % a day; a generation is ${renewal.generationTime.toFixed(0)} days.`,
          `Of a settled population ${share(young)} are young${worth === undefined ? '' : `; a grown animal is worth ${threeFigures(worth)} newborns to later numbers`}.`,
          `The line of one female newborn dies out by chance in ${share(lineDiesOut)} of cases, of five in ${share(lineDiesOut ** 5)}.`,
        ]
      : []),
  ];
}

const BOUND =
  'An upper bound: food and room without end, water and air that suit, mates at hand, nobody who hunts. Medians of the library; an enclosure is computed by `shoreglass life FILE`.';

interface Shown {
  readonly life: LifeTable;
  readonly spread: LifeSpread;
}

const rounded = (value: number): string => (value < 10 ? String(Number(value.toFixed(1))) : value.toFixed(0));

/** What is not known of a species, in the figures of its table. */
function spreadLines({ mating }: Organism, { firstYoung, doubling, clutch, breeding }: LifeSpread): string[] {
  const between = ({ q10, q90 }: LifeSpread['clutch']): string => `${rounded(q10)} to ${rounded(q90)}`;
  const parts = [
    ...(firstYoung ? [`first young after ${between(firstYoung)} days`] : []),
    ...(breeding > 0 && mating !== 'division' ? [`${between(clutch)} eggs a brood`] : []),
    ...(doubling ? [`numbers double in ${between(doubling)} days`] : []),
  ];
  return parts.length > 0
    ? [`In four of five draws of what the library holds possible: ${parts.join(', ')}.`]
    : [];
}

/** A life table for people. */
export function lifeTableText(animal: Organism, { life, spread }: Shown, width: number): string {
  return [
    `${colours.bold(animal.name)}  ${animal.scientificName}`,
    wrapped(lifeSentence(animal, life), width, '  '),
    ...[...spreadLines(animal, spread), ...populationLines(life)].map((line) => wrapped(line, width, '  ')),
    '',
    colours.underline('By age'),
    table(ageRows(life)),
    '  Young so far are those of a female that lives so long.',
    '',
    colours.dim(wrapped(BOUND, width, '')),
  ].join('\n');
}
