import { recipesDocument } from '@shoreglass/contract';
import { compareRecipes, RECIPE_QUANTITIES } from '@shoreglass/engine';
import type { Command } from 'commander';
import colours from 'picocolors';
import { BadInput } from '../exit-codes.ts';
import { comparisonText, ownersText, recipeText } from '../print/mix.ts';
import { pouringLines } from '../print/pouring.ts';
import { widthUpTo } from '../print/width.ts';
import { type MixOptions, mixRequest } from '../run/mix-request.ts';

const WIDEST = 100;

const EXAMPLES = `
Examples:
  shoreglass mix --from rain,hard-tap --gh "6 °dGH" --kh "4 °dKH" --max-sodium "10 mg/L" --volume "40 L"
  shoreglass mix --from distilled --salts gypsum,epsom,potassium-bicarbonate --gh "107 ppm" --kh "71 ppm" --volume "10 gal"
  shoreglass mix --for my-bank.yaml                       for those who live there, in its volume
  shoreglass mix --for my-bank.yaml --keep "30 L"         a change of water: 30 L stay, the rest is mixed new
  shoreglass mix --own my-tap.yaml --from my-tap,rain --kh "4 to 6 °dKH" --volume "20 L"

Amounts: "6 °dGH" to come near to, "4 to 8 °dKH" to stay between, "at most 10 mg/L". Any unit of the trade: °dGH, °dKH,
ppm CaCO3 (or ppm), °fH, °Clark, gpg, mmol/L, meq/L, mg/L, mg N/L, µS/cm. Waters and salts are those of the library and
of the file; a wrong name is answered with the nearest.`;

function withTargets(command: Command): Command {
  for (const quantity of RECIPE_QUANTITIES) {
    const name = quantity.toLowerCase();
    command.option(`--${name} <amount>`, `${quantity} wanted`);
    command.option(`--max-${name} <amount>`, `most ${quantity}`);
  }
  return command;
}

/** `shoreglass mix`: how to make a water from waters and salts at hand. */
export function addMix(program: Command): void {
  const command = program
    .command('mix')
    .description(
      'work out how to make a water: litres of each water, grams and spoons of each salt, in which order',
    )
    .option('--from <waters>', 'waters to mix from, with commas; "hard-tap at most 50 %" limits a share')
    .option('--own <file>', 'waters of your own by their analysis (YAML), named in --from by their id')
    .option('--salts <salts>', 'salts at hand, with commas, or none; a usual shelf when left out')
    .option('--volume <amount>', 'of the finished water')
    .option('--for <file>', 'an enclosure: targets from those who live there, volume and air from the plan')
    .option('--keep <amount>', 'water that stays, such as "30 L", or "30 L of my-tank" without an enclosure')
    .option('--temperature <amount>', 'of the water in use')
    .option(
      '--only <name>',
      'one way in full: closest, fewest-salts, no-sodium, least-weighing, purest-water',
    );
  withTargets(command)
    .option('--json', 'print all ways as one JSON document and nothing else', false)
    .addHelpText('after', EXAMPLES)
    .action((options: MixOptions) => showMix(options));
}

function showMix(options: MixOptions): void {
  const { request, owners, plan } = mixRequest(options);
  const choices = compareRecipes(request);
  const shown = options.only === undefined ? choices[0] : choices.find(({ id }) => id === options.only);
  if (!shown)
    throw new BadInput(
      `--only: '${options.only}' is not one of the ways that differ here: ${choices.map(({ id }) => id).join(', ')}.`,
    );
  if (options.json) {
    process.stdout.write(
      `${JSON.stringify(recipesDocument(options.only === undefined ? choices : [shown]))}\n`,
    );
    return;
  }
  const width = widthUpTo(WIDEST);
  const asked =
    owners.length > 0
      ? ['', colours.underline('What those who live there ask for'), ownersText(owners, width)]
      : [];
  const compared =
    choices.length > 1
      ? [
          '',
          colours.underline('Other ways, side by side (--only NAME shows one in full)'),
          comparisonText(choices),
        ]
      : [];
  const poured = plan ? pouringLines(plan, request, shown.recipe, width) : [];
  process.stdout.write(
    `${[...asked, recipeText(shown, request.temperature, width), ...poured, ...compared].join('\n')}\n`,
  );
}
