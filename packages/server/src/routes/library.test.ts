import { libraryListing } from '@shoreglass/contract';
import { library } from '@shoreglass/library';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { buildApp } from '../app.ts';

let app: Awaited<ReturnType<typeof buildApp>>;
beforeAll(async () => {
  app = await buildApp({
    host: '127.0.0.1',
    dataFolder: 'no-such-folder',
    examples: {},
    webFolder: 'no-such-folder',
    log: () => undefined,
  });
});
afterAll(() => app.close());

test('lists every animal the library holds', async () => {
  const answer = await app.inject({ url: '/api/library', headers: { host: '127.0.0.1' } });
  expect(answer.statusCode).toBe(200);
  const { animals } = libraryListing.parse(answer.json());
  expect(animals.map(({ id }) => id).sort()).toEqual(Object.keys(library.data.organisms).sort());
});
test('only lists: writing is not found', async () => {
  const answer = await app.inject({
    method: 'PUT',
    url: '/api/library',
    headers: { host: '127.0.0.1' },
    payload: {},
  });
  expect(answer.statusCode).toBe(404);
});
