import { MOLAR_MASS } from '../molar-masses.ts';
import { isMet } from './miss.ts';
import type { Made } from './mixing-steps.ts';
import { nameList } from './name-list.ts';
import type { RecipeRemark, RecipeWater } from './recipe.ts';
import type { RecipeRequest, SourceWater } from './request.ts';
import { shortName } from './short-name.ts';
import { roomToDissolve } from './what-dissolves.ts';

const caution = (text: string, source?: string): RecipeRemark => ({
  severity: 'caution',
  text,
  ...(source ? { source } : {}),
});
const warning = (text: string): RecipeRemark => ({ severity: 'warning', text });
const note = (text: string): RecipeRemark => ({ severity: 'note', text });

/**
 * Calcium in the hardness below which shell and skin may lack it and magnesium begins to harm [1].
 * @source assumed: natural waters hold half or more; van-dam-2010 found harm at magnesium over calcium above 9 by mass
 */
export const LEAST_CALCIUM = 0.4;

/** Saturation index above which lime is seen to fall out in time. @source assumed: waters hold out to about 0.3 */
const LIME = 0.3;

/** All ions together up to which a water counts as bare of minerals [mol/m3]: some 10 mg/L of salt. @source assumed */
const BARE = 0.2;

/** Whether a water holds hardly anything, whatever it was made from. */
function isBare({ kind, composition }: SourceWater): boolean {
  return kind === 'pure' && Object.values(composition).reduce((sum, amount) => sum + amount, 0) <= BARE;
}

function sourceRemarks({ waters, kept }: RecipeRequest, made: Made): RecipeRemark[] {
  const used = waters.filter(({ id }) => made.waters.some((part) => part.id === id));
  const remarks = used.flatMap(({ assumed = [] }) => assumed.map(note));
  if (used.some(({ kind }) => kind === 'tap'))
    remarks.push(
      caution(
        'Tap water may hold chlorine or chloramine. Chlorine leaves water that is aired for a day or two; chloramine does not and needs a water conditioner that names it. Ask the supplier which is used.',
      ),
      caution(
        'Copper from pipes harms shrimps, snails and other invertebrates at some tens of micrograms per litre: let the tap run before filling, use cold water only, and test new copper pipes.',
      ),
    );
  if (used.some(({ kind }) => kind === 'rain'))
    remarks.push(
      caution(
        'Rain off a roof carries what lies on it: leave the first rain, and use none from copper, zinc, lead or bitumen.',
      ),
    );
  if (used.length > 0 && used.every(isBare) && made.salts.length === 0)
    remarks.push(
      warning('Pure water alone holds no minerals: animals lose salts to it, and its pH swings freely.'),
    );
  if (kept)
    remarks.push(
      caution(
        'Change an existing water in small steps over days: a sudden change of hardness or pH harms animals, above all those that have just moulted.',
      ),
    );
  return remarks;
}

function saltRemarks({ salts }: RecipeRequest, made: Made): RecipeRemark[] {
  if (made.salts.length === 0) return [];
  const used = salts.filter(({ id }) => made.salts.some((dose) => dose.id === id));
  const remarks = used.flatMap(({ name, cautions = [] }) =>
    cautions.map((text) => caution(`${shortName(name)}: ${text}`)),
  );
  if (used.some(({ formula }) => formula.includes('H2O')))
    remarks.push(
      caution(
        'Check the formula on the pack, water of crystallisation included: the same mass of a dried salt holds up to twice as much, and a pack left open may have taken up water.',
      ),
    );
  remarks.push(
    caution(
      'Use food or pharmacy grade, without anti-caking agents, scents or dyes; technical and road salts may hold metals.',
    ),
  );
  const unspooned = made.salts.filter(({ spoons }) => !spoons);
  if (unspooned.length > 0)
    remarks.push(
      note(
        `${unspooned.map(({ name }) => shortName(name)).join(', ')}: too little or too much for spoons. Weigh it, or dissolve ten times as much in a litre and use a tenth of that.`,
      ),
    );
  if (made.salts.some(({ spoons }) => spoons))
    remarks.push(
      note(
        'Level spoons are of 5 mL and 15 mL, filled loosely and struck flat. Packing and grain change what they hold by a fifth either way: weigh where you can, and measure the water.',
      ),
    );
  return remarks;
}

