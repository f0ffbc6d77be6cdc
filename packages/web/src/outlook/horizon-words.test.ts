import { expect, test } from 'vitest';
import { horizonWords } from './horizon-words.ts';
import { inventedOutlook } from './testdata/invented-outlook.ts';

const KH_FIRST = { subject: 'KH', kind: 'falls below', owner: 'amphipods', share: 0.72 } as const;

/** Numbers keep together with their unit by no-break spaces; here only the words count. */
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

test('the median speaks, four runs in five follow, and what ends it is named with its owner', () => {
  const words = horizonWords(inventedOutlook({ horizon: { limitedBy: [KH_FIRST] } }));
  expect(words.figure).toBe('61 days');
  expect(words.after).toBe('left to itself');
  expect(plain(words.spread)).toBe('44 to 83 days in 4 runs of 5.');
  expect(plain(words.end)).toBe(
    'What ends it first: carbonate hardness falls below 3 °dKH, the limit of amphipods (72 % of the runs).',
  );
});

test('a day is a day', () => {
  expect(horizonWords(inventedOutlook({ horizon: { q50: 1.2 } })).figure).toBe('1 day');
});

test('a horizon past the run is open, not claimed to be its length', () => {
  const words = horizonWords(inventedOutlook({ horizon: { q10: 100, q50: 300, q90: 300, unbroken: 0.6 } }));
  expect(words.after).toBe('or longer, left to itself');
  expect(plain(words.spread)).toBe(
    '100 to 300 days or longer in 4 runs of 5. 60 % of the runs stay within every band to the end.',
  );
});

test('where nothing ends it no end is invented', () => {
  const words = horizonWords(inventedOutlook({ horizon: { q10: 300, q50: 300, q90: 300, unbroken: 1 } }));
  expect(words.spread).toBe('All 200 runs stay within every band to the end.');
  expect(words.end).toBe('');
});

test('the expected run alone says that it is alone and gives no share', () => {
  const words = horizonWords(
    inventedOutlook({ members: 1, horizon: { limitedBy: [{ ...KH_FIRST, share: 1 }] } }),
  );
  expect(words.spread).toContain('expected run');
  expect(words.end).not.toContain('%');
});

test('one’s own limit is not a stranger’s, and dying out has no limit', () => {
  const many = { subject: 'population:snails', kind: 'rises above', owner: 'keeper', share: 0.5 } as const;
  const gone = { ...many, kind: 'dies out', owner: 'ramshorn snails' } as const;
  const end = (limit: typeof many | typeof gone) =>
    plain(horizonWords(inventedOutlook({ horizon: { limitedBy: [limit] } })).end);
  expect(end(many)).toBe(
    'What ends it first: ramshorn snails rise above 300, your own limit (50 % of the runs).',
  );
  expect(end(gone)).toBe('What ends it first: ramshorn snails die out (50 % of the runs).');
});
