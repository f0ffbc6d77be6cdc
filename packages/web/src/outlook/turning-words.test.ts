import { expect, test } from 'vitest';
import { inventedOutlook, inventedPoint } from './testdata/invented-outlook.ts';
import { capital, reasonWords, turningClaim } from './turning-words.ts';

const outlook = inventedOutlook({});
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

test('each kind is a clause of its own', () => {
  const claim = (subject: 'KH' | 'population:snails', kind: Parameters<typeof turningClaim>[1]['kind']) =>
    plain(turningClaim(outlook, { subject, kind }));
  expect(claim('KH', 'falls below')).toBe('Carbonate hardness falls below 3 °dKH');
  expect(claim('KH', 'returns')).toBe('Carbonate hardness is back in its band');
  expect(claim('population:snails', 'rises above')).toBe('Ramshorn snails rise above 300');
  expect(claim('population:snails', 'first young')).toBe('First young ramshorn snails');
  expect(claim('population:snails', 'dies out')).toBe('Ramshorn snails die out');
});

test('a limit of its own is told before that of the series', () => {
  const point = inventedPoint('KH', 'falls below', {
    band: { low: 4, unit: '°dKH', owner: 'shrimps', source: 'invented' },
  });
  expect(plain(turningClaim(outlook, point))).toBe('Carbonate hardness falls below 4 °dKH');
});

test('pH keeps its small letter', () => {
  expect(capital('pH')).toBe('pH');
  expect(plain(turningClaim(outlook, { subject: 'pH', kind: 'falls below' }))).toBe(
    'pH falls below the band',
  );
});

test('the two largest reasons are named, small ones not', () => {
  const because = [
    { term: 'wood leaching', share: 0.58 },
    { term: 'nitrification', share: 0.27 },
    { term: 'shells', share: 0.1 },
  ];
  expect(plain(reasonWords(because))).toBe('Mostly wood leaching (58 %), then nitrification (27 %).');
  expect(reasonWords([{ term: 'shells', share: 0.02 }])).toBe('');
  expect(reasonWords([])).toBe('');
});
