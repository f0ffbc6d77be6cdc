import { type BandTarget, RECIPE_UNITS } from '@shoreglass/contract';
import type { Recipe, RecipeChoice, RecipeWater, TargetResult } from '@shoreglass/engine';
import { convert, MOLAR_MASS, shortName } from '@shoreglass/engine';
import colours from 'picocolors';
import { table } from './table.ts';
import { wrapped } from './wrapped.ts';

const INDENT = '  ';

function number(value: number, digits: number): string {
  const text = value.toFixed(digits);
  return Number(text) === 0 ? (0).toFixed(digits) : text;
}

const litres = (volume: number): string => `${number(1000 * volume, volume < 0.01 ? 2 : 1)} L`;

/** A mass as a kitchen scale shows it, or in milligrams where it would show nothing. */
function weight(mass: number): string {
  if (mass >= 0.1) return `${number(1000 * mass, 0)} g`;
  if (mass >= 0.01) return `${number(1000 * mass, 1)} g`;
  return mass >= 0.0001 ? `${number(1000 * mass, 2)} g` : `${number(1e6 * mass, 0)} mg`;
}

const shown = (quantity: TargetResult['quantity'], value: number): string => {
  const { unit, digits, shown: into } = RECIPE_UNITS[quantity];
  return `${number(into(value), digits)} ${unit}`;
};

function wantedText({ quantity, aim, low, high }: TargetResult): string {
  const band =
    low !== undefined && high !== undefined
      ? `${shown(quantity, low)} to ${shown(quantity, high)}`
      : low !== undefined
        ? `at least ${shown(quantity, low)}`
        : high !== undefined
          ? `at most ${shown(quantity, high)}`
          : '';
  if (aim === undefined) return band;
  return band === '' ? shown(quantity, aim) : `${shown(quantity, aim)} (${band})`;
}

function waterRows({ waters }: Recipe): string[][] {
  const told = waters.length > 1 && waters.every(({ parts }) => parts > 0);
  return waters.map(({ name, volume, parts }) => [
    name,
    litres(volume),
    told ? `${parts} ${parts === 1 ? 'part' : 'parts'}` : '',
  ]);
}

function saltRows({ salts }: Recipe): string[][] {
  return salts.map(({ name, mass, spoons }) => [
    name,
    weight(mass),
    spoons ? `or ${spoons.said} (${weight(spoons.mass)})` : 'weigh it',
  ]);
}

function hardnessLine({ GH, KH }: RecipeWater): string {
  const every = (value: number, from: string, units: readonly string[]) =>
    units
      .map((unit) => `${number(convert(value, from, unit), unit === 'ppm CaCO3' ? 0 : 1)} ${unit}`)
      .join(', ');
  const units = ['ppm CaCO3', '°fH', '°Clark', 'gpg'];
  return `GH ${every(GH, 'mol/m³', ['°dGH', ...units])}; KH ${every(KH, 'meq/L', ['°dKH', ...units])}.`;
}

function ionsLine({ composition, bicarbonate }: RecipeWater): string {
  const mass = (name: string, amount: number, molar: number) => `${name} ${number(amount * molar, 1)}`;
  return `In mg/L: ${[
    mass('calcium', composition.calcium, MOLAR_MASS.calcium),
    mass('magnesium', composition.magnesium, MOLAR_MASS.magnesium),
    mass('sodium', composition.sodium, MOLAR_MASS.sodium),
    mass('potassium', composition.potassium, MOLAR_MASS.potassium),
    mass('bicarbonate', bicarbonate, MOLAR_MASS.bicarbonate),
    mass('chloride', composition.chloride, MOLAR_MASS.chloride),
    mass('sulfate', composition.sulfate, MOLAR_MASS.sulfate),
    mass('nitrate', composition.nitrate, MOLAR_MASS.nitrate),
  ].join(', ')}.`;
}

function solidsLine({ conductivity, dissolvedSolids: solids }: RecipeWater): string {
  return `Conductivity ${number(conductivity, 0)} µS/cm at 25 °C. Dissolved solids ${number(solids.sumOfIons, 0)} mg/L by its ions, ${number(solids.residueAt180, 0)} mg/L dried; a TDS meter shows ${number(solids.meter500, 0)} (factor 0.5), ${number(solids.meter640, 0)} (0.64) or ${number(solids.meter700, 0)} ppm (0.7).`;
}

function targetLines({ targets }: Recipe, width: number): string[] {
  if (targets.length === 0) return [];
  const rows = targets.map((target) => {
    const { quantity, value, valueBySpoon, met } = target;
    return [
      quantity,
      wantedText(target),
      shown(quantity, value),
      shown(quantity, valueBySpoon),
      met ? 'yes' : 'NO',
    ];
  });
  const why = targets.flatMap((target) =>
    target.why.map((sentence) => wrapped(`${target.quantity}: ${sentence}`, width, INDENT)),
  );
  return [table([['', 'wanted', 'weighed', 'by spoon', 'reached'], ...rows], { hasHead: true }), ...why];
}

