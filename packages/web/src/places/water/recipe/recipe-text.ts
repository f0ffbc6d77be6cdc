import type { RecipeChoice } from '@shoreglass/engine';
import { askedText, gramsText, litresText, partsText, targetText, WATER_LINES } from './recipe-words.ts';

interface RecipePage {
  readonly enclosure: string;
  /** ISO date on which it was worked out. */
  readonly on: string;
  readonly choice: RecipeChoice;
  readonly units: Readonly<Record<string, string>>;
  /** Water of the enclosure that stays and is mixed with [m³]. */
  readonly stays?: number | undefined;
}

/** A recipe as plain text, to copy, to print and to pin to the cupboard. */
export function recipeText({ enclosure, on, choice, units, stays }: RecipePage): string {
  const { recipe } = choice;
  const { waters, salts, targets, steps, remarks, water, volume } = recipe;
  const lines = [
    `${enclosure}: ${litresText(volume)} of water (${choice.name}), worked out ${on}`,
    ...(stays === undefined ? [] : [`of which ${litresText(stays)} stay in the enclosure`]),
    '',
    'TAKE',
    ...waters.map((part) => `  ${litresText(part.volume)}  ${part.name}${inParts(part.parts)}`),
    ...salts.map(
      ({ mass, name, formula, spoons }) =>
        `  ${gramsText(mass)}  ${name} (${formula})${spoons ? `, or ${spoons.said}` : ', weigh it'}`,
    ),
    '',
    'BECOMES',
    ...WATER_LINES.map(({ name, of }) => `  ${name}: ${of(water)}`),
    ...targets.map(
      (target) =>
        `  asked for ${target.quantity} ${askedText(target, units[target.quantity])}: ${
          target.met ? 'met' : targetText(target.quantity, target.value, units[target.quantity])
        }`,
    ),
    ...section(
      'CANNOT BE REACHED',
      targets.flatMap(({ why }) => why),
    ),
    ...section(
      'HOW',
      steps.map(({ text }, index) => `${index + 1}. ${text}`),
    ),
    ...section(
      'MIND',
      remarks.map(({ text }) => text),
    ),
  ];
  return `${lines.join('\n').replaceAll('\u00a0', ' ')}\n`;
}

function inParts(parts: number): string {
  return parts === 0 ? '' : `, ${partsText(parts)}`;
}

function section(title: string, lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : ['', title, ...lines.map((line) => `  ${line}`)];
}
