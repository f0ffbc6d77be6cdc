import { basename } from 'node:path';
import {
  type BandTarget,
  problemLine,
  type RequestFault,
  readRecipeRequest,
  readWaters,
  type ShelfWater,
  shelfWaters,
  targetsOfBands,
} from '@shoreglass/contract';
import { geometryOf, type Plan, RECIPE_QUANTITIES, type RecipeRequest } from '@shoreglass/engine';
import { BadInput } from '../exit-codes.ts';
import { readPlanAndContent, textOf } from './read-enclosure.ts';

/** The options of `shoreglass mix`, as written. */
export interface MixOptions {
  readonly from?: string;
  readonly salts?: string;
  readonly volume?: string;
  readonly keep?: string;
  readonly for?: string;
  readonly own?: string;
  readonly temperature?: string;
  readonly json: boolean;
  readonly only?: string;
  /** By quantity and by 'max' with a quantity: '6 °dGH'. */
  readonly [option: string]: string | boolean | undefined;
}

export interface MixRequest {
  readonly request: RecipeRequest;
  /** What those who live there ask for, with `--for`. */
  readonly owners: readonly BandTarget[];
  /** Of the enclosure, where one is named. */
  readonly plan?: Plan;
}

/** Name of the water an enclosure is filled with, for `--from` and `--keep`. */
export const FILL = 'fill';

interface Enclosure {
  readonly plan: Plan;
  readonly waters: readonly ShelfWater[];
  readonly owners: readonly BandTarget[];
  /** Waters it is filled and topped off with, by id. */
  readonly filledFrom: readonly string[];
  /** [m3] */
  readonly volume: number;
}

function enclosureOf(file: string): Enclosure {
  const { plan, content } = readPlanAndContent(file);
  const fill: ShelfWater = {
    id: FILL,
    name: `the water ${plan.name} is filled with`,
    composition: plan.water.fill,
    kind: 'other',
    from: 'file',
    cautions: [],
  };
  return {
    plan,
    waters: [fill, ...shelfWaters(content).filter((water) => water.from === 'file')],
    owners: targetsOfBands(plan.bands),
    filledFrom: [content.water.fill, content.water['top-off']].flatMap((blend) =>
      typeof blend === 'string' ? [blend] : blend.map(({ water }) => water),
    ),
    volume: geometryOf(plan).volumeAt(plan.water.level),
  };
}

function ownWaters(file: string | undefined): readonly ShelfWater[] {
  if (file === undefined) return [];
  const { waters, findings } = readWaters(textOf(file), basename(file));
  const blocking = findings.filter(({ severity }) => severity === 'blocking');
  if (blocking.length > 0) throw new BadInput(blocking.map(problemLine).join('\n'));
  for (const finding of findings.filter(({ severity }) => severity === 'warning'))
    process.stderr.write(`${problemLine(finding)}\n`);
  if (waters.length === 0)
    throw new BadInput(`${file} holds no water. Write its ions, such as calcium: 90 mg/L.`);
  return waters;
}

const commaList = (text: string): string[] =>
  text
    .split(/,(?!\d)/)
    .map((part) => part.trim())
    .filter((part) => part !== '');

const LIMITED = /^(\S+)\s+(at most|at least)\s+(.+)$/;

/** 'hard-tap at most 50 %' as the water and the limit of its share. */
function waterPart(text: string): string | Record<string, string> {
  const match = LIMITED.exec(text);
  if (!match) return text;
  const [, water = '', word, share = ''] = match;
  return { water, [word === 'at most' ? 'most' : 'least']: share };
}

/** '30 L of my-tank', or '30 L' of what the enclosure is filled with. */
function keptPart(text: string, hasEnclosure: boolean): Record<string, string> {
  const [volume = '', water] = text.split(/\s+of\s+/);
  if (water === undefined && !hasEnclosure)
    throw new BadInput(
      `--keep: '${text}' does not say of which water. Write --keep "30 L of NAME", or add --for FILE.`,
    );
  return { volume: volume.trim(), water: water?.trim() ?? FILL };
}

/** Option of a quantity and of its upper limit, as commander names them. */
const optionOf = (quantity: string): string => quantity.toLowerCase();
const maxOf = (quantity: string): string =>
  `max${quantity[0]?.toUpperCase()}${quantity.slice(1).toLowerCase()}`;

