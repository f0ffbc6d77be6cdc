import type { KeyPath } from '@shoreglass/contract';
import {
  FAN_KEYS,
  FOGGER_KEYS,
  HEATER_KEYS,
  LAMP_KEYS,
  MAT_KEYS,
  MISTER_KEYS,
  pumpKeys,
} from './device-keys.ts';
import { type Handle, lengthMeasure, type Measure, type ShapeContent } from './handle.ts';
import { keysOfPart, lengthKey, type PartKey } from './part-keys.ts';

type Devices = NonNullable<ShapeContent['devices']>;

/** Everything with a plug; what has a place in the drawings is dragged there, all else is typed. */
export function deviceHandles(content: ShapeContent): Handle[] {
  const { devices } = content;
  if (!devices) return [];
  return [
    ...(devices.lamps ?? []).map((lamp, index) => lampHandle(content, lamp, index)),
    ...pumpHandles(content, devices),
    ...plainDevice(devices, 'heater', 'Heater', HEATER_KEYS),
    ...plainDevice(devices, 'mister', 'Mister', MISTER_KEYS),
    ...plainDevice(devices, 'fogger', 'Fogger', FOGGER_KEYS),
    ...listed(devices.fans, { key: 'fans', id: 'fan', name: 'Fan', keys: FAN_KEYS }),
    ...listed(devices.mats, { key: 'mats', id: 'mat', name: 'Heat mat', keys: MAT_KEYS }),
  ];
}

function plainDevice(
  devices: Devices,
  key: 'heater' | 'mister' | 'fogger',
  name: string,
  keys: readonly PartKey[],
): Handle[] {
  const device = devices[key];
  if (!device) return [];
  const called = 'name' in device ? device.name : undefined;
  return [{ id: key, group: 'devices', name: called ?? name, ...keysOfPart(['devices', key], device, keys) }];
}

interface Listed {
  readonly key: 'fans' | 'mats';
  readonly id: string;
  readonly name: string;
  readonly keys: readonly PartKey[];
}

function listed(
  devices: readonly { readonly name?: string | undefined }[] | undefined,
  { key, id, name, keys }: Listed,
): Handle[] {
  return (devices ?? []).map((device, index) => ({
    id: `${id}:${index}`,
    group: 'devices',
    name: device.name ?? numbered(name, index),
    ...keysOfPart(['devices', key, index], device, keys),
  }));
}

const numbered = (name: string, index: number) => (index === 0 ? name : `${name} ${index + 1}`);

type Lamp = NonNullable<Devices['lamps']>[number];

function lampHandle({ glass }: ShapeContent, lamp: Lamp, index: number): Handle {
  const { panel } = lamp;
  const root: KeyPath = ['devices', 'lamps', index];
  const keys = keysOfPart(root, lamp, [...LAMP_KEYS, ...PANEL_KEYS]);
  const base = { id: `lamp:${index}`, group: 'devices', name: lamp.name ?? numbered('Lamp', index) } as const;
  if (!panel) return { ...base, ...keys };
  const place = (axis: 'x' | 'y', name: string, high: number): Measure =>
    lengthMeasure({ id: axis, name, value: panel[axis], low: 0, high, path: [...root, 'panel', axis], axis });
  return {
    ...base,
    ...keys,
    measures: [
      place('x', 'Middle, from the left', glass.length),
      place('y', 'Middle, from the front', glass.width),
      ...keys.measures,
    ],
    less: [...keys.less, { name: 'Its place', edit: { path: [...root, 'panel'], value: undefined } }],
    inPlan: { x: panel.x, y: panel.y },
  };
}

const PANEL_KEYS: readonly PartKey[] = [
  lengthKey('panel.z', 'Underside, above the base', [0, 5]),
  lengthKey('panel.length', 'Length that shines', [0.001, 5]),
  lengthKey('panel.breadth', 'Breadth that shines', [0.001, 3]),
];

/** An outlet that is added lies this much above the water [m]. */
const OVER_WATER = 0.05;

function pumpHandles({ glass, water }: ShapeContent, { pump }: Devices): Handle[] {
  if (!pump) return [];
  const outlet = Math.min(glass.height, water.level + OVER_WATER);
  const keys = keysOfPart(['devices', 'pump'], pump, pumpKeys(`${Number((outlet * 100).toFixed(1))} cm`));
  const drag = (position: number) => ({ axis: 'z', position, valueAt: (z: number) => z }) as const;
  return [
    {
      id: 'pump',
      group: 'devices',
      name: pump.name ?? 'Pump',
      ...keys,
      measures: keys.measures.map((measure) =>
        measure.id === 'outlet' ? { ...measure, drag: drag(measure.value) } : measure,
      ),
      ...(pump.outlet !== undefined && pump.outlet <= glass.height
        ? { inSection: { x: glass.length, z: pump.outlet } }
        : {}),
    },
  ];
}
