import { describe, expect, it } from 'vitest';
import { drowningHazard, GENTLE_SHORE } from './drowning.ts';

const WOODLOUSE = { strayIntoWater: 0.005, timeAfloat: 0.5 };
const steep = (wayOut: number) => ({ length: 0.5, wayOut, hasPerch: false });

describe('drowningHazard', () => {
  it('is nothing where the banks slope gently all round', () => {
    expect(drowningHazard(WOODLOUSE, steep(1), 0.1)).toBe(0);
    expect(drowningHazard(WOODLOUSE, GENTLE_SHORE, 0)).toBe(0);
  });
  it('drowns all that fall in where nothing leads out: those of a strip along the shore', () => {
    expect(drowningHazard(WOODLOUSE, steep(0), 0.1)).toBeCloseTo((0.005 * 0.5) / 0.1, 14);
  });
  it('falls with every way out, and faster than these grow', () => {
    const half = drowningHazard(WOODLOUSE, steep(0.5), 0.1) / drowningHazard(WOODLOUSE, steep(0), 0.1);
    expect(half).toBeCloseTo(1 / 64, 14);
  });
  it('leaves half after the time a swimmer lasts where there is no land, and all on a piece that stands out', () => {
    expect(Math.exp(-0.5 * drowningHazard(WOODLOUSE, steep(0), 0))).toBeCloseTo(0.5, 14);
    expect(drowningHazard(WOODLOUSE, { ...steep(0), hasPerch: true }, 0)).toBe(0);
  });
  it('spares those that never stray', () => {
    expect(drowningHazard({ strayIntoWater: 0, timeAfloat: 10 }, steep(0), 0.1)).toBe(0);
  });
});
