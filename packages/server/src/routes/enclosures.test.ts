import { mkdir, mkdtemp, readdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { enclosureFile, enclosureList, refusal, refusalWithFindings } from '@shoreglass/contract';
import { library } from '@shoreglass/library';
import type { FastifyInstance } from 'fastify';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { buildApp } from '../app.ts';

const EXAMPLE = 'beck-bank';
const TEXT = `${library.data.enclosures[EXAMPLE]}# a comment of mine\n`;

let folder: string;
let app: FastifyInstance;
let logged: string[];

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'shoreglass-routes-'));
  logged = [];
  app = await buildApp({
    host: '127.0.0.1',
    dataFolder: folder,
    examples: library.data.enclosures,
    webFolder: join(folder, 'none'),
    log: (line) => logged.push(line),
  });
});
afterEach(async () => {
  await app.close();
  await rm(folder, { recursive: true, force: true });
});

const get = (url: string, headers: Record<string, string> = {}) =>
  app.inject({ method: 'GET', url, headers });
const put = (id: string, payload: unknown, headers: Record<string, string> = {}) =>
  app.inject({ method: 'PUT', url: `/api/enclosures/${id}`, payload: payload as object, headers });

describe('the list', () => {
  test('with no data folder it holds the examples', async () => {
    await rm(folder, { recursive: true });
    const list = enclosureList.parse((await get('/api/enclosures')).json());
    expect(list.enclosures.map(({ id, origin }) => [id, origin])).toContainEqual([EXAMPLE, 'example']);
    expect(list.enclosures.every(({ errors }) => errors === 0)).toBe(true);
  });

  test('own files come first, broken ones with their number of errors, misnamed ones set apart', async () => {
    await writeFile(join(folder, 'pond.yaml'), 'name: [');
    await writeFile(join(folder, 'Über.yaml'), TEXT);
    const list = enclosureList.parse((await get('/api/enclosures')).json());
    expect(list.enclosures[0]).toMatchObject({ id: 'pond', name: 'pond', origin: 'own' });
    expect(list.enclosures[0]?.errors).toBeGreaterThan(0);
    expect(list.leftOut.map(({ fileName }) => fileName)).toEqual(['Über.yaml']);
  });
});

describe('one enclosure', () => {
  test('an example comes with its text and no errors', async () => {
    const file = enclosureFile.parse((await get(`/api/enclosures/${EXAMPLE}`)).json());
    expect(file).toMatchObject({ origin: 'example', text: library.data.enclosures[EXAMPLE] });
    expect(file.findings.filter(({ severity }) => severity === 'blocking')).toEqual([]);
  });

  test('one that is not there is a sentence', async () => {
    const answer = await get('/api/enclosures/nowhere');
    expect(answer.statusCode).toBe(404);
    expect(refusal.parse(answer.json()).message).toContain('nowhere');
  });

  test.each(['..%2F..%2Fetc%2Fpasswd', '..', 'A', 'a--b', '%00', 'a'.repeat(65)])(
    '%s is no id',
    async (id) => {
      expect([400, 404]).toContain((await get(`/api/enclosures/${id}`)).statusCode);
      expect([400, 404, 405]).toContain((await put(id, { text: TEXT, basedOn: null })).statusCode);
      expect(await readdir(folder)).toEqual([]);
    },
  );
});

