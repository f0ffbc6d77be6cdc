import { library } from '@shoreglass/library';
import { describe, expect, it } from 'vitest';
import { countsAnswer, firstDayInRun } from './counts-answer.ts';
import { countsDocumentSchema } from './counts-document.ts';
import { readCounts, type WrittenCounts } from './read-counts.ts';

function read(text: string): WrittenCounts {
  const result = readCounts(text, 'mine.csv');
  if (result.problems) throw new Error(JSON.stringify(result.problems));
  return result;
}

describe('counts as written', () => {
  it.each([
    ['with commas and names', 'date,count\n2026-03-01,12\n2026-03-15,20'],
    ['typed', '2026-03-01 12\n2026-03-15 20\n'],
    ['typed with commas', '2026-03-01, 12\r\n\r\n2026-03-15, 20'],
    [
      'with semicolons, quotes and remarks',
      '# shrimp\n"date";"count"\n2026-3-1;"12"\n# moved the wood\n2026-03-15;20',
    ],
    ['with tabs, columns turned round', 'count\tdate\n12\t2026-03-01\n20\t2026-03-15'],
  ])('are read %s', (_, text) => {
    const { series, startDate } = read(text);
    expect(startDate).toBe('2026-03-01');
    expect(series).toEqual({
      counts: [
        { day: 0, number: 12 },
        { day: 14, number: 20 },
      ],
    });
  });
  it('are read by days, over a leap day, and with decimals', () => {
    const { series, startDate, firstDay } = read('day;count\n60;12,5\n67;20.5');
    expect([startDate, firstDay, series.counts[1]]).toEqual([undefined, 60, { day: 7, number: 20.5 }]);
    expect(read('2028-02-28 1\n2028-03-01 2').series.counts[1]!.day).toBe(2);
  });
  it('are divided by effort, with their errors', () => {
    const { series } = read('date,count,error,effort\n2026-03-01,12,3,6\n2026-03-15,20,5,10');
    expect(series.byEffort).toBe(true);
    expect(series.counts).toEqual([
      { day: 0, number: 2, error: 0.5 },
      { day: 14, number: 2, error: 0.5 },
    ]);
  });
  it('are read by stage, with the warmth of their days', () => {
    const { series } = read(
      'date,young,adults,coldest [°F],warmest [°F]\n2026-03-01,12,4,50,68\n2026-03-15,20,5,59,77',
    );
    expect(series.stages).toEqual({
      names: ['young', 'adults'],
      counts: [
        [12, 20],
        [4, 5],
      ],
    });
    expect(series.counts.map(({ number }) => number)).toEqual([16, 25]);
    expect(series.warmth![1]!.coldest).toBeCloseTo(15, 10);
    expect(series.warmth![1]!.warmest).toBeCloseTo(25, 10);
  });
});

describe('what cannot be read as counts', () => {
  it.each([
    ['', 1, 'holds no counts', undefined],
    ['date,count', 1, 'holds no counts', undefined],
    ['when,count\n2026-03-01,2', 1, "no column 'date'", undefined],
    ['date,error\n2026-03-01,2', 1, 'no column of numbers', undefined],
    ['date,count,count\n2026-03-01,2,3', 1, 'twice', 'count'],
    ['date,count,coldest\n2026-03-01,2,3', 1, "only one of 'coldest'", undefined],
    ['date,count,coldest [K],warmest [K]\n2026-03-01,2,3,4', 1, 'no unit known', undefined],
    ['2026-03-01 12\n2026-03-15', 2, '1 cell in place of 2', '2026-03-15'],
    ['2026-03-01 12\n2026-02-30 13', 2, 'no date', '2026-02-30'],
    ['2026-03-01 12\n15.3.2026 13', 2, 'no date', '15.3.2026'],
    ['date,count\n2026-03-01,a dozen', 2, "no number under 'count'", 'a dozen'],
    ['date,count\n2026-03-01,-3', 2, "no number under 'count'", '-3'],
    ['date,count\n2026-03-01,', 2, "no number under 'count'", ''],
    ['date,count,effort\n2026-03-01,3,0', 2, 'no effort above 0', '0'],
    ['date,count,error\n2026-03-01,3,none', 2, 'no error above 0', 'none'],
    ['date,count,coldest,warmest\n2026-03-01,3,25,20', 2, 'coldest above its warmest', '25, 20'],
    ['date,count,coldest,warmest\n2026-03-01,3,x,20', 2, 'no temperatures', 'x, 20'],
    ['2026-03-01 12\n2026-03-01 13', 2, 'the day of line 1 again', undefined],
    ['2026-03-10 12\n2026-03-01 13', 2, 'goes back before line 1', undefined],
  ])('%j is told with line and mend', (text, line, message, value) => {
    const { problems } = readCounts(text, 'mine.csv');
    expect(problems).toHaveLength(1);
    expect(problems![0]).toMatchObject({ file: 'mine.csv', line, column: 1, ...(value ? { value } : {}) });
    expect(problems![0]!.message).toContain(message);
    expect(problems![0]!.mend).toMatch(/^[A-Z].*[.\d]$/);
  });
  it('is told in every line, up to twenty', () => {
    const text = Array.from({ length: 40 }, () => '2026-03-01 none').join('\n');
    expect(readCounts(text, 'mine.csv').problems).toHaveLength(20);
  });
  it('is refused where it is too much', () => {
    expect(readCounts('1'.repeat(300_000), 'mine.csv').problems![0]!.message).toContain('200 kB');
    const many = Array.from({ length: 2001 }, (_, i) => `${i} 5`).join('\n');
    expect(readCounts(many, 'mine.csv').problems![0]).toMatchObject({ line: 2001 });
  });
});

