import { readSalt } from '../salts.ts';
import { nameList } from './name-list.ts';
import type { MixingStep, Recipe, SaltDose } from './recipe.ts';
import type { RecipeRequest, RecipeSalt } from './request.ts';
import { shortName } from './short-name.ts';
import { roomToDissolve } from './what-dissolves.ts';

/** A recipe before its steps and remarks are written. */
export type Made = Omit<Recipe, 'steps' | 'remarks'>;

const litres = (volume: number): string => {
  const value = 1000 * volume;
  return `${value >= 10 ? value.toFixed(1) : value.toFixed(2)} L`;
};
/** Less than this is not worth a pot of its own [m3]. */
const LEAST_POT = 5e-4;

type Dosed = SaltDose & { readonly salt: RecipeSalt };

const isBicarbonate = ({ formula }: SaltDose) => /HCO3/.test(formula);
const isCarbonate = ({ formula }: SaltDose) => /(^|[^H])CO3|\(?OH\)?/.test(formula) && !/HCO3/.test(formula);
const ids = (salts: readonly Dosed[]) => salts.map(({ id }) => id);
const names = (salts: readonly Dosed[]) => nameList(salts.map(({ name }) => shortName(name)));

function pourStep({ waters, salts, mixed }: Made, { kept }: RecipeRequest): MixingStep[] {
  if (waters.length === 0) return [];
  const poured = nameList(waters.map(({ name, volume }) => `${litres(volume)} of ${shortName(name)}`));
  return [
    {
      text: `${waters.length > 1 ? 'Mix' : 'Pour'} ${poured} into a clean vessel${salts.length > 0 ? '; keep some of it back for dissolving' : ''}.`,
      why:
        salts.length === 0
          ? 'In a vessel of its own the water can be measured and aired before an animal meets it.'
          : kept
            ? `${litres(mixed)} are made new; salts dissolved outside the enclosure reach no animal undiluted.`
            : 'Salts dissolve in plenty of water, and a mistake shows before an animal meets it.',
      salts: [],
    },
  ];
}

function slowStep(salts: readonly Dosed[], pot: string, room: number): MixingStep[] {
  if (salts.length === 0) return [];
  const water = salts.reduce((sum, { leastWater }) => sum + leastWater, 0);
  const least = Math.max(2 * water, LEAST_POT);
  const into = least < room ? `at least ${litres(least)}` : `all ${litres(room)}`;
  const until =
    water <= room
      ? 'go on for hours, until no grain is left; an air stone overnight does it'
      : 'pour it off what stays on the bottom after a night: not all of it dissolves';
  return [
    {
      text: `First ${names(salts)}: stir into ${into} of ${pot} and ${until}.`,
      why: 'It dissolves slowly and little of it at a time, fastest in water that holds no other calcium or sulfate yet.',
      salts: ids(salts),
    },
  ];
}

function quickStep(salts: readonly Dosed[], pot: string): MixingStep[] {
  if (salts.length === 0) return [];
  const warms = salts.some(({ formula }) => /^CaCl2/.test(formula));
  return [
    {
      text: `Then ${names(salts)}: ${salts.length > 1 ? `each by itself in a glass of ${pot}, poured in one after the other` : `stirred into a glass of ${pot} and poured in`}${warms ? '; calcium chloride into the water, never water onto it, since it grows hot' : ''}.`,
      why:
        salts.length > 1
          ? 'Calcium of one glass and sulfate of the other would fall out as gypsum if they met undiluted.'
          : 'It dissolves at once; poured in dissolved, it spreads through the whole.',
      salts: ids(salts),
    },
  ];
}

function lastSteps(bicarbonates: readonly Dosed[], carbonates: readonly Dosed[], pot: string): MixingStep[] {
  const steps: MixingStep[] = [];
  if (bicarbonates.length > 0)
    steps.push({
      text: `Last ${names(bicarbonates)}: dissolve in a litre or so of ${pot} without heating, and pour slowly into the stirred whole.`,
      why: 'Calcium and bicarbonate in one concentrate fall out as lime; heat drives CO2 out and makes it worse.',
      salts: ids(bicarbonates),
    });
  if (carbonates.length > 0)
    steps.push({
      text: `Stir in ${names(carbonates)} as the finest powder, and bubble CO2 or much air through until the water is clear; days with air alone.`,
      why: 'Carbonates and lime go into solution only as CO2 turns them into bicarbonate; without it most stays on the bottom and the pH shoots up.',
      salts: ids(carbonates),
    });
  return steps;
}

function readyStep({ water, mixWater, volume }: Made, { kept }: RecipeRequest): MixingStep {
  const conductivity = Math.round(water.conductivity);
  return {
    text: kept
      ? `${mixWater ? `Air the mix for a day at the enclosure's temperature; it should read about ${Math.round(mixWater.conductivity)} µS/cm at 25 °C. Pour` : 'Pour'} it in slowly over hours, in parts over days where hardness changes much. The whole ${litres(volume)} should then read about ${conductivity} µS/cm.`
      : `Air it for a day, then measure GH, KH and conductivity: about ${conductivity} µS/cm at 25 °C.`,
    why: 'Only in balance with the air does the pH settle, and the meter tells a wrong spoon before the animals do.',
    salts: [],
  };
}

/**
 * The steps of making a mix, in an order in which nothing falls out: waters, slow salts, other sulfates and chlorides
 * one by one, bicarbonates, carbonates, airing. Each with its reason.
 * @source derived: solubilities of gypsum and calcite; the handling is common practice, no source
 */
export function mixingSteps(request: RecipeRequest, made: Made): MixingStep[] {
  const dosed = made.salts.map((dose): Dosed => {
    const salt = request.salts.find(({ id }) => id === dose.id)!;
    return { ...dose, salt };
  });
  const carbonates = dosed.filter(
    (dose) => isCarbonate(dose) || dose.salt.dissolving === 'with carbon dioxide',
  );
  const bicarbonates = dosed.filter(isBicarbonate);
  const others = dosed.filter((dose) => !carbonates.includes(dose) && !bicarbonates.includes(dose));
  const calciumLast = others
    .filter(({ salt }) => salt.dissolving === 'quick')
    .sort(
      (a, b) => Number('calcium' in readSalt(a.formula).ions) - Number('calcium' in readSalt(b.formula).ions),
    );
  const pot = made.mixed > 0 ? 'the mix' : 'the water, taken out,';
  return [
    ...pourStep(made, request),
    ...slowStep(
      others.filter(({ salt }) => salt.dissolving === 'slow'),
      pot,
      roomToDissolve(request),
    ),
    ...quickStep(calciumLast, pot),
    ...lastSteps(bicarbonates, carbonates, pot),
    readyStep(made, request),
  ];
}
