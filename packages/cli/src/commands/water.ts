import type { Command } from 'commander';
import { waterText } from '../print/water.ts';
import { widthUpTo } from '../print/width.ts';
import { readPlanAndContent } from '../run/read-enclosure.ts';
import { waterYear } from '../run/water-year.ts';
import { wholeNumber } from '../whole-number.ts';
import { refuseAstray } from './options-given.ts';
import {
  changeOf,
  questionOf,
  SAY_MORE,
  startOf,
  type WaterOptions,
  WHEN_LEFT_OUT,
} from './water-options.ts';

const WIDEST = 100;

const EXAMPLES = `
Examples:
  shoreglass water my-bank.yaml
  shoreglass water my-bank.yaml --buffer coral --for "200 d" --sure 90
  shoreglass water my-bank.yaml --buffer all --grain "1 mm, 3 mm" --hold "KH 3 to 8 °dKH, pH 6.5 to"
  shoreglass water my-bank.yaml --now "KH 4 °dKH, GH 7 °dGH, EC 320 µS/cm, pH 7.2"
  shoreglass water my-bank.yaml --change-to rain --share "60 %"`;

async function showWater(file: string, options: WaterOptions, command: Command): Promise<void> {
  for (const each of SAY_MORE) refuseAstray(command, each);
  const { plan: written, content } = readPlanAndContent(file);
  const question = questionOf(options);
  const measured = startOf(written, options);
  const plan = measured?.plan ?? written;
  const change = changeOf(plan, content, options);
  const { days, members, seed } = options;
  const document = await waterYear({
    plan,
    content,
    options: { days, members, seed },
    ...(measured && { measured }),
    ...(change && { change }),
    ...(question && { question }),
  });
  const width = widthUpTo(WIDEST);
  process.stdout.write(options.json ? `${JSON.stringify(document)}\n` : `${waterText(document, width)}\n`);
}

/** `shoreglass water FILE`: the water over a year, who adds and who removes, and the buffer that holds it. */
export function addWater(program: Command): void {
  program
    .command('water')
    .description(
      'compute the water over a year: its course, its budgets, what wood and litter do, a buffer that lasts',
    )
    .argument('<file>', 'enclosure file (YAML), or the name of an example')
    .option('--days <days>', 'length of the course, 1 to 1500', wholeNumber(1, 1500), 365)
    .option('--members <runs>', 'runs in the ensemble, 2 to 2000', wholeNumber(2, 2000), 100)
    .option('--seed <number>', 'same seed, same answer', wholeNumber(0, 4294967295), 1)
    .option('--now <readings>', 'start from water as measured, in any unit: "KH 4 °dKH, GH 7 °dGH, pH 7.2"')
    .option('--buffer <carbonates>', 'size a buffer: carbonates of the library, separated by commas, or all')
    .option('--grain <sizes>', 'grains to try; half, once and twice the usual one when left out')
    .option('--for <time>', `how long the buffer is to last; ${WHEN_LEFT_OUT.for} when left out`)
    .option('--sure <share>', `share of runs in which it must; ${WHEN_LEFT_OUT.sure} when left out`)
    .option(
      '--hold <bands>',
      'bands to hold instead of those of who lives there: "KH 3 to 8 °dKH, pH 6.5 to 8"',
    )
    .option('--change-to <water>', 'spread a water change over days, as slowly as the animals need')
    .option(
      '--share <share>',
      `part of the water that the change replaces; ${WHEN_LEFT_OUT.share} when left out`,
    )
    .option('--json', 'print one JSON document (docs/schema/water.schema.json) and nothing else', false)
    .addHelpText('after', EXAMPLES)
    .action(showWater);
}