describe('keeping a text', () => {
  test('it is kept byte for byte, comments and all, and can be changed from its version', async () => {
    const kept = enclosureFile.parse((await put('pond', { text: TEXT, basedOn: null })).json());
    expect(kept).toMatchObject({ id: 'pond', origin: 'own', text: TEXT });
    const longer = `${TEXT}# another\n`;
    expect((await put('pond', { text: longer, basedOn: kept.version })).statusCode).toBe(200);
    expect((await get('/api/enclosures/pond')).json()).toMatchObject({ text: longer });
  });

  test('one with errors is refused with their places, and the file stays', async () => {
    await put('pond', { text: TEXT, basedOn: null });
    const { version } = enclosureFile.parse((await get('/api/enclosures/pond')).json());
    const answer = await put('pond', { text: TEXT.replace('length: 90 cm', 'length: 90'), basedOn: version });
    expect(answer.statusCode).toBe(422);
    const { findings } = refusalWithFindings.parse(answer.json());
    const line = TEXT.split('\n').findIndex((each) => each.includes('length: 90 cm')) + 1;
    expect(findings).toContainEqual(
      expect.objectContaining({ severity: 'blocking', path: 'glass.length', line }),
    );
    expect((await get('/api/enclosures/pond')).json()).toMatchObject({ text: TEXT, version });
  });

  test.each([
    ['an empty text', ''],
    ['no YAML', '\t{{{'],
    ['YAML of something else', 'a: 1'],
  ])('%s is refused and nothing is written', async (_, text) => {
    expect((await put('pond', { text, basedOn: null })).statusCode).toBe(422);
    expect(await readdir(folder)).toEqual([]);
  });

  test('examples, existing files and stale versions are not overwritten', async () => {
    expect((await put(EXAMPLE, { text: TEXT, basedOn: null })).statusCode).toBe(409);
    await put('pond', { text: TEXT, basedOn: null });
    expect((await put('pond', { text: TEXT, basedOn: null })).statusCode).toBe(409);
    expect((await put('pond', { text: TEXT, basedOn: 'stale' })).statusCode).toBe(409);
  });

  test('more than 256 kB is refused, counted in bytes', async () => {
    const text = `${TEXT}# ${'ä'.repeat(131_072)}\n`;
    expect((await put('pond', { text, basedOn: null })).statusCode).toBe(413);
    expect((await put('pond', { text: 'x'.repeat(2_000_000), basedOn: null })).statusCode).toBe(413);
    expect(await readdir(folder)).toEqual([]);
  });

  test.each([undefined, {}, { text: 1, basedOn: null }, { text: TEXT }])(
    'a body like %j is refused',
    async (body) => {
      expect((await put('pond', body)).statusCode).toBe(400);
    },
  );

  test('another body than JSON is refused', async () => {
    const answer = await app.inject({
      method: 'PUT',
      url: '/api/enclosures/pond',
      payload: 'text=1',
      headers: { 'content-type': 'application/x-www-form-urlencoded' },
    });
    expect(answer.statusCode).toBe(415);
  });

  test('a failing disk is told without its details, which are logged', async () => {
    await writeFile(join(folder, 'file'), '');
    const broken = await buildApp({
      host: '127.0.0.1',
      dataFolder: join(folder, 'file', 'below'),
      examples: {},
      webFolder: folder,
      log: (line) => logged.push(line),
    });
    const answer = await broken.inject({
      method: 'PUT',
      url: '/api/enclosures/pond',
      payload: { text: TEXT, basedOn: null },
    });
    expect(answer.statusCode).toBe(500);
    expect(answer.body).not.toContain(folder);
    expect(logged.join()).toContain('ENOTDIR');
    await broken.close();
  });
});

describe('who may ask', () => {
  test('another host name is refused everywhere', async () => {
    for (const url of ['/', '/api/enclosures', '/api/openapi.json'])
      expect((await get(url, { host: 'evil.example' })).statusCode).toBe(403);
  });

  test('a page of another origin is refused, the own one not', async () => {
    const host = 'localhost:4321';
    expect((await get('/api/enclosures', { host, origin: 'http://evil.example' })).statusCode).toBe(403);
    expect((await get('/api/enclosures', { host, origin: 'null' })).statusCode).toBe(403);
    expect((await get('/api/enclosures', { host, origin: `http://${host}` })).statusCode).toBe(200);
  });

  test('nothing is allowed from elsewhere', async () => {
    const { headers } = await get('/api/enclosures');
    const policy = String(headers['content-security-policy']);
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain("worker-src 'self'");
    expect(policy).not.toMatch(/https?:|unsafe/);
    expect(headers).not.toHaveProperty('access-control-allow-origin');
    expect(headers).not.toHaveProperty('strict-transport-security');
    expect(headers['x-content-type-options']).toBe('nosniff');
  });
});

describe('the description', () => {
  test('it is OpenAPI 3.1 and names every route and answer', async () => {
    const description = (await get('/api/openapi.json')).json();
    expect(description.openapi).toMatch(/^3\.1\./);
    expect(Object.keys(description.paths).sort()).toEqual([
      '/api/enclosures',
      '/api/enclosures/{id}',
      '/api/library',
      '/api/library/{kind}/{id}',
      '/api/rooms/{name}',
    ]);
    const { get: read, put: keep } = description.paths['/api/enclosures/{id}'];
    expect(Object.keys(read.responses)).toEqual(['200', '400', '404']);
    expect(Object.keys(keep.responses)).toEqual(['200', '400', '409', '413', '422']);
  });
});

describe('the web app', () => {
  test('before it is built the page says so', async () => {
    const answer = await get('/');
    expect(answer.statusCode).toBe(503);
    expect(answer.json().message).toContain('npm run build');
  });

  test('its files are served, nothing beside them is, and an unknown path is a sentence', async () => {
    const web = join(folder, 'web');

    await mkdir(join(web, 'assets'), { recursive: true });
    await writeFile(join(web, 'index.html'), '<!doctype html><title>Shoreglass</title>');
    await writeFile(join(web, 'assets', 'a-1.js'), 'export {};');
    await writeFile(join(folder, 'secret.txt'), 'secret');
    const served = await buildApp({
      host: '127.0.0.1',
      dataFolder: folder,
      examples: {},
      webFolder: web,
      log: () => undefined,
    });
    const ask = (url: string) => served.inject({ method: 'GET', url });
    expect((await ask('/')).headers['cache-control']).toBe('no-cache');
    expect((await ask('/assets/a-1.js')).headers['cache-control']).toContain('immutable');
    for (const url of ['/../secret.txt', '/%2e%2e/secret.txt', '/assets/..%2f..%2fsecret.txt', '/nothing'])
      expect((await ask(url)).statusCode, url).toBeGreaterThanOrEqual(400);
    await served.close();
  });
});
