import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { FastifyInstance, LightMyRequestResponse } from 'fastify';
import { afterEach, beforeEach } from 'vitest';
import { buildApp } from './app.ts';

/** The app over an empty data folder of its own, anew for every test of the file. */
export interface AppUnderTest {
  readonly folder: string;
  readonly app: FastifyInstance;
  get(url: string): Promise<LightMyRequestResponse>;
}

/** Has every test of this file begin with a new app; the fields are read within tests. */
export function appUnderTest(): AppUnderTest {
  let folder: string;
  let app: FastifyInstance;
  beforeEach(async () => {
    folder = await mkdtemp(join(tmpdir(), 'shoreglass-app-'));
    app = await buildApp({
      host: '127.0.0.1',
      dataFolder: folder,
      examples: {},
      webFolder: join(folder, 'none'),
      log: () => {},
    });
  });
  afterEach(async () => {
    await app.close();
    await rm(folder, { recursive: true, force: true });
  });
  return {
    get folder() {
      return folder;
    },
    get app() {
      return app;
    },
    get: (url) => app.inject({ method: 'GET', url }),
  };
}
