import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bedLoss,
  bedPermeability,
  capillaryRise,
  capillaryRiseInGrains,
  foamLoss,
  hydraulicConductivity,
  layerStorage,
  poreRadiusOfRise,
  sandConductivityHazen1892,
} from './porous-flow.ts';
import {
  belowFall,
  carbonDioxideEfficiency,
  deficitRatioButts1983,
  deficitRatioNakasone1987,
  surfaceTransfer,
} from './reaeration.ts';
import {
  broadLipFlow,
  criticalDepth,
  emptyingTime,
  orificeFlow,
  sheetReach,
  standpipeFlow,
  weirFlowFrancis1883,
  weirFlowKindsvaterCarter1957,
  weirFlowRehbock1929,
} from './weirs.ts';

describe('crests and holes', () => {
  it('Kindsvater and Carter: the example of the fluids documentation', () => {
    expect(weirFlowKindsvaterCarter1957(0.2, 0.5, 1)).toBeCloseTo(0.15545928949179422, 9);
  });
  it('three forms for a full-width sharp crest agree within 6 %', () => {
    const francis = weirFlowFrancis1883(1, 0.1, 0);
    expect(weirFlowRehbock1929(0.1, 0.5, 1) / francis).toBeCloseTo(1, 1);
    expect(Math.abs(weirFlowKindsvaterCarter1957(0.1, 0.5, 1) / francis - 1)).toBeLessThan(0.06);
  });
  it('water on a broad lip stands at two thirds of the head', () => {
    // critical flow: y = 2/3 H
    expect(criticalDepth(broadLipFlow(1, 0.03)) / 0.02).toBeCloseTo(1, 2);
  });
  it('a sheet that leaves at 1 m/s and falls 0.2 m lands 0.2 m away', () => {
    expect(sheetReach(1, 0.2)).toBeCloseTo(0.202, 3);
  });
  it('the time of emptying is the sum of volume over flow, in fine slices', () => {
    const tank = { tankArea: 0.18, holeArea: 7.854e-5, startHead: 0.15, endHead: 0.02, discharge: 0.62 };
    const slices = 20_000;
    const dh = (tank.startHead - tank.endHead) / slices;
    let time = 0;
    for (let i = 0; i < slices; i++) {
      time +=
        (tank.tankArea * dh) / orificeFlow(tank.holeArea, tank.endHead + (i + 0.5) * dh, tank.discharge);
    }
    expect(emptyingTime(tank) / time).toBeCloseTo(1, 6);
  });
  it('an overflow pipe runs as a weir under little head and as a hole under much', () => {
    expect(standpipeFlow(0.04, 0.002, 0.6)).toBeCloseTo(weirFlowFrancis1883(Math.PI * 0.04, 0.002, 0), 12);
    expect(standpipeFlow(0.04, 0.2, 0.6)).toBeCloseTo(orificeFlow((Math.PI * 0.04 ** 2) / 4, 0.2, 0.6), 12);
  });
});

describe('beds and foam', () => {
  const slow = { speed: 1e-6, length: 1, density: 998.2, viscosity: 1.0016e-3 };
  it('Ergun: the example of the fluids documentation', () => {
    const seepage = { speed: 0.001, length: 1, density: 1000, viscosity: 0.001 };
    expect(bedLoss(seepage, 0.0008, 0.4)).toBeCloseTo(1338.8671875, 6);
  });
  it('slow flow in a bed is that of its permeability, but for 150 in place of 180', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 2e-4, max: 2e-3, noNaN: true }),
        fc.double({ min: 0.3, max: 0.6, noNaN: true }),
        (d, e) => {
          const byPermeability = (slow.viscosity * slow.speed * slow.length) / bedPermeability(d, e);
          expect(bedLoss(slow, d, e) / byPermeability).toBeCloseTo(150 / 180, 2);
        },
      ),
    );
  });
  it('sand of 0.3 mm lets through of the order Hazen found', () => {
    const conductivity = hydraulicConductivity(bedPermeability(3e-4, 0.38), 998.2, 1.0016e-3);
    expect(conductivity / sandConductivityHazen1892(3e-4)).toBeGreaterThan(0.3);
    expect(conductivity / sandConductivityHazen1892(3e-4)).toBeLessThan(3);
  });
  it('foam loses in proportion to length and, slow enough, to speed', () => {
    expect(foamLoss({ ...slow, length: 2 }, 1.3e-7, 0.093)).toBeCloseTo(
      2 * foamLoss(slow, 1.3e-7, 0.093),
      14,
    );
    expect(foamLoss({ ...slow, speed: 2e-6 }, 1.3e-7, 0.093) / foamLoss(slow, 1.3e-7, 0.093)).toBeCloseTo(
      2,
      3,
    );
  });
  it('pores and rise give each other back; coarse sand lifts some 12 cm', () => {
    expect(capillaryRise(poreRadiusOfRise(0.125, 0.07274, 998.2), 0.07274, 998.2)).toBeCloseTo(0.125, 12);
    // Heath 1982: coarse sand (0.5 to 1 mm) 12.5 cm
    const rise = capillaryRiseInGrains(0.38, 0.00075);
    expect(rise).toBeGreaterThan(0.06);
    expect(rise).toBeLessThan(0.25);
  });
  it('5 cm of gravel under 0.9 by 0.45 m hold 8.5 L', () => {
    expect(layerStorage(0.9 * 0.45, 0.05, 0.42)).toBeCloseTo(0.008505, 12);
  });
});

describe('falls and surfaces', () => {
  const fall = { height: 0.3, temperature: 20, quality: 1.8, edge: 0.8 };
  it('no height, no exchange; the higher the more, in both forms', () => {
    expect(deficitRatioButts1983({ ...fall, height: 0 })).toBe(1);
    expect(deficitRatioNakasone1987({ ...fall, height: 1e-9 }, 20, 0.2)).toBeCloseTo(1, 6);
    for (const ratio of [
      (height: number) => deficitRatioButts1983({ ...fall, height }),
      (height: number) => deficitRatioNakasone1987({ ...fall, height }, 20, 0.2),
    ]) {
      expect(ratio(0.4)).toBeGreaterThan(ratio(0.3));
    }
  });
  it('leave saturated water as it is', () => expect(belowFall(9, 9, 1.5)).toBe(9));
  it('carbon dioxide trails oxygen a little', () => {
    expect(carbonDioxideEfficiency(0.25, 25)).toBeLessThan(0.25);
    expect(carbonDioxideEfficiency(0.25, 25)).toBeGreaterThan(0.22);
    expect(carbonDioxideEfficiency(0, 25)).toBe(0);
  });
  it('a gas of Schmidt number 600 moves at the reference velocity', () => {
    expect(surfaceTransfer(0.5, 600, 0.67)).toBe(0.5);
  });
});
