import { spawn } from 'node:child_process';
import { existsSync, statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { startServer } from '@shoreglass/server';
import type { Command } from 'commander';
import { BadInput, reasonOf } from '../exit-codes.ts';
import { IS_BUILT } from '../run/start-worker.ts';
import { wholeNumber } from '../whole-number.ts';

/** The built app, from the built program in `dist` and from its source in `src/commands`. */
const WEB_FOLDER = new URL(IS_BUILT ? '../../web/dist/' : '../../../web/dist/', import.meta.url);

interface ServeOptions {
  readonly port: number;
  readonly data: string;
  readonly open: boolean;
}

function openBrowser(address: string): void {
  const [command, ...args] =
    process.platform === 'darwin'
      ? ['open']
      : process.platform === 'win32'
        ? ['cmd', '/c', 'start', '']
        : ['xdg-open'];
  const child = spawn(command as string, [...args, address], { stdio: 'ignore', detached: true });
  child.on('error', () => process.stdout.write('No browser could be opened; use the address above.\n'));
  child.unref();
}

/** Resolves on Ctrl-C or a polite end; further signals while closing change nothing. */
function closed(): Promise<void> {
  return new Promise((resolve) => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.on(signal, () => resolve());
  });
}

/** `shoreglass serve`: the app on this machine's loopback address, until Ctrl-C. */
export function addServe(program: Command): void {
  program
    .command('serve')
    .description('serve the app on this machine only; a taken port moves to the next')
    .option('--port <port>', 'first port to try', wholeNumber(0, 65535), 4321)
    .option('--data <folder>', 'folder of your own enclosure files', 'data/enclosures')
    .option('--open', 'open a browser', false)
    .action(async ({ port, data, open }: ServeOptions) => {
      if (existsSync(data) && !statSync(data).isDirectory())
        throw new BadInput(
          `--data: ${data} is not a folder. Name the folder of your enclosure files; one that is not there yet is made when a file is first saved.`,
        );
      if (!existsSync(new URL('index.html', WEB_FOLDER)))
        process.stderr.write(
          'The app is not built yet, so that pages stay empty: run npm run build first.\n',
        );
      const server = await startServer({
        port,
        dataFolder: data,
        webFolder: fileURLToPath(WEB_FOLDER),
        log: (line) => process.stderr.write(`${line}\n`),
      }).catch((error: unknown) => {
        throw new BadInput(`--port ${port}: ${reasonOf(error)}`);
      });
      process.stdout.write(`\nShoreglass is at ${server.address}  (Ctrl-C ends it)\n`);
      if (open) openBrowser(server.address);
      await closed();
      await server.close();
      process.stdout.write('\nClosed.\n');
    });
}