describe('what counts tell', () => {
  const grown = read(
    '2026-03-01 10\n2026-03-11 16\n2026-03-21 22\n2026-04-01 35\n2026-04-11 61\n2026-04-21 80',
  );
  it('is one document, beside species and computed numbers', () => {
    const days = [0, 10, 20, 30, 40];
    const answer = countsAnswer(
      grown,
      { below: 5, animal: library.organism('hyalella-azteca') },
      {
        enclosure: 'Invented',
        startDate: '2026-03-06',
        numbers: { days, q05: days.map(() => 10), q50: days.map(() => 20), q95: days.map(() => 40) },
      },
    );
    expect(() => countsDocumentSchema.parse(JSON.parse(JSON.stringify(answer)))).not.toThrow();
    expect(answer.species!.sentences[0]).toContain('By itself with ample food at');
    // Day 0 of the run is the fifth of the counts: the first lies before it, the last after the run.
    expect(answer.computed).toMatchObject({ firstDay: -5, outside: 2, within: 3, above: 1, below: 0 });
    expect(answer.falling).toMatchObject({ from: 80, below: 5, days: 51 });
  });
  it('says how little two counts tell', () => {
    const { sentences, cautions, growth } = countsAnswer(read('0 10\n10 20'));
    expect(growth).toEqual({ stretches: 1, span: 10, rate: Math.LN2 / 10 });
    expect(sentences[0]!.text).toContain('double in 10 days. Two counts do not tell how sure that is.');
    expect(cautions[0]).toContain('2 counts tell little');
  });
  it('tells a level, a fall, zeros, errors, stages and warmth for what they are', () => {
    const told = (text: string, request = {}): string => {
      const { sentences, cautions } = countsAnswer(read(text), request);
      return [...sentences.map((each) => each.text), ...cautions].join('\n');
    };
    expect(told('0 10\n7 10\n14 10')).toContain('All counts are alike');
    expect(told('0 80\n7 61\n14 50\n21 41\n28 30')).toMatch(
      /Numbers fell by .* they halve in .*\n[\s\S]*ask a vet/,
    );
    expect(told('0 8\n7 12\n14 9\n21 11')).toContain('Whether numbers grow or fall cannot be said');
    expect(told('0 8\n7 0\n14 9\n21 11')).toContain('A count of 0 is left out');
    expect(told('day,count,error\n0,20,6\n7,30,9\n14,25,8\n21,31,9')).toContain(
      'of the scatter by themselves',
    );
    expect(told('day,young,adults\n0,6,4\n7,8,6\n14,12,8\n21,17,12')).toMatch(/of the young \d+ % stay so/);
    expect(told('day,young,adults\n0,6,4\n7,8,6\n15,12,8\n21,17,12')).toContain('even steps of time');
    const warm = 'day,count,coldest,warmest\n0,10,15,25\n10,20,15,25\n20,40,15,25';
    expect(told(warm, { threshold: 10 })).toContain('200 degree-days');
    expect(told(warm, { threshold: 30 })).toContain('never warmer than the threshold');
  });
  it('counts days of a run from its start', () => {
    expect(firstDayInRun(grown, '2025-12-31')).toBe(60);
    expect(firstDayInRun(read('12 3'), '2025-12-31')).toBe(12);
  });
});
