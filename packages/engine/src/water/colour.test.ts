import { describe, expect, it } from 'vitest';
import { waterColour } from './colour.ts';

describe('colour of water', () => {
  it('calls tea-coloured water of 10 mg C/L strongly coloured and clear tap water clear', () => {
    // classes of the Minnesota Pollution Control Agency: clear to 20, highly coloured 51 to 100 mg Pt/L
    expect(waterColour(10)).toBeGreaterThan(50);
    expect(waterColour(10)).toBeLessThan(100);
    expect(waterColour(1.5)).toBeLessThan(20);
  });
});
