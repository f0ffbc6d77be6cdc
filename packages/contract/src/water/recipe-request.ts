import {
  RECIPE_QUANTITIES,
  type RecipeRequest,
  type RecipeTarget,
  requestProblems,
} from '@shoreglass/engine';
import { library as bundled, type Library, nearest } from '@shoreglass/library';
import { z } from 'zod';
import type { ShelfWater } from '../enclosure/plan/shelf.ts';
import { shelfSalts, shelfWaters } from '../enclosure/plan/shelf.ts';
import { measure, measured } from '../enclosure/schema/measured.ts';
import { oneOf, said, toldApart } from '../enclosure/schema/say.ts';
import { keys, list, text } from '../enclosure/schema/strict.ts';
import { ownWaterSchema } from '../enclosure/schema/water.ts';
import { readTarget } from './read-target.ts';

const target = (quantity: (typeof RECIPE_QUANTITIES)[number]) =>
  z
    .string({
      error: () => said('must be an amount with its unit', 'Write it like 6 °dGH or at most 10 mg/L.'),
    })
    .describe('An amount to come near to, a band such as 4 to 8 °dKH, or a limit such as at most 10 mg/L.')
    .transform((written, context): RecipeTarget => {
      const read = readTarget(quantity, written);
      if (!('wrong' in read)) return read;
      context.issues.push({ code: 'custom', message: said(read.wrong, read.mend), input: written });
      return z.NEVER;
    })
    .optional();

const targets = keys(
  Object.fromEntries(RECIPE_QUANTITIES.map((quantity) => [quantity, target(quantity)])) as Record<
    (typeof RECIPE_QUANTITIES)[number],
    ReturnType<typeof target>
  >,
  'What the water should have; what is left out may be anything.',
);

const part = z.union([
  text('Water of the library, or one of `own`.', 64),
  keys(
    {
      water: text('Water of the library, or one of `own`.', 64),
      least: measure.share('Least share of the mix.', '10 %').optional(),
      most: measure.share('Largest share of the mix.', '50 %').optional(),
    },
    'A water whose share is limited.',
  ),
]);

/** Salts of a usual shelf, taken where none are named. */
export const USUAL_SALTS = [
  'gypsum',
  'calcium-chloride',
  'epsom-salt',
  'potassium-bicarbonate',
  'baking-soda',
] as const;

/** A recipe as asked for by people and over the wire: amounts as text with any unit the trade uses. */
export const recipeRequestSchema = keys(
  {
    volume: measured('volume', {
      meaning: 'Of the finished water.',
      example: '40 L',
      from: '0.1 L',
      to: '100000 L',
    }),
    waters: list(part, 'Waters to mix from.', 12),
    own: list(ownWaterSchema, 'Waters by their analysis, as in the enclosure file.', 12).optional(),
    salts: list(
      text('Salt of the library.', 64),
      'Salts at hand; a usual shelf when left out.',
      30,
    ).optional(),
    targets,
    kept: keys(
      {
        water: text('What is there already: one of `own`, or a water of the library.', 64),
        volume: measured('volume', {
          meaning: 'What of it stays.',
          example: '30 L',
          from: '0 L',
          to: '100000 L',
        }),
      },
      'Water that is there already and stays: for a top-off, a change of water, or salts alone.',
    ).optional(),
    temperature: measured('temperature', {
      meaning: 'Of the water in use; 20 °C when left out.',
      example: '20 °C',
      from: '0 °C',
      to: '40 °C',
    }).optional(),
    'carbon-dioxide': measured('mole fraction', {
      meaning: 'CO2 in the air above it; 500 ppm when left out.',
      example: '500 ppm',
      from: '100 ppm',
      to: '20000 ppm',
    }).optional(),
    pressure: measured('pressure', {
      meaning: 'Pressure of the air; that of sea level when left out.',
      example: '1013 hPa',
      from: '500 hPa',
      to: '1100 hPa',
    }).optional(),
  },
  'A recipe asked for.',
);

export type WrittenRecipeRequest = z.input<typeof recipeRequestSchema>;

/** Something wrong with a request: keys from the top, what, and the mend. */
export interface RequestFault {
  readonly path: readonly (string | number)[];
  readonly message: string;
  readonly mend: string;
}

export type ReadRequest =
  | { readonly request: RecipeRequest; readonly faults: readonly [] }
  | { readonly request?: undefined; readonly faults: readonly RequestFault[] };

