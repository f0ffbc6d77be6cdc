import { mkdtemp, rm } from 'node:fs/promises';
import { createServer, type Server } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { startServer } from './start-server.ts';

let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'shoreglass-start-'));
});
afterEach(() => rm(folder, { recursive: true, force: true }));

const options = () => ({ dataFolder: join(folder, 'data'), webFolder: join(folder, 'none') });

async function occupy(): Promise<{ server: Server; port: number }> {
  const server = createServer();
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  const address = server.address();
  if (address === null || typeof address === 'string') throw new Error('no port');
  return { server, port: address.port };
}

test('it answers, and after closing nothing does', async () => {
  const server = await startServer({ port: 0, ...options() });
  expect(server.address).toMatch(/^http:\/\/127\.0\.0\.1:\d+$/);
  const answer = await fetch(`${server.address}/api/enclosures`);
  expect(answer.status).toBe(200);
  await server.close();
  await expect(fetch(`${server.address}/api/enclosures`)).rejects.toThrow();
});

test('a taken port moves on to the next', async () => {
  const { server: other, port } = await occupy();
  const server = await startServer({ port, ...options() });
  const chosen = Number(new URL(server.address).port);
  expect(chosen).toBeGreaterThan(port);
  expect(chosen).toBeLessThan(port + 20);
  await server.close();
  await new Promise((closed) => other.close(closed));
});

test('an address that is not on this machine is an error, not a search', async () => {
  await expect(startServer({ port: 0, host: '192.0.2.1', ...options() })).rejects.toThrow();
});
