import {
  type ClimateYear,
  type CoverAnswer,
  climateYear,
  coverFor,
  ENGINE_VERSION,
  type Plan,
  readQuantity,
  type ShapeSheet,
  shapeSheet,
  toPlanUnit,
  unitsOf,
} from '@shoreglass/engine';
import type { Command } from 'commander';
import { BadInput, reasonOf } from '../exit-codes.ts';
import { shapeText } from '../print/shape.ts';
import { climatePart, coverPart, remarkParts, type SheetPart, sheetParts } from '../print/shape-lines.ts';
import { shapeDrawings, shapePage } from '../print/shape-page.ts';
import { widthUpTo } from '../print/width.ts';
import { readPlan } from '../run/read-enclosure.ts';
import { writeWhole } from '../run/write-whole.ts';

interface ShapeOptions {
  readonly humidity?: string;
  readonly fog?: string;
  readonly print?: string;
  readonly json: boolean;
}

const WIDEST = 120;
/** Fog allowed a day where only a humidity is asked for [h]. */
const USUAL_FOG = '2 h';

const EXAMPLES = `
Examples:
  shoreglass shape my-bank.yaml
  shoreglass shape my-bank.yaml --humidity "80 %" --fog "2 h"   how far open must the cover be
  shoreglass shape my-bank.yaml --print my-bank.html            a page to print; .svg for the drawings alone`;

const REACH = {
  share: { most: 1, range: '0 to 100 %' },
  time: { most: 86_400, range: '0 to 24 h' },
} as const;

function amount(written: string, option: string, dimension: 'share' | 'time', example: string): number {
  const quantity = readQuantity(written);
  if ('wrong' in quantity || !unitsOf(dimension).includes(quantity.unit))
    throw new BadInput(`${option}: '${written}' cannot be read. Write it like ${example}.`);
  const value = toPlanUnit(quantity.value, quantity.unit, dimension);
  const { most, range } = REACH[dimension];
  if (!(value >= 0 && value <= most))
    throw new BadInput(`${option}: '${written}' cannot be: give ${range}, such as ${example}.`);
  return value;
}

function coverAsked(plan: Plan, { humidity, fog }: ShapeOptions): CoverAnswer | undefined {
  if (humidity === undefined && fog === undefined) return undefined;
  const goal = {
    humidity: humidity === undefined ? 0.8 : amount(humidity, '--humidity', 'share', '"80 %"'),
    fog: amount(fog ?? USUAL_FOG, '--fog', 'time', '"2 h"') / 3600,
  };
  return coverFor(plan, goal);
}

interface Shown {
  readonly sheet: ShapeSheet;
  readonly climate: ClimateYear;
  readonly cover: CoverAnswer | undefined;
}

function partsOf({ sheet, climate, cover }: Shown): SheetPart[] {
  return [
    ...sheetParts(sheet),
    climatePart(climate),
    ...(cover ? [coverPart(cover)] : []),
    ...remarkParts(sheet),
  ];
}

/** The drawings under each other as one SVG. */
function drawingsAlone(plan: Plan): string {
  const drawings = shapeDrawings(plan);
  const sizes = drawings.map((svg) => Number(/height="([\d.]+)"/.exec(svg)?.[1] ?? 400));
  let y = 0;
  const placed = drawings.map((svg, i) => {
    const moved = svg.replace('<svg', `<svg y="${y}"`);
    y += sizes[i]! + 20;
    return moved;
  });
  return `<svg xmlns="http://www.w3.org/2000/svg" width="720" height="${y}" viewBox="0 0 720 ${y}">${placed.join('')}</svg>\n`;
}

function save(path: string, plan: Plan, parts: readonly SheetPart[]): void {
  const isDrawing = path.toLowerCase().endsWith('.svg');
  if (!isDrawing && !/\.html?$/i.test(path))
    throw new BadInput(`--print: '${path}' must end in .html for the sheet, or .svg for the drawings.`);
  try {
    writeWhole(path, isDrawing ? drawingsAlone(plan) : shapePage(plan, parts));
  } catch (error) {
    throw new BadInput(
      `--print: ${path} cannot be written: ${reasonOf(error)}. Name a file in a folder that is there, where you may write and room is left.`,
    );
  }
  process.stderr.write(`written to ${path}\n`);
}

function showShape(file: string, options: ShapeOptions): void {
  const plan = readPlan(file);
  const shown = { sheet: shapeSheet(plan), climate: climateYear(plan), cover: coverAsked(plan, options) };
  const parts = partsOf(shown);
  if (options.print !== undefined) save(options.print, plan, parts);
  if (options.json) {
    const { id, name, startDate } = plan;
    const { sheet, climate, cover } = shown;
    const document = {
      enclosure: { id, name, startDate },
      engineVersion: ENGINE_VERSION,
      sheet,
      climate,
      ...(cover ? { cover } : {}),
    };
    process.stdout.write(`${JSON.stringify(document)}\n`);
  } else if (options.print === undefined) {
    const width = widthUpTo(WIDEST, 100);
    process.stdout.write(`${shapeText(plan.name, parts, width)}\n`);
  }
}

/** `shoreglass shape FILE`: volumes, weight, glass, flow, light and climate of an enclosure. */
export function addShape(program: Command): void {
  program
    .command('shape')
    .description(
      'volumes, weight, glass, flow, light and climate of an enclosure, and how far to open its cover',
    )
    .argument('<file>', 'enclosure file (YAML), or the name of an example')
    .option(
      '--humidity <share>',
      'humidity to keep on 19 days of 20, such as "80 %": answers how far to open the cover',
    )
    .option('--fog <time>', `hours of fog on the front pane allowed a day, such as "${USUAL_FOG}"`)
    .option('--print <file>', 'write the sheet as a page to print (.html), or the drawings alone (.svg)')
    .option('--json', 'print one JSON document (docs/schema/shape.schema.json) and nothing else', false)
    .addHelpText('after', EXAMPLES)
    .action((file: string, options: ShapeOptions) => showShape(file, options));
}
