import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';

const SOURCES = fileURLToPath(new URL('..', import.meta.url));

/** Members of Math whose result IEEE 754 or ECMAScript fixes to the bit. */
const EXACT = new Set(
  'abs ceil clz32 floor fround imul max min round sign sqrt trunc E LN10 LN2 LOG10E LOG2E PI SQRT1_2 SQRT2'.split(
    ' ',
  ),
);

function withoutComments(text: string): string {
  return text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/\/\/.*$/gm, '');
}

function inexactUses(text: string): string[] {
  const code = withoutComments(text);
  const members = [...code.matchAll(/\bMath\s*\.\s*(\w+)/g)].map((match) => match[1]!);
  const powers = [...code.matchAll(/\S+\s*\*\*=?\s*\S+/g)].map((match) => match[0]);
  return [
    ...members.filter((member) => !EXACT.has(member)).map((member) => `Math.${member}`),
    ...powers.filter((power) => !/(^|[^\w.])2 \*\* -?\d+\b/.test(power)),
  ];
}

it('the engine uses no built-in function whose bits differ between JavaScript engines', () => {
  const files = (readdirSync(SOURCES, { recursive: true }) as string[]).filter(
    (file) => file.endsWith('.ts') && !file.endsWith('.test.ts'),
  );
  expect(files.length).toBeGreaterThan(10);
  const found = files.flatMap((file) =>
    inexactUses(readFileSync(join(SOURCES, file), 'utf8')).map((use) => `${file}: ${use}`),
  );
  expect(found).toEqual([]);
});

it('finds such uses', () => {
  expect(inexactUses('const a = Math.exp(1) + Math.sqrt(2); // Math.sin\nconst b = x ** 0.75;')).toEqual([
    'Math.exp',
    'x ** 0.75;',
  ]);
  expect(inexactUses('const a = 2 ** 60;')).toEqual([]);
});
