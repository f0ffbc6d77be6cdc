import { editEnclosureAll, openEnclosure } from '@shoreglass/contract';
import { shapeSheet } from '@shoreglass/engine';
import { library } from '@shoreglass/library';
import { describe, expect, test } from 'vitest';
import type { SoundShape } from '../../../worker/shape-orders.ts';
import { handleNamed } from '../handles/handle.ts';
import { deedsFor } from './deeds.ts';
import { handlesOf, writeIn } from './moves.ts';
import { NEW_PARTS } from './new-parts.ts';

const TEXT = library.data.enclosures['beck-bank'] ?? '';

function shapeOf(text: string): SoundShape {
  const { document, plan, findings } = openEnclosure(text, 'a.yaml');
  if (!document || !plan) throw new Error(findings.map(({ message }) => message).join('; '));
  return { name: 'a', content: document.content, plan, sheet: shapeSheet(plan), materials: [] };
}

/** The text after a deed with a part, and what it then says. */
function after(text: string, part: string | undefined, words: string): { text: string; shape: SoundShape } {
  const shape = shapeOf(text);
  const deed = deedsFor(handleNamed(handlesOf(shape), part), shape.content, 'cm').find(
    (each) => each.words === words,
  );
  if (!deed) throw new Error(`nothing is called ${words}`);
  const edited = editEnclosureAll(text, deed.command.edits(shape));
  return { text: edited, shape: shapeOf(edited) };
}

test('splitting a zone changes no figure of the shape; its halves have its layers', () => {
  const before = shapeOf(TEXT).sheet.geometry;
  const { shape } = after(TEXT, 'ground:bank:right', 'Split Bank in two');
  const { geometry } = shape.sheet;
  expect(shape.content.zones).toHaveLength(4);
  expect(shape.content.zones[3]?.layers).toEqual(shape.content.zones[2]?.layers);
  expect(geometry.waterVolume).toBeCloseTo(before.waterVolume, 9);
  expect(geometry.groundVolume).toBeCloseTo(before.groundVolume, 9);
});

test('a zone taken away leaves its room to its neighbour', () => {
  const split = after(TEXT, 'ground:bank:right', 'Split Bank in two').text;
  const { shape } = after(split, 'ground:bank-right:right', 'Take Bank, right away');
  expect(shape.content.zones.map(({ id, to }) => [id, to])).toEqual([
    ['pool', 0.44],
    ['margin', expect.closeTo(0.57, 9)],
    ['bank', 0.9],
  ]);
});

test('an island takes water away, gets another corner and goes again, to the letter', () => {
  const { text, shape } = after(TEXT, undefined, 'Draw an island');
  expect(shape.sheet.geometry.openVolume).toBeLessThan(shapeOf(TEXT).sheet.geometry.openVolume);
  const corners = after(text, 'corner:island:1', 'Add a corner after this');
  expect(corners.shape.content.zones[3]?.outline).toHaveLength(5);
  expect(
    after(text, 'corner:island:1', 'Take this corner away').shape.content.zones[3]?.outline,
  ).toHaveLength(3);
  expect(after(text, 'zone:island', 'Take Island away').text).toBe(TEXT);
});

test('pieces are added, bent and taken away', () => {
  const stone = after(TEXT, undefined, 'Add a stone');
  expect(stone.shape.sheet.masses.total).toBeGreaterThan(shapeOf(TEXT).sheet.masses.total);
  expect(after(stone.text, 'piece:stone', 'Take Stone away').text).toBe(TEXT);
  const branch = after(TEXT, undefined, 'Add a branch').shape.content.hardscape?.at(-1);
  expect(branch).toMatchObject({ id: 'branch-2', material: 'alder-wood' });
  const bent = after(TEXT, 'point:branch:1', 'Add a point after this').shape.content.hardscape?.[0]?.course;
  expect(bent).toHaveLength(5);
  expect(bent?.[2]?.x).toBeCloseTo((0.36 + 0.55) / 2, 4);
  const shorter = after(TEXT, 'point:branch:1', 'Take this point away');
  expect(shorter.shape.content.hardscape?.[0]?.course).toHaveLength(3);
});

test('a lamp is given a place over the middle, from where it can be moved', () => {
  const { shape } = after(TEXT, undefined, 'Hang up LED bar');
  expect(shape.content.devices?.lamps?.[0]?.panel).toMatchObject({ x: 0.45, y: 0.225 });
  expect(handleNamed(handlesOf(shape), 'lamp:0')?.inPlan).toEqual({ x: 0.45, y: 0.225 });
});

test('a layer is put under another, and taken away again', () => {
  const put = after(TEXT, 'layer:bank:3', 'Put a layer under it');
  expect(put.shape.content.zones[2]?.layers.map(({ kind }) => kind)).toEqual([
    'false bottom',
    'drainage',
    'mesh',
    'drainage',
    'substrate',
  ]);
  const gone = after(put.text, 'layer:bank:3', 'Take this layer away');
  expect(gone.shape.content.zones).toEqual(shapeOf(TEXT).content.zones);
});

