import { symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { enclosureFile, refusal, roomFile } from '@shoreglass/contract';
import { library } from '@shoreglass/library';
import { describe, expect, test } from 'vitest';
import { appUnderTest } from '../app-test-kit.ts';

const SERIES = library.series('espoo-living-room') ?? '';
const TEXT = (library.data.enclosures['espoo-window'] ?? '').replace(
  /series: espoo-living-room/,
  'series: my-room.csv',
);

const served = appUnderTest();
const { get } = served;
const save = () =>
  served.app.inject({ method: 'PUT', url: '/api/enclosures/mine', payload: { text: TEXT, basedOn: null } });

describe('a room series beside the enclosure file', () => {
  test('is read for the file that names it, and given as it stands', async () => {
    expect(TEXT).toContain('my-room.csv');
    expect((await save()).statusCode).toBe(422);
    await writeFile(join(served.folder, 'my-room.csv'), SERIES);
    const saved = await save();
    expect(saved.statusCode, saved.body.slice(0, 300)).toBe(200);
    const { findings } = enclosureFile.parse((await get('/api/enclosures/mine')).json());
    expect(findings.filter(({ severity }) => severity === 'blocking')).toEqual([]);
    expect(roomFile.parse((await get('/api/rooms/my-room.csv')).json()).text).toBe(SERIES);
  });

  test('that is not there, is a link or lies elsewhere is refused in a sentence', async () => {
    const missing = await get('/api/rooms/other.csv');
    expect(missing.statusCode).toBe(404);
    expect(refusal.parse(missing.json()).message).toContain('other.csv');
    await writeFile(join(served.folder, 'secret.txt'), 'no');
    await symlink(join(served.folder, 'secret.txt'), join(served.folder, 'link.csv'));
    expect((await get('/api/rooms/link.csv')).statusCode).toBe(404);
    expect((await get('/api/rooms/..%2Fsecret.csv')).statusCode).toBe(400);
    expect((await get('/api/rooms/secret.txt')).statusCode).toBe(400);
  });
});
