import { checkEnclosure, readEnclosure } from '@shoreglass/contract';
import { expectedRun, prepareOutlook } from '@shoreglass/engine';
import { library } from '@shoreglass/library';
import { describe, expect, test } from 'vitest';

interface Contents {
  readonly layer?: string;
  readonly piece?: string;
  readonly feed?: string;
}

/** Thirty days of a small pool with one thing of the library in it. */
function runWith({ layer = 'coarse-sand', piece, feed }: Contents) {
  const text = [
    'shoreglass: 1',
    'name: One thing of the library',
    'start: 2026-03-01',
    'glass: { length: 40 cm, width: 25 cm, height: 30 cm, thickness: 5 mm }',
    'cover: { open: 10 % }',
    'zones:',
    '  - id: pool',
    '    kind: pool',
    '    from: 0 cm',
    '    to: 40 cm',
    '    ground: { left: 3 cm, right: 4 cm }',
    `    layers: [{ kind: ${kindOf(layer)}, material: ${layer} }]`,
    'water: { level: 16 cm, fill: soft-tap, top-off: rain }',
    'room:',
    '  temperature: { mean: 23 °C, season: 0 K, day: 1 K, peak: 07-25 }',
    '  humidity: { mean: 55 %, season: 0 %, day: 0 %, peak: 08-10 }',
    ...(piece ? ['hardscape:', `  - { id: piece, material: ${piece}, mass: 50 g }`] : []),
    'routines:',
    '  - { do: top-off, every: 5 d }',
    ...(feed ? [`  - { do: feed, feed: ${feed}, amount: 0.1 g, every: 3 d }`] : []),
  ].join('\n');
  const { document, problems } = readEnclosure(text, 'one.yaml');
  if (!document) throw new Error(JSON.stringify(problems));
  const { plan, findings } = checkEnclosure(document);
  if (!plan) throw new Error(JSON.stringify(findings));
  return expectedRun(prepareOutlook(plan, { days: 30, members: 2, seed: 1 }));
}

function kindOf(id: string): string {
  const material = library.material(id);
  return material.use === 'layer' ? material.layers[0]! : 'substrate';
}

function expectSound(contents: Contents): void {
  const { series, closure } = runWith(contents);
  for (const course of series) expect(course.every(Number.isFinite)).toBe(true);
  for (const [element, error] of Object.entries(closure))
    expect(Math.abs(error), element).toBeLessThan(1e-10);
}

/** All but what a box is built of: those materials are refused as pieces. */
const materials = Object.values(library.data.materials).filter(({ use }) => use !== 'build');

describe('a month with each thing of the library stays finite and closed', () => {
  test.each(materials.filter(({ use }) => use === 'layer').map(({ id }) => id))('layer of %s', (layer) =>
    expectSound({ layer }),
  );
  test.each(
    materials
      .filter((material) => material.use !== 'layer' || material.exchange !== undefined)
      .map(({ id }) => id),
  )('piece of %s', (piece) => expectSound({ piece }));
  test.each(Object.keys(library.data.feeds))('feed %s', (feed) => expectSound({ feed }));
});
