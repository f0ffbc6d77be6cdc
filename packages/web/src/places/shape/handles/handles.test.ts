import { editEnclosureAll, openEnclosure, readEnclosure } from '@shoreglass/contract';
import { library } from '@shoreglass/library';
import { describe, expect, it } from 'vitest';
import { valueWritten } from '../desk/lengths.ts';
import { allHandles } from './all-handles.ts';
import { type Handle, handleNamed, type Measure, type Write, within } from './handle.ts';
import { neighboursOf, snapped } from './snapping.ts';

const MATERIALS = Object.values(library.data.materials).map(({ id, name, use }) => ({ id, name, use }));
const TEXT = library.data.enclosures['beck-bank'] ?? '';
const ISLAND = TEXT.replace(
  '\nwater:\n',
  `  - id: island
    name: Island
    kind: island
    outline:
      - { x: 10 cm, y: 10 cm, ground: 14 cm }
      - { x: 22 cm, y: 10 cm, ground: 20 cm }
      - { x: 16 cm, y: 24 cm, ground: 20 cm }
    layers:
      - { kind: substrate, material: fine-gravel }

water:
`,
);

const write: Write = (value, dimension = 'length') => valueWritten(value, dimension, 'cm');

function opened(text: string) {
  const { document, plan, findings } = openEnclosure(text, 'a.yaml');
  if (!document || !plan) throw new Error(findings.map(({ message }) => message).join('; '));
  return { content: document.content, plan, handles: allHandles(document.content, plan.zones, MATERIALS) };
}

/** What a text says, without the checks that take longer. */
function contentOf(text: string) {
  const { document, problems } = readEnclosure(text, 'a.yaml');
  if (!document) throw new Error(problems.map(({ message }) => message).join('; '));
  return document.content;
}

function measureOf(handle: Handle | undefined, id: string): Measure {
  const measure = handle?.measures.find((each) => each.id === id);
  if (!measure) throw new Error(`no measure ${id}`);
  return measure;
}

describe('every measure of every handle', () => {
  const texts = [
    ['strips', TEXT],
    ['an island drawn in plan', ISLAND],
  ] as const;
  it.each(texts)('writes its own value back without changing what the file says: %s', (_, text) => {
    const { content, handles } = opened(text);
    expect(handles.length).toBeGreaterThan(10);
    for (const { measures } of handles)
      for (const measure of measures) {
        const edited = contentOf(editEnclosureAll(text, measure.edits(measure.value, write)));
        // A point of a course that says nothing of its distance from the front is given one.
        const plain = (value: unknown) =>
          JSON.stringify(value, (key, each) => (key === 'y' ? undefined : each));
        if (measure.path.includes('course')) expect(plain(edited)).toBe(plain(content));
        else expect(edited).toEqual(content);
      }
  });
  it.each(texts)('takes a new value that the file then has: %s', (_, text) => {
    const { handles, plan } = opened(text);
    for (const handle of handles)
      for (const measure of handle.measures) {
        const wanted = within(measure, measure.value + (measure.dimension === 'length' ? 0.001 : 0.01));
        const again = contentOf(editEnclosureAll(text, measure.edits(wanted, write)));
        const handlesNow = allHandles(again, plan.zones, MATERIALS);
        const now = measureOf(handleNamed(handlesNow, handle.id), measure.id);
        expect(Math.abs(now.value - wanted), `${handle.name}, ${measure.name}`).toBeLessThan(1e-4);
      }
  });
});

