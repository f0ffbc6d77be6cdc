import { afterEach, describe, expect, it, vi } from 'vitest';
import { courseLines } from './course.ts';
import { figure } from './number.ts';
import { table } from './table.ts';
import { terminalWidth, widthUpTo } from './width.ts';
import { across, fitted } from './wrapped.ts';

afterEach(() => vi.unstubAllEnvs());

const widest = (text: string): number => Math.max(...text.split('\n').map(across));

describe('a width that COLUMNS names', () => {
  it('counts where there is no terminal, and odd ones do not', () => {
    vi.stubEnv('COLUMNS', '60');
    expect(terminalWidth()).toBe(60);
    expect(widthUpTo(100)).toBe(60);
    vi.stubEnv('COLUMNS', '300');
    expect(widthUpTo(100)).toBe(100);
    for (const odd of ['', 'wide', '-4', '0']) {
      vi.stubEnv('COLUMNS', odd);
      expect(terminalWidth()).toBeUndefined();
      expect(widthUpTo(100)).toBe(80);
    }
    vi.stubEnv('COLUMNS', '3');
    expect(terminalWidth()).toBe(40);
  });
});

describe('what does not fit', () => {
  const rows = [
    ['', 'as planned', 'bend', 'may be filled to'],
    ['front', '2.1 MPa', '0.2 mm', '30.0 cm'],
    ['left', '1.2 MPa', '', '30.0 cm'],
  ];
  it('a table becomes a sentence for each row, each cell after the name of its column', () => {
    expect(table(rows, { width: 60, hasHead: true })).toContain('front     2.1 MPa  0.2 mm');
    expect(table(rows, { width: 40, hasHead: true })).toBe(
      [
        '  front: as planned 2.1 MPa, bend 0.2',
        '    mm, may be filled to 30.0 cm',
        '  left: as planned 1.2 MPa, may be',
        '    filled to 30.0 cm',
      ].join('\n'),
    );
  });
  it('a course is drawn below its figures', () => {
    const course = {
      name: 'cover of plants rooted in wet ground',
      values: [1, 2, 3, 4],
      range: '15.6 to 12.0 %',
      spread: '(5.93 to 67.3)',
    };
    const [wide = ''] = courseLines([course], { width: 100, longest: 30 });
    expect(wide.split('\n')).toHaveLength(1);
    const [narrow = ''] = courseLines([course], { width: 50, longest: 30 });
    expect(widest(narrow)).toBeLessThanOrEqual(50);
    expect(narrow).toContain('▁▃▆█');
  });
  it('a line is broken after its own indent', () => {
    vi.stubEnv('COLUMNS', '40');
    const text = `  ${'word '.repeat(30).trim()}`;
    expect(widest(fitted(text))).toBeLessThanOrEqual(40);
    expect(fitted(text).split('\n')[1]).toMatch(/^ {4}word/);
  });
});

it('what is hardly there is less than a thousandth, not a power of ten', () => {
  expect([0, 4e-7, 0.02, 0.5, 12.34, 4321].map(figure)).toEqual([
    '0',
    '<0.001',
    '0.02',
    '0.50',
    '12.3',
    '4321',
  ]);
});
