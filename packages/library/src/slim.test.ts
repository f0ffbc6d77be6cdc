import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { slimBundle, slimData } from '../build/slim.ts';
import { library, type Quantity } from './index.ts';

const { data } = library;
const slim = slimData(data);

/** Path and number of every quantity, but for those only pages show. */
function numbersIn(part: unknown, path = ''): string[] {
  if (typeof part !== 'object' || part === null) return [];
  if ('value' in part && 'unit' in part && 'basis' in part) {
    const { value, unit, distribution, spread, min, max } = part as Quantity;
    return [JSON.stringify([path, value, unit, distribution, spread, min, max])];
  }
  return Object.entries(part).flatMap(([key, inner]) =>
    /^(portions|properties|energy|leached|tissue)$/.test(key) ? [] : numbersIn(inner, `${path}/${key}`),
  );
}

describe('the slim library of the app', () => {
  it('keeps every number the engine takes', () => {
    const organisms = numbersIn(slim.organisms);
    expect(organisms.length).toBeGreaterThan(2000);
    expect(organisms).toEqual(numbersIn(data.organisms));
    expect(numbersIn(slim.parameters)).toEqual(numbersIn(data.parameters));
    expect(numbersIn(slim.waters)).toEqual(numbersIn(data.waters));
    expect(numbersIn(slim.materials)).toEqual(numbersIn(data.materials));
    expect(slim.enclosures).toEqual(data.enclosures);
  });
  it('keeps the sources that sentences name', () => {
    const crab = slim.organisms['geosesarma-dennerle'];
    expect(crab?.risks).toEqual(data.organisms['geosesarma-dennerle']?.risks);
    expect(crab?.tolerances?.pH?.low?.source).toContain('keepers');
    expect(crab?.lifeHistory?.adultLength.source).toBe('');
  });
  it('is written as JSON that reads back', async () => {
    const code = readFileSync(join(import.meta.dirname, 'generated/library.ts'), 'utf8');
    const made = slimBundle(code);
    expect(made.length).toBeLessThan(0.7 * code.length);
    const { LIBRARY_DATA } = (await import(`data:text/javascript,${encodeURIComponent(made)}`)) as {
      LIBRARY_DATA: typeof data;
    };
    expect(LIBRARY_DATA).toEqual(slim);
  });
});