function writtenTargets(options: MixOptions): Record<string, string> {
  const targets: Record<string, string> = {};
  for (const quantity of RECIPE_QUANTITIES) {
    const [wanted, most] = [options[optionOf(quantity)], options[maxOf(quantity)]];
    if (typeof wanted === 'string' && typeof most === 'string')
      throw new BadInput(
        `--${optionOf(quantity)} and --max-${optionOf(quantity)} are both given. Say it in one: --${optionOf(quantity)} "4 to 8 °dKH".`,
      );
    if (typeof wanted === 'string') targets[quantity] = wanted;
    if (typeof most === 'string')
      targets[quantity] = /^\s*(at|up|below|max|<|≤)/i.test(most) ? most : `at most ${most}`;
  }
  return targets;
}

/** The option a fault belongs to. */
function optionFor({ path }: RequestFault): string {
  const [first, second] = path;
  if (first === 'waters') return '--from';
  if (first === 'kept') return '--keep';
  if (first === 'targets' && typeof second === 'string') return `--${optionOf(second)}`;
  return first === 'targets' ? 'targets' : `--${String(first)}`;
}

const faultLine = (fault: RequestFault): string => `${optionFor(fault)}: ${fault.message}. ${fault.mend}`;

/** Waters to mix from where none are named. */
function usualWaters(own: readonly ShelfWater[], enclosure: Enclosure | undefined): string[] {
  const ids = own.map(({ id }) => id);
  return [...new Set([...ids, ...(enclosure?.filledFrom ?? ['rain']), 'distilled'])];
}

/** Own waters that are neither mixed from nor kept would be passed over in silence. @throws BadInput */
function refuseIdleWaters({ own: file, from, keep = '' }: MixOptions, own: readonly ShelfWater[]): void {
  if (from === undefined || own.length === 0) return;
  const named = [...commaList(from).map((part) => part.split(/\s/)[0]), keep.split(/\s+of\s+/)[1]?.trim()];
  if (own.some(({ id }) => named.includes(id))) return;
  const ids = own.map(({ id }) => id).join(', ');
  throw new BadInput(
    `--own ${file} holds ${ids}, which neither --from nor --keep names. Write --from ${ids},rain, or leave --own out.`,
  );
}

/**
 * What the options ask for.
 * @throws BadInput naming the option and the mend; Blocked when the enclosure of `--for` cannot be planned
 */
export function mixRequest(options: MixOptions): MixRequest {
  const enclosure = options.for === undefined ? undefined : enclosureOf(options.for);
  const own = ownWaters(options.own);
  if (options.volume === undefined && !enclosure)
    throw new BadInput(
      '--volume is missing. Write --volume "40 L", or take it from an enclosure with --for FILE.',
    );
  refuseIdleWaters(options, own);
  const targets = writtenTargets(options);
  if (Object.keys(targets).length === 0 && (enclosure?.owners ?? []).length === 0)
    throw new BadInput(
      'Nothing is asked of the water. Write --gh "6 °dGH" --kh "4 °dKH", or name an enclosure with --for FILE.',
    );
  const waters =
    options.from === undefined ? usualWaters(own, enclosure) : commaList(options.from).map(waterPart);
  const written = {
    volume: options.volume ?? `${1000 * (enclosure?.volume ?? 0)} L`,
    waters,
    ...(options.salts === undefined
      ? {}
      : { salts: options.salts === 'none' ? [] : commaList(options.salts) }),
    targets,
    ...(options.keep === undefined ? {} : { kept: keptPart(options.keep, enclosure !== undefined) }),
    temperature: options.temperature ?? `${enclosure?.plan.room.temperature.mean ?? 20} °C`,
    ...(enclosure
      ? {
          'carbon-dioxide': `${enclosure.plan.room.carbonDioxide} ppm`,
          pressure: `${enclosure.plan.room.pressure} Pa`,
        }
      : {}),
  };
  const { request, faults } = readRecipeRequest(written, {
    waters: [...own, ...(enclosure?.waters ?? [])],
    targets: (enclosure?.owners ?? []).map(({ target }) => target),
  });
  if (!request) throw new BadInput(faults.map(faultLine).join('\n'));
  return { request, owners: enclosure?.owners ?? [], ...(enclosure && { plan: enclosure.plan }) };
}