const MARKS = { warning: 'Beware: ', caution: '', note: '' } as const;

/** One recipe in full for a terminal `width` characters wide. */
export function recipeText(
  { name, about, recipe }: RecipeChoice,
  temperature: number,
  width: number,
): string {
  const title = (text: string): string => `\n${colours.underline(text)}`;
  const { water } = recipe;
  const kept = recipe.volume - recipe.mixed;
  const stays =
    kept > 1e-9 ? `, of which ${litres(kept)} stay and ${litres(recipe.mixed)} are mixed new` : '';
  const rows = [...waterRows(recipe), ...saltRows(recipe)];
  return [
    wrapped(`\n${colours.bold(`${litres(recipe.volume)}: ${name}`)}${stays}`, width, ''),
    wrapped(about, width, ''),
    title('Take'),
    rows.length > 0 ? table(rows) : `${INDENT}nothing: the water is as wanted`,
    title('What is wanted and what comes out'),
    ...targetLines(recipe, width),
    title('The water, in balance with the air'),
    wrapped(
      `pH ${number(water.pH, 2)} at ${number(temperature, 0)} °C. ${hardnessLine(water)}`,
      width,
      INDENT,
    ),
    wrapped(solidsLine(water), width, INDENT),
    wrapped(ionsLine(water), width, INDENT),
    title('In this order'),
    ...recipe.steps.map(({ text, why }, k) =>
      [
        wrapped(text, width, `${INDENT}   `, `${INDENT}${k + 1}. `),
        colours.dim(wrapped(why, width, `${INDENT}   `)),
      ].join('\n'),
    ),
    title('To mind'),
    ...recipe.remarks.map(({ severity, text }) =>
      wrapped(`${MARKS[severity]}${text}`, width, `${INDENT}  `, `${INDENT}- `),
    ),
  ].join('\n');
}

/** Several recipes side by side: what goes in, what comes out, how far off. */
export function comparisonText(choices: readonly RecipeChoice[]): string {
  const waters = [
    ...new Map(choices.flatMap(({ recipe }) => recipe.waters.map(({ id, name }) => [id, name] as const))),
  ];
  const salts = [
    ...new Map(choices.flatMap(({ recipe }) => recipe.salts.map(({ id, name }) => [id, name] as const))),
  ];
  const quantities = [
    ...new Set([
      ...choices.flatMap(({ recipe }) => recipe.targets.map(({ quantity }) => quantity)),
      ...(['conductivity', 'sodium', 'chloride'] as const),
    ]),
  ];
  const each = (make: (recipe: Recipe) => string): string[] => choices.map(({ recipe }) => make(recipe));
  const inWater = (quantity: TargetResult['quantity'], { water }: Recipe): string =>
    shown(
      quantity,
      quantity === 'GH' || quantity === 'KH' || quantity === 'conductivity'
        ? water[quantity]
        : water.composition[quantity],
    );
  const rows = [
    ['', ...choices.map(({ name }) => name)],
    ...waters.map(([id, name]) => [
      shortName(name),
      ...each(({ waters: used }) => {
        const part = used.find((water) => water.id === id);
        return part ? litres(part.volume) : '-';
      }),
    ]),
    ...salts.map(([id, name]) => [
      shortName(name),
      ...each(({ salts: used }) => {
        const dose = used.find((salt) => salt.id === id);
        return dose ? weight(dose.mass) : '-';
      }),
    ]),
    ...quantities.map((quantity) => [quantity, ...each((recipe) => inWater(quantity, recipe))]),
    ['pH', ...each(({ water }) => number(water.pH, 2))],
    [
      'targets reached',
      ...each(({ targets }) => `${targets.filter(({ met }) => met).length} of ${targets.length}`),
    ],
    ['off by (test steps)', ...each(({ misfit }) => number(misfit, 2))],
  ];
  return table(rows, { hasHead: true });
}

/** Who asks for which targets. */
export function ownersText(targets: readonly BandTarget[], width: number): string {
  return targets
    .map(({ target: { quantity, low, high }, lowBy, highBy, conflict }) => {
      if (conflict) return wrapped(conflict, width, INDENT);
      const ends = [
        ...(low === undefined ? [] : [`at least ${shown(quantity, low)} for ${lowBy}`]),
        ...(high === undefined ? [] : [`at most ${shown(quantity, high)} for ${highBy}`]),
      ];
      return wrapped(`${quantity}: ${ends.join(', ')}.`, width, INDENT);
    })
    .join('\n');
}
