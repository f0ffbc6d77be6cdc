import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readSeries } from '../series/read-series.ts';
import { openEnclosure } from './check/check-enclosure.ts';
import { editEnclosure } from './edit-enclosure.ts';
import { parseYaml } from './read/parse-yaml.ts';

const guide = readFileSync(
  join(import.meta.dirname, '..', '..', '..', '..', 'docs', 'guide', 'enclosure-file.md'),
  'utf8',
);
const blocks = (language: string): string[] =>
  [...guide.matchAll(new RegExp(`\`\`\`${language}\\n([\\s\\S]*?)\`\`\``, 'g'))].map(
    (match) => match[1] ?? '',
  );
const [whole = '', ...parts] = blocks('yaml');

describe('the guide to the enclosure file', () => {
  it('shows a whole file that makes a plan without a warning', () => {
    const { plan, findings } = openEnclosure(whole, 'window-box.yaml');
    expect(findings.filter(({ severity }) => severity !== 'note')).toEqual([]);
    expect(plan?.name).toBe('Window box');
  });
  it.each(parts)('shows a part that fits into it %#', (part) => {
    const parsed = parseYaml(part, 'part.yaml');
    if ('problems' in parsed) throw new Error(part);
    const text = Object.entries(parsed.value as Record<string, never>).reduce(
      (file, [key, value]) => editEnclosure(file, [key], value),
      whole,
    );
    const day = (index: number) => `2026-01-01 ${String(index).padStart(2, '0')}:00,19.4,47\n`;
    const record = `time,temperature [°C],humidity [%]\n${Array.from({ length: 24 }, (_, index) => day(index)).join('')}`;
    const { findings } = openEnclosure(text, 'window-box.yaml', { readBeside: () => record });
    expect(findings.filter(({ severity }) => severity === 'blocking')).toEqual([]);
  });
  it.each(blocks('csv'))('shows records whose columns are read %#', (start) => {
    const rows = start.trim().split('\n');
    const last = rows.pop() ?? '';
    const text = last.startsWith('2026')
      ? `${rows.join('\n')}\n${Array.from({ length: 23 }, (_, hour) => last.replace(' 01:', ` ${String(hour + 1).padStart(2, '0')}:`)).join('\n')}`
      : `${rows.join('\n')}\n${`${last}\n`.repeat(24)}`;
    expect(readSeries(text, 'room.csv').series?.temperature).toHaveLength(24);
  });
});
