import { resolve } from 'node:path';
import { library } from '@shoreglass/library';
import type { FastifyInstance } from 'fastify';
import { buildApp } from './app.ts';

export interface ServerOptions {
  /** First port tried; a taken one moves on to the next, up to 20. 0 takes any free one. */
  readonly port: number;
  readonly host?: string;
  /** Folder of the keeper's own enclosure files; `data/enclosures` in the working folder unless told. */
  readonly dataFolder?: string;
  readonly webFolder: string;
  readonly log?: (line: string) => void;
}

export interface RunningServer {
  readonly address: string;
  close(): Promise<void>;
}

const PORTS_TRIED = 20;

/**
 * Starts the server and says where it listens; writes to no console.
 * @throws Error when none of the ports is free, or the host cannot be listened on
 */
export async function startServer(options: ServerOptions): Promise<RunningServer> {
  const { port, host = '127.0.0.1', webFolder, log = () => undefined } = options;
  const dataFolder = resolve(options.dataFolder ?? 'data/enclosures');
  const examples = library.data.enclosures;
  const lastPort = port === 0 ? 0 : Math.min(65535, port + PORTS_TRIED - 1);
  for (let candidate = port; candidate <= lastPort; candidate++) {
    const app = await buildApp({ host, dataFolder, examples, webFolder, log });
    const address = await listen(app, host, candidate);
    if (address !== undefined) return { address, close: () => app.close() };
  }
  throw new Error(`Ports ${port} to ${lastPort} are all taken. Name another one.`);
}

/** The address listened on, or undefined when the port is taken; the app is closed then. */
async function listen(app: FastifyInstance, host: string, port: number): Promise<string | undefined> {
  try {
    return await app.listen({ host, port });
  } catch (error) {
    await app.close();
    if ((error as NodeJS.ErrnoException).code === 'EADDRINUSE') return undefined;
    throw error;
  }
}