function solubilityRemarks(request: RecipeRequest, made: Made): RecipeRemark[] {
  const room = roomToDissolve(request);
  // Carbonates have a remark of their own: what dissolves of them is a matter of CO2.
  const plain = made.salts.filter(({ id }) =>
    request.salts.some((salt) => salt.id === id && salt.dissolving !== 'with carbon dioxide'),
  );
  return plain.flatMap(({ name, leastWater }) =>
    leastWater > 0.5 * room
      ? [
          warning(
            `${shortName(name)}: this much needs at least ${(1000 * leastWater).toFixed(1)} L to dissolve, and there are ${(1000 * room).toFixed(1)} L: ask for less of it, or take a salt that dissolves better.`,
          ),
        ]
      : [],
  );
}

/** Targets that weighing reaches and level spoons miss. */
function spoonRemarks({ targets }: RecipeRequest, made: Made): RecipeRemark[] {
  const missed = made.targets.filter(({ quantity, met, valueBySpoon }) => {
    const target = targets.find((each) => each.quantity === quantity);
    return met && target !== undefined && !isMet(target, valueBySpoon);
  });
  if (missed.length === 0) return [];
  const names = nameList(missed.map(({ quantity }) => quantity));
  return [
    warning(
      `Spoons are too coarse for this volume: with them ${names} is missed. Weigh, or mix more at once.`,
    ),
  ];
}

/**
 * Ions in solution above half of what impaired the young of water fleas by a sixth in three weeks [mol/m3].
 * @source biesinger-christensen-1972 (memory): potassium 53, sodium 680, magnesium 82, calcium 116 mg/L
 */
const MUCH = { potassium: 0.68, magnesium: 1.7 } as const;

function ionRemarks({ composition, GH }: RecipeWater): RecipeRemark[] {
  const little: RecipeRemark[] =
    GH > 0.3 && composition.calcium < LEAST_CALCIUM * GH
      ? [
          {
            severity: 'warning' as const,
            text: 'Most of this GH is magnesium: crabs, shrimps, snails and woodlice build shell and skin from calcium, and magnesium alone harms water animals. Ask for calcium as well.',
            source: 'van Dam et al. 2010, toxicity of magnesium in soft water',
          },
        ]
      : [];
  const much = (Object.keys(MUCH) as (keyof typeof MUCH)[]).flatMap((ion) => {
    const amount = composition[ion];
    if (amount <= MUCH[ion]) return [];
    return [
      {
        severity: 'warning' as const,
        text: `${(amount * MOLAR_MASS[ion]).toFixed(0)} mg/L of ${ion} is much for small crustaceans and snails: take KH or GH from tap water or from several salts, or ask for less.`,
        source: 'Biesinger & Christensen 1972, water fleas; recalled',
      },
    ];
  });
  return [...little, ...much];
}

function waterRemarks({ water, salts }: Made, request: RecipeRequest): RecipeRemark[] {
  const remarks: RecipeRemark[] = [];
  const index = water.calciteSaturationIndex;
  if (index > LIME)
    remarks.push(
      warning(
        `Saturated with lime (calcite index ${index.toFixed(1)}): in air some calcium and KH will fall out as a crust, sooner on a heater or in a kettle. Less KH or less calcium avoids it.`,
      ),
    );
  if (water.gypsumSaturationIndex > 0)
    remarks.push(warning('More gypsum than this water can hold: part of it will stay on the bottom.'));
  const needsCarbonDioxide = request.salts.some(
    ({ id, dissolving }) => dissolving === 'with carbon dioxide' && salts.some((dose) => dose.id === id),
  );
  if (needsCarbonDioxide && index > 0)
    remarks.push(
      warning(
        'In balance with air this water holds less carbonate than the recipe brings: part of the powder stays undissolved, and KH and GH come out lower.',
      ),
    );
  if (water.KH < 0.18 && request.targets.every(({ quantity }) => quantity !== 'KH'))
    remarks.push(note('Almost no KH: wood, leaves and nitrification will take its pH down within weeks.'));
  return remarks;
}

/**
 * What to mind about a recipe: cautions where an animal or a person can come to harm, warnings where the water will
 * not stay as computed, notes on what was assumed.
 * @source common practice, no source, except where a remark names one; saturation derived from `speciate`
 */
export function recipeRemarks(request: RecipeRequest, made: Made): RecipeRemark[] {
  return [
    ...waterRemarks(made, request),
    ...ionRemarks(made.water),
    ...solubilityRemarks(request, made),
    ...sourceRemarks(request, made),
    ...spoonRemarks(request, made),
    ...saltRemarks(request, made),
  ];
}
