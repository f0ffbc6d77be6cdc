import { ENGINE_VERSION } from '@shoreglass/engine';
import { Command, CommanderError } from 'commander';
import { addAhead } from './commands/ahead.ts';
import { addCheck } from './commands/check.ts';
import { addDemo } from './commands/demo.ts';
import { addLife } from './commands/life.ts';
import { addMix } from './commands/mix.ts';
import { addServe } from './commands/serve.ts';
import { addShape } from './commands/shape.ts';
import { addWater } from './commands/water.ts';
import { BadInput, Blocked, EXIT, reasonOf } from './exit-codes.ts';
import { onceOnly } from './once-only.ts';

const EXAMPLES = `
Examples:
  shoreglass check my-bank.yaml              what is wrong with the file or the plan
  shoreglass ahead my-bank.yaml --days 365   a year of it
  shoreglass water my-bank.yaml              the water over a year: who adds, who removes
  shoreglass life my-bank.yaml --add hyalella-azteca:20   who eats whom, and what twenty more do
  shoreglass shape my-bank.yaml --humidity "80 %"   volumes, weight, glass, flow, light, and the cover
  shoreglass demo --json > demo.json         the demo as one document
  shoreglass mix --for my-bank.yaml          how to make the water for those who live there
  shoreglass serve                           the app in a browser

Exit codes: 0 done, 1 the enclosure has blocking problems, 2 bad input, 3 the program or the machine failed.`;

function commandLine(): Command {
  const program = new Command('shoreglass')
    .description('Computes the year of a half-land, half-water glass enclosure before it is built.')
    .version(ENGINE_VERSION)
    .showHelpAfterError('Add --help to see what is possible.')
    .addHelpText('after', EXAMPLES)
    .exitOverride();
  for (const add of [addCheck, addAhead, addWater, addLife, addShape, addDemo, addMix, addServe])
    add(program);
  for (const command of program.commands) {
    command.exitOverride();
    onceOnly(command);
  }
  return program;
}

/** Exit code for what went wrong; says it on standard error unless commander already has. */
function failed(error: unknown): number {
  if (error instanceof CommanderError) return error.exitCode === 0 ? EXIT.done : EXIT.badInput;
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  if (error instanceof Blocked) return EXIT.blocked;
  return error instanceof BadInput || error instanceof RangeError ? EXIT.badInput : EXIT.failed;
}

// A reader that stops early, such as head, is no error.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(EXIT.done);
  process.stderr.write(`The answer could not be written: ${reasonOf(error)}.\n`);
  process.exit(EXIT.failed);
});

try {
  await commandLine().parseAsync();
} catch (error) {
  process.exitCode = failed(error);
}
