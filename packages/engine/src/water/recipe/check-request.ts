import { DISSOLVED_IDS, type WaterComposition } from '../../plan/water-composition.ts';
import { convert } from '../../units/convert.ts';
import { alkalinityOf } from '../hardness.ts';
import { MOLAR_MASS } from '../molar-masses.ts';
import { readSalt } from '../salts.ts';
import type { RecipeQuantity, RecipeRequest, RecipeSalt, RecipeTarget, SourceWater } from './request.ts';

/** Something of a request that cannot be, with its place as keys from the top, and how to mend it. */
export interface RequestProblem {
  readonly path: readonly (string | number)[];
  readonly message: string;
  readonly mend: string;
}

/** Most water a recipe is computed for [m3]. */
const LARGEST = 100;
/** Acid beyond this is no water anybody keeps [eq/m3]. */
const MOST_ACID = 0.2;

const problem = (path: RequestProblem['path'], message: string, mend: string): RequestProblem => ({
  path,
  message,
  mend,
});

const litres = (volume: number): string => `${Number((1000 * volume).toPrecision(6))} L`;

function compositionProblems(name: string, water: Partial<WaterComposition>, path: RequestProblem['path']) {
  for (const id of DISSOLVED_IDS) {
    const amount = water[id] ?? 0;
    if (!Number.isFinite(amount) || amount < 0)
      return [
        problem(
          path,
          `${name} holds ${amount} mmol/L of ${id}`,
          'No water holds less than none: check sign, number and unit of the analysis.',
        ),
      ];
  }
  const alkalinity = alkalinityOf(water);
  if (alkalinity < -MOST_ACID)
    return [
      problem(
        path,
        `the negative ions of ${name} outweigh the positive ones by ${(-alkalinity).toFixed(2)} meq/L: it would be an acid`,
        'Check the figures and their units (as NO3 or as N); a positive ion may be missing.',
      ),
    ];
  return [];
}

function waterProblems({ waters, kept }: RecipeRequest): RequestProblem[] {
  const inRange = (share: number | undefined) => share === undefined || (share >= 0 && share <= 1);
  const found = waters.flatMap((water, k) => [
    ...compositionProblems(water.name, water.composition, ['waters', k]),
    ...(inRange(water.least) && inRange(water.most) && (water.least ?? 0) <= (water.most ?? 1)
      ? []
      : [
          problem(
            ['waters', k],
            `the share of ${water.name} is limited to ${water.least ?? 0} to ${water.most ?? 1}`,
            'Give shares from 0 to 1, the least first.',
          ),
        ]),
  ]);
  const twice = waters.find(({ id }, k) => waters.findIndex((other) => other.id === id) < k);
  if (twice) found.push(problem(['waters'], `${twice.name} is there twice`, 'Name each water once.'));
  return [...found, ...(kept ? compositionProblems(kept.name, kept.composition, ['kept']) : [])];
}

function shareProblems(waters: readonly SourceWater[]): RequestProblem[] {
  const least = waters.reduce((sum, water) => sum + (water.least ?? 0), 0);
  const most = waters.reduce((sum, water) => sum + (water.most ?? 1), 0);
  if (least > 1 + 1e-9)
    return [
      problem(['waters'], `the least shares add up to ${least.toFixed(2)}`, 'Keep their sum at 1 or below.'),
    ];
  if (most < 1 - 1e-9)
    return [
      problem(
        ['waters'],
        `the largest shares add up to ${most.toFixed(2)} only`,
        'Allow more of one of them, or add distilled water.',
      ),
    ];
  return [];
}

function volumeProblems({ volume, kept, waters }: RecipeRequest): RequestProblem[] {
  if (!(volume > 0 && volume <= LARGEST))
    return [
      problem(
        ['volume'],
        `a volume of ${litres(volume)} cannot be mixed`,
        `Give more than 0 and at most ${LARGEST * 1000} L.`,
      ),
    ];
  if (kept && !(kept.volume >= 0 && kept.volume <= volume * (1 + 1e-12)))
    return [
      problem(
        ['kept', 'volume'],
        `${litres(kept.volume)} of ${kept.name} are to stay in a volume of ${litres(volume)}`,
        'What stays is at most the whole; give the whole volume as it is afterwards.',
      ),
    ];
  const fresh = kept ? volume - kept.volume : volume;
  if (fresh > 1e-12 * volume && waters.length === 0)
    return [problem(['waters'], 'no water is named to mix from', 'Name at least one, such as distilled.')];
  return [];
}

function saltProblems(salts: readonly RecipeSalt[]): RequestProblem[] {
  return salts.flatMap((salt, k) => {
    try {
      readSalt(salt.formula);
    } catch (error) {
      return [problem(['salts', k], (error as Error).message, 'Write it like CaSO4.2H2O.')];
    }
    const sound =
      salt.solubility > 0 && salt.bulkDensity > 0 && (salt.purity ?? 1) > 0 && (salt.purity ?? 1) <= 1;
    if (sound) return [];
    return [
      problem(
        ['salts', k],
        `solubility, bulk density and purity of ${salt.name} are not positive`,
        'Give all three as positive numbers, the purity at most 1.',
      ),
    ];
  });
}

const END = 1e-9;
/** More than sea water has of any ion but sodium and chloride, which stand at 470 and 550 [mol/m3; uS/cm]. */
const MOST_SALT = 600;
const MOST_CONDUCTIVITY = 60_000;

