import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import type { ParameterTable } from '../process/compose.ts';
import { ratesByName } from '../process/process-test-kit.ts';
import { LAND_PLANTS, MOSS } from './land-plant-parameters.ts';
import { CYCLE_DERIVATIONS, CYCLE_NOT_MODELLED, CYCLE_PROCESSES } from './processes.ts';

interface Entry {
  readonly value: number;
  readonly unit: string;
  readonly distribution: 'fixed' | 'normal' | 'lognormal' | 'uniform';
  readonly min?: number;
  readonly max?: number;
  readonly basis: string;
}
interface File {
  readonly process: string;
  readonly parameters: Readonly<Record<string, Entry>>;
}

const FOLDER = new URL('../../../library/data/parameters/', import.meta.url);
const FILES = new Map(
  readdirSync(FOLDER)
    .filter((name) => name.endsWith('.yaml'))
    .map((name) => parse(readFileSync(new URL(name, FOLDER), 'utf8')) as File)
    .map((file) => [file.process, file]),
);
const MEDIANS: ParameterTable = Object.fromEntries(
  [...FILES].map(([id, { parameters }]) => [
    id,
    Object.fromEntries(Object.entries(parameters).map(([key, { value }]) => [key, value])),
  ]),
);
const OWNERS = [...CYCLE_PROCESSES, ...CYCLE_DERIVATIONS, MOSS, LAND_PLANTS];
const DAY = 86400;

function rates(id: string, entries: Parameters<typeof ratesByName>[2]): Readonly<Record<string, number>> {
  const process = CYCLE_PROCESSES.find((each) => each.id === id)!;
  return ratesByName(process, MEDIANS[id]!, entries);
}

describe('the library’s parameters of the cycle', () => {
  it.each(OWNERS.map((owner) => [owner.id, owner] as const))('fit the specification of %s', (id, owner) => {
    const given = FILES.get(id)?.parameters ?? {};
    expect(Object.keys(given).sort()).toEqual(Object.keys(owner.parameters).sort());
    for (const [key, spec] of Object.entries(owner.parameters)) {
      const { value, unit, min = value, max = value } = given[key]!;
      expect([key, unit]).toEqual([key, spec.unit]);
      for (const each of [min, value, max]) {
        expect(each).toBeGreaterThanOrEqual(spec.min);
        expect(each).toBeLessThanOrEqual(spec.max);
      }
    }
  });

  it('give soaked feed an oxygen uptake of 6 to 12 mg/g/h at 20 °C', () => {
    // Aquaculture Science 37: 27 (1989): 8.8 mg O2/g/h for solid residue; 0.45 g C per g of feed
    const feedCarbon = 0.45 / 12.011;
    const rate = rates('feed-breakdown', {
      feedCarbon,
      feedPace: 1,
      oxygen: 0.28,
      waterVolume: 1,
      waterTemperature: 20,
    })['oxidation of feed carbon']!;
    const uptake = rate * 3600 * 31998;
    expect(uptake).toBeGreaterThan(6);
    expect(uptake).toBeLessThan(12);
  });

  it('give faeces an oxygen uptake of 2.5 to 6 mg/g/h at 20 °C', () => {
    // Aquaculture Science 37: 27 (1989): 4.2 mg O2/g/h; 0.4 g C per g taken
    const detritusCarbon = 0.4 / 12.011;
    const rate = rates('mineralisation', {
      detritusCarbon,
      oxygen: 0.28,
      waterVolume: 1,
      waterTemperature: 20,
    })['oxidation of detritus carbon']!;
    const uptake = rate * 3600 * 31998;
    expect(uptake).toBeGreaterThan(2.5);
    expect(uptake).toBeLessThan(6);
  });

  it('let submerged plants grow within 0.007 to 0.109 per day where light and carbon are rich', () => {
    // Nielsen & Sand-Jensen 1991: 14 species, 15 °C, 14.4 mol/m2/d (12 h of 333 µmol/m2/s), 3.3 to 3.8 mmol/L DIC
    const lit = rates('submerged-plants', {
      submergedPlants: 1,
      waterArea: 1e6,
      lightOnPlants: 333,
      nitrate: 0.1,
      phosphate: 0.01,
      dissolvedInorganicCarbon: 3.5,
      carbonDioxide: 0.2,
      oxygen: 0.3,
      waterVolume: 1,
      waterTemperature: 15,
    });
    const net =
      DAY *
      (lit['growth of submerged plants on nitrate']! / 2 -
        lit['respiration of submerged plants']! -
        lit['loss of submerged plants']!);
    expect(net).toBeGreaterThan(0.007);
    expect(net).toBeLessThan(0.109);
  });

  it('let algae come to rest at 2 to 25 g/m² under 40 to 100 µmol/m²/s and below the 32 g/m² of bright ponds', () => {
    // estimate for enclosures; bright ponds 32 to 49 g dry/m2 (Azim et al. 2002); 40 % carbon
    const algae = MEDIANS['attached-algae']!;
    // shade of the film itself and the share that meets the surfaces as in underwater-light; found by bisection
    const { algalStock, stockLight } = MEDIANS['surface-cover'] as { algalStock: number; stockLight: number };
    const { algalAttenuation, incidentShare } = MEDIANS['underwater-light']!;
    for (const photons of [40, 100]) {
      const gain = (stock: number): number => {
        const film = algalAttenuation! * stock;
        const light = (photons * incidentShare! * (1 - Math.exp(-film))) / film;
        const lit = (11 / 24) * (light / (light + algae.lightHalf!)) * algae.maximumGrowth!;
        return (
          lit * (1 - (stock / algalStock) * (1 + stockLight / light)) -
          algae.respirationRate! -
          algae.lossRate!
        );
      };
      let [low, high] = [1e-6, algalStock];
      for (let k = 0; k < 60; k += 1) {
        const middle = (low + high) / 2;
        if (gain(middle) > 0) low = middle;
        else high = middle;
      }
      const grams = (low * 12.011) / 0.4;
      expect(grams).toBeGreaterThan(2);
      expect(grams).toBeLessThan(25);
    }
  });
});

describe('what the cycle leaves out', () => {
  it('is told in whole sentences', () => {
    for (const sentence of CYCLE_NOT_MODELLED) expect(sentence).toMatch(/^[A-Z].{20,}\.$/);
    expect(new Set(CYCLE_NOT_MODELLED).size).toBe(CYCLE_NOT_MODELLED.length);
  });
});
