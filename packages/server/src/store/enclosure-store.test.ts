import { mkdtemp, readdir, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { enclosureStore } from './enclosure-store.ts';

let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'shoreglass-store-'));
});
afterEach(() => rm(folder, { recursive: true, force: true }));

const examples = { demo: 'name: Demo\n' };
const storeOn = (path: string) => enclosureStore({ folder: path, examples });

test('a folder that is not there yet holds nothing, and the first write makes it', async () => {
  const store = storeOn(join(folder, 'deep', 'enclosures'));
  expect((await store.list()).enclosures.map(({ id }) => id)).toEqual(['demo']);
  expect(await store.write('pond', 'name: Pond # mine\n', null)).toMatchObject({ kind: 'written' });
  expect(await store.get('pond')).toMatchObject({ origin: 'own', text: 'name: Pond # mine\n' });
});

test('writing leaves no other file behind', async () => {
  const store = storeOn(folder);
  await Promise.all(
    Array.from({ length: 12 }, (_, index) => store.write(`tank-${index}`, `name: ${index}\n`, null)),
  );
  expect((await readdir(folder)).sort()).toEqual(
    Array.from({ length: 12 }, (_, index) => `tank-${index}.yaml`).sort(),
  );
});

test('of two writes from the same version the first is kept and the second is told', async () => {
  const store = storeOn(folder);
  await store.write('pond', 'name: one\n', null);
  const version = (await store.get('pond'))?.version ?? '';
  const results = await Promise.all([
    store.write('pond', 'name: two\n', version),
    store.write('pond', 'name: three\n', version),
  ]);
  expect(results.map(({ kind }) => kind)).toEqual(['written', 'changed meanwhile']);
  expect((await store.get('pond'))?.text).toBe('name: two\n');
});

test('an existing file is not overwritten by one thought new, and an example never', async () => {
  const store = storeOn(folder);
  await store.write('pond', 'name: one\n', null);
  expect(await store.write('pond', 'name: two\n', null)).toEqual({ kind: 'exists already' });
  expect(await store.write('demo', 'name: two\n', null)).toEqual({ kind: 'is an example' });
});

test('a file deleted meanwhile is not silently made again', async () => {
  const store = storeOn(folder);
  await store.write('pond', 'name: one\n', null);
  const version = (await store.get('pond'))?.version ?? '';
  await rm(join(folder, 'pond.yaml'));
  expect(await store.write('pond', 'name: two\n', version)).toEqual({ kind: 'changed meanwhile' });
});

test('what cannot be offered is named, and links out of the folder are not followed', async () => {
  await writeFile(join(folder, 'My Tank.yaml'), 'name: x\n');
  await writeFile(join(folder, 'huge.yaml'), 'x'.repeat(300_000));
  await writeFile(join(folder, 'notes.txt'), 'not an enclosure');
  await symlink('/etc/hostname', join(folder, 'link.yaml'));
  const { enclosures, leftOut } = await storeOn(folder).list();
  expect(enclosures.map(({ id }) => id)).toEqual(['demo']);
  expect(leftOut.map(({ fileName }) => fileName)).toEqual(['My Tank.yaml', 'huge.yaml', 'link.yaml']);
  expect(await storeOn(folder).get('link')).toBeUndefined();
});

test('ids cannot leave the folder', async () => {
  await writeFile(join(folder, 'secret.yaml'), 'name: secret\n');
  const store = storeOn(join(folder, 'enclosures'));
  for (const id of ['../secret', '..%2fsecret', 'a/b', 'A', '', '.', '-a', 'constructor'])
    expect(await store.get(id)).toBeUndefined();
});
