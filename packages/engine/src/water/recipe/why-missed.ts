import { fitDoses } from './fit-doses.ts';
import { isMet } from './miss.ts';
import { mixModel, row } from './mix-model.ts';
import { nameList } from './name-list.ts';
import { quantityIn } from './recipe-water.ts';
import type { RecipeQuantity, RecipeRequest, RecipeTarget } from './request.ts';
import { shortName } from './short-name.ts';

/** What of the trade's shelf brings a quantity. */
const BRINGERS: Readonly<Record<RecipeQuantity, string>> = {
  GH: 'a salt of calcium or magnesium, such as gypsum, calcium chloride or Epsom salt',
  KH: 'a bicarbonate, such as potassium bicarbonate or baking soda, or harder tap water',
  calcium: 'a calcium salt, such as gypsum or calcium chloride',
  magnesium: 'a magnesium salt, such as Epsom salt',
  sodium: 'a sodium salt',
  potassium: 'a potassium salt, such as potassium bicarbonate',
  chloride: 'a chloride, such as calcium chloride',
  sulfate: 'a sulfate, such as gypsum or Epsom salt',
  nitrate: 'a nitrate; enclosures make their own from feed',
  conductivity: 'more of any salt',
};

const NAMES: Readonly<Record<RecipeQuantity, string>> = {
  GH: 'GH',
  KH: 'KH',
  calcium: 'calcium',
  magnesium: 'magnesium',
  sodium: 'sodium',
  potassium: 'potassium',
  chloride: 'chloride',
  sulfate: 'sulfate',
  nitrate: 'nitrate',
  conductivity: 'conductivity',
};

/** Why a quantity cannot be lowered, or raised, far enough even if nothing else mattered. */
function byItself(request: RecipeRequest, target: RecipeTarget, value: number): string {
  const { quantity } = target;
  const { fixed, waters, salts } = row(mixModel(request), quantity);
  const wanted = target.aim ?? target.high ?? target.low ?? 0;
  if (value > wanted) {
    const least = Math.min(...(waters.length > 0 ? waters : [0]));
    if (fixed > least)
      return `The ${NAMES[quantity]} is in the water that stays; only changing more of it lowers it.`;
    return `No salt takes ${NAMES[quantity]} out, and none of the waters holds little enough: a purer one, distilled, reverse osmosis or rain, lowers it.`;
  }
  const raises = [...waters, ...salts].some((each) => each > 1e-9);
  if (raises)
    return `What is at hand does not bring enough ${NAMES[quantity]}: it takes ${BRINGERS[quantity]}.`;
  return `Nothing at hand brings ${NAMES[quantity]}: it takes ${BRINGERS[quantity]}.`;
}

/** What else comes along with a quantity, by which of the sources at hand. */
function alongWith(request: RecipeRequest, wanted: RecipeQuantity, against: RecipeQuantity): string {
  const model = mixModel(request);
  const brings = row(model, wanted);
  const spoils = row(model, against);
  const names = [
    ...request.waters.flatMap(({ name }, k) =>
      brings.waters[k]! > 1e-3 && spoils.waters[k]! > 1e-3 ? [name] : [],
    ),
    ...request.salts.flatMap(({ name }, k) =>
      brings.salts[k]! > 1e-3 && spoils.salts[k]! > 1e-3 ? [name] : [],
    ),
  ];
  return names.length > 0
    ? `What brings ${NAMES[wanted]} here (${nameList(names.map(shortName))}) brings ${NAMES[against]} as well.`
    : '';
}

/** Another source that would bring the one without the other, where the trade has one. */
function wayOut(wanted: RecipeQuantity, against: RecipeQuantity): string {
  if (wanted === 'KH' && against === 'sodium') return 'Potassium bicarbonate raises KH without sodium.';
  if (wanted === 'KH' && against === 'potassium') return 'Baking soda raises KH without potassium.';
  if (wanted === 'GH' && against === 'KH')
    return 'GH without KH comes from chlorides and sulfates: calcium chloride, gypsum, Epsom salt.';
  if (wanted === 'KH' && against === 'GH')
    return 'KH without GH comes from the bicarbonates of potassium or sodium.';
  if (wanted === 'calcium' && against === 'sulfate')
    return 'Calcium chloride brings calcium without sulfate.';
  if (wanted === 'calcium' && against === 'chloride') return 'Gypsum brings calcium without chloride.';
  if (wanted === 'magnesium' && against === 'sulfate')
    return 'Magnesium chloride brings magnesium without sulfate.';
  if (wanted === 'magnesium' && against === 'chloride')
    return 'Epsom salt brings magnesium without chloride.';
  if (against === 'conductivity')
    return 'Every degree of hardness brings its own conductivity: allow more of it, or ask for less hardness.';
  return '';
}

function without(request: RecipeRequest, other: RecipeTarget): RecipeRequest {
  return { ...request, targets: request.targets.filter((each) => each !== other) };
}

/**
 * Why a target is missed, one sentence each: no source, no purer water, or which other target stands against it,
 * found by solving again without each. Returns none for a target that is met.
 * @param value what the recipe reaches [plan's unit of the quantity]
 * @source derived: comparison of recipes with and without each target
 */
export function whyMissed(request: RecipeRequest, target: RecipeTarget, value: number): string[] {
  if (isMet(target, value)) return [];
  const { quantity } = target;
  const alone = fitDoses({ ...request, targets: [target] });
  if (!isMet(target, quantityIn(alone.water, quantity))) return [byItself(request, target, value)];
  const rivals = request.targets.filter(
    (other) =>
      other !== target && isMet(target, quantityIn(fitDoses(without(request, other)).water, quantity)),
  );
  const isLow = value < (target.aim ?? target.low ?? 0);
  if (rivals.length === 0) return ['Several of the other targets together stand against it.'];
  return rivals.map(({ quantity: against }) => {
    const head = `What is asked of ${NAMES[against]} stands against it.`;
    const [raised, spoilt] = isLow ? [quantity, against] : [against, quantity];
    return [head, alongWith(request, raised, spoilt), wayOut(raised, spoilt)].filter(Boolean).join(' ');
  });
}