describe('the border of two zones', () => {
  it('moves both, and where they meet at one height raises both', () => {
    const { handles } = opened(TEXT);
    const border = handleNamed(handles, 'ground:pool:right');
    expect(border?.name).toBe('Border of Pool and Margin');
    const edited = editEnclosureAll(TEXT, [
      ...measureOf(border, 'x').edits(0.4, write),
      ...measureOf(border, 'z').edits(0.06, write),
    ]);
    const [pool, margin] = opened(edited).content.zones;
    expect([pool?.to, margin?.from, pool?.ground?.right, margin?.ground?.left]).toEqual([
      0.4, 0.4, 0.06, 0.06,
    ]);
  });
  it('keeps a step where there is one', () => {
    const { handles } = opened(TEXT);
    const [lower, upper] = ['ground:margin:right', 'ground:bank:left'].map((id) => handleNamed(handles, id));
    expect([lower?.inSection?.z, upper?.inSection?.z]).toEqual([0.2, 0.22]);
    const edited = editEnclosureAll(TEXT, measureOf(upper, 'z').edits(0.25, write));
    expect(opened(edited).content.zones.map(({ ground }) => ground?.right)).toEqual([0.05, 0.2, 0.31]);
  });
});

describe('a whole piece and a whole zone', () => {
  it('move with all their points, and no further than the glass', () => {
    const { handles } = opened(ISLAND);
    const branch = measureOf(handleNamed(handles, 'piece:branch'), 'x');
    const moved = opened(editEnclosureAll(ISLAND, branch.edits(branch.value + 0.05, write))).content;
    expect(moved.hardscape?.[0]?.course?.map(({ x }) => Math.round(x * 1000) / 1000)).toEqual([
      0.19, 0.41, 0.6, 0.77,
    ]);
    expect(branch.high - branch.value).toBeCloseTo(0.9 - 0.72, 9);
    const island = measureOf(handleNamed(handles, 'zone:island'), 'y');
    expect([island.low, island.high]).toEqual([
      expect.closeTo(0.146667 - 0.1, 5),
      expect.closeTo(0.146667 + 0.21, 5),
    ]);
  });
});

describe('materials and words', () => {
  it('what is chosen is what the file then says', () => {
    const { handles } = opened(TEXT);
    const choices = handles.flatMap(({ choices: own = [] }) => own);
    expect(choices.map(({ id }) => id)).toContain('kind');
    for (const { value, options, path } of choices) {
      expect(options.map((option) => option.value)).toContain(value);
      const last = options.at(-1)?.value ?? value;
      const { document } = openEnclosure(editEnclosureAll(TEXT, [{ path, value: last }]), 'a.yaml');
      const said = path.reduce<unknown>(
        (part, key) => (part as Record<string, unknown>)?.[key],
        document?.content,
      );
      expect(said).toBe(last);
    }
  });
  it('wood is offered for wood, and layers for layers', () => {
    const { handles } = opened(TEXT);
    const offered = (id: string) =>
      handleNamed(handles, id)?.choices?.[0]?.options.map(({ value }) => value) ?? [];
    expect(offered('piece:branch')).toContain('alder-wood');
    expect(offered('piece:branch')).not.toContain('slate');
    expect(offered('layer:bank:3')).toContain('forest-soil');
    expect(offered('layer:bank:3')).not.toContain('alder-wood');
  });
});

describe('snapping', () => {
  const grid = { step: 0.01, fine: 0.001, reach: 0.006, neighbours: [{ at: 0.165, name: 'Water level' }] };
  it('falls on a near neighbour, else on the grid, and anywhere when free', () => {
    expect(snapped(0.1619, { ...grid, free: false })).toEqual({ at: 0.165, on: grid.neighbours[0] });
    expect(snapped(0.1419, { ...grid, free: false }).at).toBeCloseTo(0.14, 12);
    expect(snapped(0.1619, { ...grid, free: true }).at).toBeCloseTo(0.162, 12);
  });
  it('looks at what moves along the same axis, and never at itself', () => {
    const { handles } = opened(TEXT);
    const water = handleNamed(handles, 'water') as Handle;
    const names = neighboursOf(handles, water, 'z', 0.6).map(({ name }) => name);
    expect(names).toContain('Bank, left end');
    expect(names).not.toContain('Water level');
    expect(neighboursOf(handles, water, 'x', 0.9).map(({ at }) => at)).toContain(0.45);
  });
});
