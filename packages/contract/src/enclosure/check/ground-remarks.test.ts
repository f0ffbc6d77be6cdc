import { library } from '@shoreglass/library';
import { describe, expect, it } from 'vitest';
import { openEnclosure } from './check-enclosure.ts';

const text = library.enclosure('beck-bank');
const told = (from: string, to: string) =>
  openEnclosure(text.replace(from, to), 'bank.yaml').findings.filter(({ message }) =>
    message.includes('below the water level'),
  );

describe('ground of a bank in the water', () => {
  it('is not told of where the water stays below the mesh', () => {
    expect(told('level: 16.5 cm', 'level: 16.5 cm')).toEqual([]);
  });
  it('is told with its litres and its layer where the water stands in the soil', () => {
    const [finding, ...others] = told('level: 16.5 cm', 'level: 20.1 cm');
    expect(others).toEqual([]);
    // 33 cm × 45 cm × (20.1 - 17.1) cm = 4.5 L, below the lowest ground of 22 cm
    expect(finding).toMatchObject({ severity: 'warning', path: 'zones[2].layers[3]' });
    expect(finding?.message).toMatch(/^4 L of this ground|^5 L of this ground/);
  });
  it('is not told of where gravel stands there', () => {
    const gravel = text.replace('material: forest-soil', 'material: fine-gravel');
    const { findings } = openEnclosure(gravel.replace('level: 16.5 cm', 'level: 20.1 cm'), 'bank.yaml');
    expect(findings.filter(({ message }) => message.includes('below the water level'))).toEqual([]);
  });
});