export interface RequestShelf {
  readonly library?: Library;
  /** Waters beside those of the library, found first: those of an enclosure file. */
  readonly waters?: readonly ShelfWater[];
  /** What is wanted of quantities the request says nothing of: those of who lives there. */
  readonly targets?: readonly RecipeTarget[];
}

const unknown = (
  path: RequestFault['path'],
  kind: string,
  id: string,
  known: readonly string[],
): RequestFault => {
  const near = nearest(id, known);
  return {
    path,
    message: `there is no ${kind} '${id.slice(0, 60)}'`,
    mend: near.length > 0 ? `Did you mean ${oneOf(near)}?` : `Known: ${known.join(', ')}.`,
  };
};

type Read = z.output<typeof recipeRequestSchema>;

/** Names found on the shelf, or what is unknown of them. */
function resolved(read: Read, { library = bundled, waters: extra = [] }: RequestShelf) {
  const faults: RequestFault[] = [];
  const known = [...extra, ...shelfWaters({ waters: read.own ?? [] }, library)];
  const names = [...new Set(known.map(({ id }) => id))];
  const find = (id: string, path: RequestFault['path']) => {
    const found = known.find((water) => water.id === id);
    if (!found) faults.push(unknown(path, 'water', id, names));
    return found;
  };
  const waters = read.waters.flatMap((each, k) => {
    const limits = typeof each === 'string' ? { water: each } : each;
    const found = find(limits.water, ['waters', k]);
    const share = {
      ...('least' in limits && limits.least !== undefined ? { least: limits.least } : {}),
      ...('most' in limits && limits.most !== undefined ? { most: limits.most } : {}),
    };
    return found ? [{ ...found, ...share }] : [];
  });
  const shelf = shelfSalts(library);
  const saltNames = Object.values(library.data.salts).flatMap(({ id, alsoCalled = [] }) => [
    id,
    ...alsoCalled,
  ]);
  const salts = (read.salts ?? USUAL_SALTS).flatMap((name, k) => {
    if (!saltNames.includes(name)) {
      faults.push(unknown(['salts', k], 'salt', name, saltNames));
      return [];
    }
    return shelf.filter(({ id }) => id === library.salt(name).id);
  });
  const stays = read.kept && find(read.kept.water, ['kept', 'water']);
  const kept = stays &&
    read.kept && { name: stays.name, composition: stays.composition, volume: read.kept.volume };
  return { waters, salts: [...new Map(salts.map((salt) => [salt.id, salt])).values()], kept, faults };
}

/** What is written, and for the rest what the shelf brings along. */
function wanted(read: Read, { targets = [] }: RequestShelf): RecipeTarget[] {
  const written = Object.values(read.targets).filter((each) => each !== undefined);
  return [
    ...written,
    ...targets.filter(({ quantity }) => written.every((each) => each.quantity !== quantity)),
  ];
}

/** Temperature, CO2 and pressure where nothing is said [degC; umol/mol; Pa]. @source assumed: a living room */
export const USUAL_AIR = { temperature: 20, carbonDioxide: 500, pressure: 101_325 } as const;

/** Reads a request into the engine's, or tells everything that is wrong with it. Never throws. */
export function readRecipeRequest(written: unknown, shelf: RequestShelf = {}): ReadRequest {
  const parsed = recipeRequestSchema.safeParse(written);
  if (!parsed.success)
    return {
      faults: parsed.error.issues.map(({ path, message }) => ({
        path: path.map((key) => (typeof key === 'symbol' ? String(key) : key)),
        ...toldApart(message),
      })),
    };
  const read = parsed.data;
  const { waters, salts, kept, faults } = resolved(read, shelf);
  if (faults.length > 0) return { faults };
  const request: RecipeRequest = {
    volume: read.volume,
    waters,
    salts,
    targets: wanted(read, shelf),
    ...(kept ? { kept } : {}),
    temperature: read.temperature ?? USUAL_AIR.temperature,
    air: {
      carbonDioxide: read['carbon-dioxide'] ?? USUAL_AIR.carbonDioxide,
      pressure: read.pressure ?? USUAL_AIR.pressure,
    },
  };
  const problems = requestProblems(request);
  return problems.length > 0 ? { faults: problems } : { request, faults: [] };
}
