import { expect, test } from 'vitest';
import { isOwnHost } from './host-guard.ts';

test('on loopback only loopback names pass', () => {
  for (const host of ['localhost', 'localhost:4321', '127.0.0.1:4321', '127.8.0.1', '[::1]:80', 'LOCALHOST'])
    expect(isOwnHost(host, '127.0.0.1')).toBe(true);
  for (const host of [
    undefined,
    '',
    'evil.example',
    'localhost.evil.example',
    '192.168.1.5',
    '127.0.0.1.evil.example',
    'localhost:80:80',
    'user@localhost',
    '127.evil.example',
  ])
    expect(isOwnHost(host, '127.0.0.1')).toBe(false);
});

test('on the home network bare addresses and the name listened on pass, other names do not', () => {
  expect(isOwnHost('192.168.1.5:4321', '0.0.0.0')).toBe(true);
  expect(isOwnHost('[fe80::1]:4321', '::')).toBe(true);
  expect(isOwnHost('shelf.local:4321', 'shelf.local')).toBe(true);
  expect(isOwnHost('evil.example', '0.0.0.0')).toBe(false);
});
