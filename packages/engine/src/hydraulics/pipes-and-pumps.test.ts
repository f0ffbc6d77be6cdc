import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { frictionColebrook1939, frictionFactor, pipeSpeed, reynoldsNumber } from './pipe-friction.ts';
import { barbLoss, fittingLoss, frictionLoss, type PipeRun, pipeLoss } from './pipe-loss.ts';
import { dutyAtSpeed, operatingPoint, pumpHead, pumpPower } from './pump.ts';

const hose: PipeRun = { bore: 0.012, length: 1.5, roughness: 1.5e-6, fittings: 4, viscosity: 1.0034e-6 };
const flows = fc.double({ min: 1e-7, max: 1e-3, noNaN: true });

describe('friction', () => {
  it('White, Fluid Mechanics, example 6.7: 117 m in 500 m of cast iron', () => {
    const main: PipeRun = { bore: 0.2, length: 500, roughness: 0.00026, fittings: 0, viscosity: 1e-5 };
    expect(Math.abs(reynoldsNumber(pipeSpeed(0.2, 0.2), 0.2, 1e-5) / 128000 - 1)).toBeLessThan(0.01);
    // the book reads the factor off a chart
    expect(Math.abs(frictionLoss(main, 0.2) / 117 - 1)).toBeLessThan(0.02);
  });
  it('solves Colebrook and White: the root put back', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 4000, max: 1e8, noNaN: true }),
        fc.double({ min: 0, max: 0.05, noNaN: true }),
        (re, e) => {
          const f = frictionColebrook1939(re, e);
          const right = -2 * Math.log10(e / 3.7 + 2.51 / (re * Math.sqrt(f)));
          expect(1 / Math.sqrt(f) / right).toBeCloseTo(1, 9);
        },
      ),
    );
  });
  it('has no steps where laminar, blended and turbulent meet', () => {
    for (const re of [2000, 4000]) {
      expect(frictionFactor(re * 1.000001, 1e-4) / frictionFactor(re * 0.999999, 1e-4)).toBeCloseTo(1, 4);
    }
    expect(frictionFactor(1000, 0.01)).toBeCloseTo(0.064, 12);
  });
  it('rises with flow and vanishes without', () => {
    expect(pipeLoss(hose, 0)).toBe(0);
    fc.assert(
      fc.property(flows, (flow) => {
        expect(pipeLoss(hose, flow * 1.01)).toBeGreaterThan(pipeLoss(hose, flow));
      }),
    );
  });
  it('a barb as wide as the hose costs nothing, one of half the bore 15 velocity heads', () => {
    expect(barbLoss(1)).toBe(0);
    // 0.5 (1 - 1/4)/(1/16) + (4 - 1)^2
    expect(barbLoss(0.5)).toBeCloseTo(15, 12);
    expect(fittingLoss(1, Math.sqrt(2 * 9.80665))).toBeCloseTo(1, 12);
  });
});

describe('pump and pipe', () => {
  const curve = { shutOffHead: 1.6, freeFlow: 1000 / 3.6e6, exponent: 2 };
  it('meet where both give the same head', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1.59, noNaN: true }), (lift) => {
        const { flow, head } = operatingPoint(curve, hose, lift);
        expect(head).toBeCloseTo(lift + pipeLoss(hose, flow), 6);
        expect(head).toBeCloseTo(pumpHead(curve, flow), 12);
      }),
    );
  });
  it('move nothing above the shut-off head', () => {
    expect(operatingPoint(curve, hose, 1.6)).toEqual({ flow: 0, head: 1.6 });
  });
  it('follow the affinity laws: Crane TP-410 example 7-33, 3500 to 1700 rpm', () => {
    const { flow, head, power } = dutyAtSpeed({ flow: 400, head: 126, power: 17.5 }, 1700 / 3500);
    expect(flow).toBeCloseTo(194.3, 1);
    expect(head).toBeCloseTo(29.7, 1);
    expect(power).toBeCloseTo(2, 1);
  });
  it('lifting 1 L/s by 1 m without loss takes 9.8 W', () => {
    expect(pumpPower({ flow: 1e-3, head: 1 }, 1000, 1)).toBeCloseTo(9.80665, 10);
  });
});
