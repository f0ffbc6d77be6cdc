import { openEnclosure } from '@shoreglass/contract';
import { shapeSheet } from '@shoreglass/engine';
import { library } from '@shoreglass/library';
import { expect, test } from 'vitest';
import { concernsOf, filePath } from './concerns.ts';
import { handlesOf } from './moves.ts';

const TEXT = library.data.enclosures['beck-bank'] ?? '';

function shapeOf(text: string) {
  const { document, plan, findings } = openEnclosure(text, 'a.yaml');
  if (!document || !plan) throw new Error(findings.map(({ message }) => message).join('; '));
  return {
    shape: { name: 'a', content: document.content, plan, sheet: shapeSheet(plan), materials: [] },
    findings,
  };
}

test('a place of the plan is found in the file', () => {
  const { content } = shapeOf(TEXT).shape;
  expect(filePath('zones.bank.groundEnd', content)).toBe('zones[2].ground.right');
  expect(filePath('box.glassThickness', content)).toBe('glass.thickness');
  expect(filePath('hardscape.stones', content)).toBe('hardscape[1]');
  expect(filePath('devices.lamps.0.panel', content)).toBe('devices.lamps[0].panel');
});

test('thin glass is told beside the thickness of the glass, and each sentence once', () => {
  const { shape, findings } = shapeOf(TEXT.replace('thickness: 8 mm', 'thickness: 4 mm'));
  const concerns = concernsOf(shape, findings, handlesOf(shape));
  const glass = concerns.filter(
    ({ handle, measure }) => handle?.id === 'glass' && measure?.id === 'thickness',
  );
  expect(glass.length).toBeGreaterThan(0);
  expect(glass[0]?.severity).toBe('warning');
  const messages = concerns.map(({ message }) => message);
  expect(new Set(messages).size).toBe(messages.length);
});

test('what concerns the whole box stands with the glass, and what floats up with itself', () => {
  const fern = library.data.enclosures['fern-island'] ?? '';
  const { shape, findings } = shapeOf(fern);
  const concerns = concernsOf(shape, findings, handlesOf(shape));
  const about = (words: string) => concerns.find(({ message }) => message.includes(words))?.handle?.id;
  expect(about('press on the floor')).toBe('glass');
  expect(about('Root from the pool')).toBe('piece:root');
  expect(about('expanding foam')).toBe('zone:backdrop');
});