describe('equipment and openings', () => {
  /** Every device added to a box without any, then every key it can be given. */
  const bare = TEXT.slice(0, TEXT.indexOf('\ndevices:')) + TEXT.slice(TEXT.indexOf('\nhardscape:'));
  const ADDED = NEW_PARTS.map(({ name, handle, isList }) => ({
    words: `Add: ${name.toLowerCase()}`,
    handle: isList ? `${handle}:0` : handle,
  }));

  test.each(ADDED)(
    '$words, and it is taken in the hand and goes again, to the letter',
    ({ words, handle }) => {
      const { text, shape } = after(bare, undefined, words);
      const made = handleNamed(handlesOf(shape), handle);
      expect(made?.measures.length, handle).toBeGreaterThan(0);
      expect(shape.sheet.remarks.filter(({ severity }) => severity === 'blocking')).toEqual([]);
      expect(after(text, handle, `Take ${made?.name} away`).text).toBe(bare);
    },
  );

  test.each(ADDED)('after "$words" each further key can be given and left out', ({ words, handle }) => {
    const { text, shape } = after(bare, undefined, words);
    const made = handleNamed(handlesOf(shape), handle);
    for (const option of made?.more ?? []) {
      const given = editEnclosureAll(text, [option.edit]);
      const now = handleNamed(handlesOf(shapeOf(given)), handle);
      expect(
        now?.less?.map(({ name }) => name),
        option.name,
      ).toContain(option.name);
    }
    // What the pump moves without a curve has to be told by its flow, so the curve alone is not left out.
    for (const option of (made?.less ?? []).filter(({ name }) => name !== 'Curve of its label')) {
      const without = editEnclosureAll(text, [option.edit]);
      const now = handleNamed(handlesOf(shapeOf(without)), handle);
      expect(
        now?.less?.map(({ name }) => name),
        option.name,
      ).not.toContain(option.name);
    }
  });

  test.each(ADDED)('after "$words" every number is written back as it was read', ({ words, handle }) => {
    const { text, shape } = after(bare, undefined, words);
    for (const unit of ['cm', 'in'] as const)
      for (const measure of handleNamed(handlesOf(shape), handle)?.measures ?? []) {
        const edited = editEnclosureAll(text, measure.edits(measure.value, writeIn(unit)));
        const again = handleNamed(handlesOf(shapeOf(edited)), handle)?.measures.find(
          ({ id }) => id === measure.id,
        );
        // Written with two digits of a centimetre or an inch, or six of anything else.
        expect(again?.value, `${measure.name} in ${unit}`).toBeCloseTo(
          measure.value,
          measure.dimension === 'length' ? 3 : 5,
        );
      }
  });

  test('a second lamp is added after the first, and times are written as they are read', () => {
    const { text, shape } = after(TEXT, undefined, 'Add: lamp');
    expect(shape.content.devices?.lamps).toHaveLength(2);
    const lamp = handleNamed(handlesOf(shape), 'lamp:1');
    const on = lamp?.sayings?.find(({ id }) => id === 'on');
    expect(on?.value).toBe('09:00');
    const edited = editEnclosureAll(text, [{ path: on?.path ?? [], value: on?.written(' 07:45 ') ?? '' }]);
    expect(shapeOf(edited).content.devices?.lamps?.[1]?.on).toBeCloseTo(7.75, 12);
    const mister = after(TEXT, undefined, 'Add: mister');
    const at = handleNamed(handlesOf(mister.shape), 'mister')?.sayings?.find(({ id }) => id === 'at');
    expect(at?.value).toBe('08:30, 20:30');
    expect(at?.written('6:15; 18:00 22:30')).toEqual(['6:15', '18:00', '22:30']);
  });
});

test('a cave has a slab over it, a wall stands along the back, a stream lies in the land', () => {
  const cave = after(TEXT, undefined, 'Draw a cave');
  expect(cave.shape.plan.zones.at(-1)).toMatchObject({ kind: 'cave', roof: { density: 2750 } });
  expect(cave.shape.sheet.masses.total).toBeGreaterThan(shapeOf(TEXT).sheet.masses.total);
  const open = after(cave.text, 'zone:cave', 'Cave, without: roof, a slab above it');
  expect(open.shape.content.zones.at(-1)?.roof).toBeUndefined();
  const wall = after(TEXT, undefined, 'Build a wall along the back');
  expect(wall.shape.sheet.structure.foam?.volume).toBeGreaterThan(0);
  expect(wall.shape.sheet.geometry.surfaceArea).toBeLessThan(shapeOf(TEXT).sheet.geometry.surfaceArea);
  const stream = after(TEXT, undefined, 'Draw a stream');
  expect(stream.shape.plan.zones.at(-1)?.kind).toBe('stream');
  expect(after(stream.text, 'zone:stream', 'Take Stream away').text).toBe(TEXT);
});

test('whatever a part of the examples can be given, the file is sound with it, and the same without it again', () => {
  for (const id of ['beck-bank', 'fern-island']) {
    const text = library.data.enclosures[id] ?? '';
    for (const { id: part, more = [] } of handlesOf(shapeOf(text)))
      for (const { name, edit } of more) {
        const given = editEnclosureAll(text, [edit]);
        const what = `${name}, ${part} of ${id}`;
        const option = handleNamed(handlesOf(shapeOf(given)), part)?.less?.find((each) => each.name === name);
        expect(option, what).toBeDefined();
        expect(
          openEnclosure(
            editEnclosureAll(given, [{ path: option?.edit.path ?? [], value: undefined }]),
            'a.yaml',
          ).plan,
          what,
        ).toEqual(openEnclosure(text, 'a.yaml').plan);
      }
  }
}, 60_000);
