import { type Fresh, label, lengthKey, type PartKey } from './part-keys.ts';

const mesh = (fresh: Fresh): readonly PartKey[] => [
  { at: 'mesh', name: 'Mesh', group: true, fresh },
  { at: 'mesh.open', name: 'Mesh, free part', dimension: 'share', limits: [0.01, 1] },
  lengthKey('mesh.hole', 'Mesh, width of its holes', [0.00002, 0.05]),
];

const MESH = { open: '36 %', hole: '0.5 mm' } as const;

export const VENT_KEYS: readonly PartKey[] = [
  lengthKey('length', 'Length', [0.001, 5]),
  lengthKey('opening', 'Height of the slot', [0.0005, 1]),
  ...mesh(MESH),
  {
    at: 'pane',
    name: 'In the pane',
    words: { front: 'in front', back: 'at the back', left: 'on the left', right: 'on the right' },
  },
  label,
];

export const COVER_KEYS: readonly PartKey[] = [
  {
    at: 'transmission',
    name: 'Light the closed part lets through',
    dimension: 'share',
    limits: [0, 1],
    fresh: '90 %',
  },
  ...mesh(MESH),
  { ...lengthKey('gap', 'Slit beside it', [0, 0.1]), fresh: '1 mm' },
];

export const GLASS_KEYS: readonly PartKey[] = [
  {
    at: 'second-pane',
    name: 'Second pane before the front',
    group: true,
    fresh: { gap: '10 mm', thickness: '4 mm' },
  },
  lengthKey('second-pane.gap', 'Second pane, still air before it', [0.001, 0.1]),
  lengthKey('second-pane.thickness', 'Second pane, thickness', [0.001, 0.02]),
];

/** Of a zone that has a roof, or could have one. */
export const roofKeys = (fresh: Fresh): readonly PartKey[] => [
  { at: 'roof', name: 'Roof, a slab above it', group: true, fresh },
  lengthKey('roof.bottom', 'Roof, underside', [0, 3]),
  lengthKey('roof.top', 'Roof, upper face', [0, 3]),
];
