import {
  DISSOLVED_IDS,
  type Plan,
  type Recipe,
  type RecipeRequest,
  splitChange,
  type WaterComposition,
} from '@shoreglass/engine';
import colours from 'picocolors';
import { wrapped } from './wrapped.ts';

const INDENT = '  ';

const whole = (water: Partial<WaterComposition>): WaterComposition =>
  Object.fromEntries(DISSOLVED_IDS.map((id) => [id, water[id] ?? 0])) as unknown as WaterComposition;

/** The new part of a change of water, poured over days as slowly as those who live there need; empty where none stays. */
export function pouringLines(
  plan: Plan,
  { kept, volume, temperature }: RecipeRequest,
  { mixWater }: Pick<Recipe, 'mixWater'>,
  width: number,
): string[] {
  if (!kept || !mixWater || kept.volume >= volume) return [];
  const { sentence, steps } = splitChange(
    plan,
    { composition: whole(kept.composition), temperature },
    {
      kind: 'water change',
      fraction: 1 - kept.volume / volume,
      water: { composition: mixWater.composition, temperature },
    },
  );
  return [
    '',
    colours.underline('Poured in over days'),
    wrapped(sentence, width, INDENT),
    ...steps.map(({ day, amount, after: { pH, KH, GH, conductivity } }) => {
      const when = `day ${String(day + 1).padStart(2)}  replace ${String(Math.round(100 * amount)).padStart(2)} %`;
      const then = `then pH ${pH.toFixed(1)}, KH ${KH.toFixed(1)} °dKH, GH ${GH.toFixed(1)} °dGH, ${conductivity.toFixed(0)} µS/cm`;
      return wrapped(`${when}  ${then}`, width, `${INDENT}  `, INDENT);
    }),
  ];
}
