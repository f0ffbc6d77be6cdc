import { describe, expect, it } from 'vitest';
import { channels, contrastRatio } from './contrast.ts';
import { type Palette, palette } from './palette.ts';

describe('contrast', () => {
  it('agrees with the ratios that WCAG 2.2 and its techniques state', () => {
    // Black on white is 21:1 by definition; #777777 on white is the best-known near miss, 4.48:1 (WebAIM, Contrast and Color).
    expect(contrastRatio('#000000', '#ffffff')).toBeCloseTo(21, 6);
    expect(contrastRatio('#777777', '#ffffff')).toBeCloseTo(4.48, 2);
  });

  it.each(['day', 'night'] as const)(
    'of text inks is at least 4.5 on paper, raised paper and band by %s',
    (name) => {
      const inks = palette(name);
      const grounds = ['paper', 'raised'] as const;
      for (const ground of grounds)
        for (const text of ['ink', 'softInk', 'vermilion'] as const)
          expect(contrastRatio(inks[text], inks[ground]), `${text} on ${ground}`).toBeGreaterThanOrEqual(4.5);
      expect(contrastRatio(inks.softInk, inks.band)).toBeGreaterThanOrEqual(4.5);
      expect(contrastRatio(inks.ink, inks.band)).toBeGreaterThanOrEqual(4.5);
    },
  );

  it('of ink lines is at least 3 on every wash they run over', () => {
    for (const name of ['day', 'night'] as const) {
      const inks = palette(name);
      for (const wash of [
        'water',
        'waterDeep',
        'soil',
        'litter',
        'wood',
        'stone',
        'fanInner',
        'fanOuter',
      ] as const)
        expect(contrastRatio(inks.ink, inks[wash]), `${name} ${wash}`).toBeGreaterThanOrEqual(3);
    }
  });
});

describe('the night palette', () => {
  it('is amber throughout: red leads, blue trails, nothing comes near white', () => {
    const { name: _, ...inks }: Palette = palette('night');
    for (const [ink, colour] of Object.entries(inks)) {
      const [red, green, blue] = channels(colour);
      expect(red, ink).toBeGreaterThanOrEqual(green);
      expect(blue, ink).toBeLessThanOrEqual(0.66 * red);
      expect(blue, ink).toBeLessThanOrEqual(0.5);
    }
  });
});
