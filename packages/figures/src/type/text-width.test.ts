import fc from 'fast-check';
import { expect, it } from 'vitest';
import { countText, numberText, quantityText, rangeText } from './number-text.ts';
import { fitText, textWidth, wrapText } from './text-width.ts';

const sizes = fc.integer({ min: 8, max: 24 });

it('keeps fitted text within its width, and text that fits as it is', () => {
  fc.assert(
    fc.property(
      fc.string({ maxLength: 60 }),
      fc.integer({ min: 30, max: 400 }),
      sizes,
      (text, width, size) => {
        const fitted = fitText(text, width, size);
        expect(textWidth(fitted, size)).toBeLessThanOrEqual(width);
        if (textWidth(text, size) <= width) expect(fitted).toBe(text);
        else expect(fitted.endsWith('…')).toBe(true);
      },
    ),
  );
});

it('wraps to no more lines than allowed, each within the width', () => {
  const words = fc.array(fc.string({ minLength: 1, maxLength: 12 }), { maxLength: 9 });
  fc.assert(
    fc.property(
      words,
      fc.integer({ min: 40, max: 300 }),
      fc.integer({ min: 1, max: 3 }),
      (parts, width, lines) => {
        const wrapped = wrapText(parts.join(' '), { width, size: 14, lines, firstIndent: 20 });
        expect(wrapped.length).toBeLessThanOrEqual(lines);
        wrapped.forEach((line, index) => {
          expect(textWidth(line, 14)).toBeLessThanOrEqual(width - (index === 0 ? 20 : 0));
        });
      },
    ),
  );
});

it('grows with the size and gives every figure the same width', () => {
  expect(textWidth('amphipods', 28)).toBeCloseTo(2 * textWidth('amphipods', 14), 9);
  for (const face of ['text', 'strong', 'serif', 'italic'] as const)
    expect(new Set(Array.from('0123456789', (figure) => textWidth(figure, 10, face))).size).toBe(1);
});

it('writes numbers with a true minus, spaced thousands and units that stay beside them', () => {
  expect(numberText(-0.44, 1)).toBe('−0.4');
  expect(numberText(-0.04, 1)).toBe('0.0');
  expect(numberText(12345)).toBe('12\u00a0345');
  expect(quantityText(18.44, '°C', 1)).toBe('18.4\u00a0°C');
  expect(rangeText({ low: 58, high: 83 }, '%')).toBe('58–83\u00a0%');
  expect(countText(38.2)).toBe('38');
  expect(countText(1234)).toBe('~1200');
});
