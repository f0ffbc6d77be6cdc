import type { KeyPath } from '@shoreglass/contract';
import { plain, rising } from './box-handles.ts';
import { type Handle, lengthMeasure, type ShapeContent } from './handle.ts';

/** Lamps whose place the file tells, and the lengths of the pump's way. */
export function deviceHandles(content: ShapeContent): Handle[] {
  return [...lampHandles(content), ...pumpHandles(content)];
}

function lampHandles({ devices, glass }: ShapeContent): Handle[] {
  return (devices?.lamps ?? []).flatMap(({ name, panel }, index): Handle[] => {
    if (!panel) return [];
    const path = (key: string): KeyPath => ['devices', 'lamps', index, 'panel', key];
    return [
      {
        id: `lamp:${index}`,
        group: 'devices',
        name: name ?? 'Lamp',
        measures: [
          lengthMeasure({
            id: 'x',
            name: 'Middle, from the left',
            value: panel.x,
            low: 0,
            high: glass.length,
            path: path('x'),
            axis: 'x',
          }),
          lengthMeasure({
            id: 'y',
            name: 'Middle, from the front',
            value: panel.y,
            low: 0,
            high: glass.width,
            path: path('y'),
            axis: 'y',
          }),
          plain('Underside, above the base', panel.z, path('z'), [0, 5]),
          plain('Length that shines', panel.length, path('length'), [0.001, 5]),
          plain('Breadth that shines', panel.breadth, path('breadth'), [0.001, 3]),
        ],
        inPlan: { x: panel.x, y: panel.y },
      },
    ];
  });
}

function pumpHandles({ devices, glass }: ShapeContent): Handle[] {
  const pump = devices?.pump;
  if (!pump) return [];
  const path = (...keys: string[]): KeyPath => ['devices', 'pump', ...keys];
  const measures = [
    ...(pump.outlet === undefined ? [] : [rising('Outlet, above the base', pump.outlet, path('outlet'), 5)]),
    ...(pump.fall === undefined ? [] : [plain('Free fall of the return', pump.fall, path('fall'), [0, 2])]),
    ...(pump.hose
      ? [
          plain('Hose, length', pump.hose.length, path('hose', 'length'), [0, 50]),
          plain('Hose, inner diameter', pump.hose.bore, path('hose', 'bore'), [0.001, 0.1]),
        ]
      : []),
    ...(pump.lip === undefined ? [] : [plain('Lip it returns over', pump.lip, path('lip'), [0.001, 5])]),
    ...(pump.curve
      ? [plain('Highest lift on its label', pump.curve.head, path('curve', 'head'), [0.01, 20])]
      : []),
  ];
  if (measures.length === 0) return [];
  return [
    {
      id: 'pump',
      group: 'devices',
      name: pump.name ?? 'Pump',
      measures,
      ...(pump.outlet !== undefined && pump.outlet <= glass.height
        ? { inSection: { x: glass.length, z: pump.outlet } }
        : {}),
    },
  ];
}