/** A value of a quantity in the keeper's unit. */
function shown(quantity: RecipeQuantity, value: number): string {
  if (!Number.isFinite(value)) return String(value);
  if (quantity === 'conductivity') return `${value.toFixed(0)} µS/cm`;
  if (quantity === 'GH') return `${convert(value, 'mol/m³', '°dGH').toFixed(1)} °dGH`;
  if (quantity === 'KH') return `${convert(value, 'meq/L', '°dKH').toFixed(1)} °dKH`;
  return `${(value * MOLAR_MASS[quantity]).toFixed(1)} mg/L`;
}

function targetProblem(target: RecipeTarget, k: number, all: readonly RecipeTarget[]): RequestProblem[] {
  const { quantity, aim, low, high, weight = 1 } = target;
  const say = (message: string, mend: string) => [problem(['targets', k], message, mend)];
  const given = [aim, low, high].filter((value) => value !== undefined);
  if (given.length === 0)
    return say(`nothing is asked of ${quantity}`, 'Give an aim, a low or a high limit.');
  if (!given.every((value) => Number.isFinite(value) && value >= 0))
    return say(
      `${quantity} is to be ${given.map((value) => shown(quantity, value)).join(', ')}`,
      'Give numbers from 0 up.',
    );
  const asked = Math.max(aim ?? 0, low ?? 0);
  if (asked > (quantity === 'conductivity' ? MOST_CONDUCTIVITY : MOST_SALT))
    return say(
      `${shown(quantity, asked)} of ${quantity} is more than sea water holds`,
      'Check the number and its unit.',
    );
  if (!(weight > 0 && weight <= 1000)) return say(`the weight ${weight} of ${quantity}`, 'Give 0 to 1000.');
  if (low !== undefined && high !== undefined && low > high)
    return say(
      `${quantity} is to be above ${shown(quantity, low)} and below ${shown(quantity, high)}`,
      'Put the low limit below the high one.',
    );
  if (aim !== undefined && (aim < (low ?? aim) - END || aim > (high ?? aim) + END))
    return say(
      `the aim of ${shown(quantity, aim)} for ${quantity} lies outside its own limits`,
      'Move the aim or the limits.',
    );
  if (all.findIndex((other) => other.quantity === quantity) < k)
    return say(`${quantity} is asked for twice`, 'Say all of it in one target.');
  return [];
}

/** Ends of what is allowed to a quantity. An aim counts as both ends with a tenth to spare. */
function ends(targets: readonly RecipeTarget[], quantity: RecipeQuantity) {
  const target = targets.find((each) => each.quantity === quantity);
  const { aim, low, high } = target ?? {};
  return {
    low: Math.max(low ?? 0, aim === undefined ? 0 : 0.9 * aim),
    high: Math.min(high ?? Infinity, aim === undefined ? Infinity : 1.1 * aim),
  };
}

/** Targets that no water whatever could meet together. */
function conflicts(targets: readonly RecipeTarget[]): RequestProblem[] {
  const [GH, calcium, magnesium, KH] = (['GH', 'calcium', 'magnesium', 'KH'] as const).map((quantity) =>
    ends(targets, quantity),
  ) as [Ends, Ends, Ends, Ends];
  const [sodium, potassium] = [ends(targets, 'sodium'), ends(targets, 'potassium')];
  const found: RequestProblem[] = [];
  if (calcium.low + magnesium.low > GH.high + END)
    found.push(
      problem(
        ['targets'],
        `calcium and magnesium together come to ${shown('GH', calcium.low + magnesium.low)} at least, GH to ${shown('GH', GH.high)} at most`,
        'GH is calcium plus magnesium: lower these two or raise GH.',
      ),
    );
  if (GH.low > calcium.high + magnesium.high + END)
    found.push(
      problem(
        ['targets'],
        `GH is to be ${shown('GH', GH.low)} at least, calcium and magnesium together ${shown('GH', calcium.high + magnesium.high)} at most`,
        'GH is calcium plus magnesium: raise one of these two or lower GH.',
      ),
    );
  const cations = 2 * Math.min(GH.high, calcium.high + magnesium.high) + sodium.high + potassium.high;
  if (KH.low > cations + END)
    found.push(
      problem(
        ['targets'],
        `KH is to be ${shown('KH', KH.low)} at least, but all positive ions allowed carry ${shown('KH', cations)}`,
        'Alkalinity needs calcium, magnesium, sodium or potassium beside it: allow more of one, or lower KH.',
      ),
    );
  return found;
}
type Ends = ReturnType<typeof ends>;

/**
 * What of a request cannot be, before anything is solved; none when it is sound. Values are in the plan's units.
 * @source derived: definitions and charge balance
 */
export function requestProblems(request: RecipeRequest): RequestProblem[] {
  const { targets, temperature, air, waters, salts } = request;
  const found = [
    ...volumeProblems(request),
    ...waterProblems(request),
    ...(waters.length > 0 ? shareProblems(waters) : []),
    ...saltProblems(salts),
    ...targets.flatMap(targetProblem),
  ];
  if (!(temperature >= 0 && temperature <= 40))
    found.push(problem(['temperature'], `${temperature} °C is not fit for animals`, 'Give 0 to 40 °C.'));
  if (
    !(air.carbonDioxide >= 100 && air.carbonDioxide <= 20_000 && air.pressure >= 5e4 && air.pressure <= 1.1e5)
  )
    found.push(
      problem(
        ['air'],
        `air with ${air.carbonDioxide} ppm of CO2 at ${air.pressure / 100} hPa`,
        'Give 100 to 20 000 ppm and 500 to 1100 hPa.',
      ),
    );
  return found.length > 0 ? found : conflicts(targets);
}
