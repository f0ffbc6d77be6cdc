import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import {
  alkalinityOf,
  convert,
  DISSOLVED_IDS,
  generalHardness,
  geometryOf,
  VARIABLE_IDS,
  VARIABLE_INDEX,
  waterReport,
} from '@shoreglass/engine';
import { library } from '@shoreglass/library';
import { describe, expect, it } from 'vitest';
import { openEnclosure } from '../check/check-enclosure.ts';
import { problemLine } from '../read/problem.ts';
import { ownWater } from './analysis.ts';
import { feedOf } from './care-of.ts';
import { litterContents } from './pieces.ts';
import { blendOf, libraryWater } from './water-of.ts';

const text = readFileSync(join(import.meta.dirname, '..', '..', 'testdata', 'every-part.yaml'), 'utf8');
const planned = (yaml: string) => {
  const { plan, findings } = openEnclosure(yaml, 'every-part.yaml');
  if (!plan) throw new Error(findings.map(problemLine).join('\n'));
  return plan;
};
const plan = planned(text);

describe('a plan', () => {
  it('holds what the file says, in the plan’s units', () => {
    expect(plan.box.length).toBeCloseTo(0.9, 12);
    expect(plan.water.level).toBeCloseTo(0.165, 12);
    expect(plan.room.temperature).toMatchObject({
      mean: 17,
      yearAmplitude: 3,
      peakDay: 206,
      dayAmplitude: 1,
    });
    expect(plan.devices.pump?.flow).toBeCloseTo(180e-3 / 3600, 12);
    expect(plan.devices.lamps[0]).toMatchObject({ onAt: 9, hours: 11, power: 28 });
    expect(plan.routines[0]).toMatchObject({
      kind: 'feed',
      mass: expect.closeTo(1.2e-4, 12),
      everyDays: 3,
      firstDay: 29,
    });
    expect(plan.zones[2]?.layers.map(({ kind }) => kind)).toEqual([
      'false bottom',
      'drainage',
      'mesh',
      'substrate',
    ]);
  });

  it('holds between 30 and 60 litres of water', () => {
    const litres = geometryOf(plan).volumeAt(plan.water.level) * 1000;
    expect(litres).toBeGreaterThan(30);
    expect(litres).toBeLessThan(60);
  });

  it('brings founders of water and land in on their day', () => {
    expect(plan.populations.map(({ id, founders }) => [id, founders.length])).toEqual([
      ['hyalella-azteca', 0],
      ['planorbella-duryi', 0],
      ['porcellio-scaber', 0],
    ]);
    expect(plan.actions.map(({ kind, day }) => [kind, day])).toEqual([
      ['add animals', 28],
      ['add animals', 28],
      ['add animals', 28],
      ['add animals', 42],
      ['add carbonate', 90],
      ['add litter', 150],
      ['remove animals', 200],
      ['remove animals', 200],
      ['water change', 220],
      ['trim', 240],
      ['feed', 250],
      ['top-off', 260],
    ]);
    expect(plan.notModelled.join(' ')).not.toContain('moss');
  });

  it('takes animals out again and again, adults and young apart', () => {
    const line =
      '  - { do: remove-animals, species: planorbella-duryi, adults: 20, juveniles: 10, finds: 30 %, every: 7 d, after: 67 d, until: 200 d }';
    const { routines } = planned(text.replace(/^routines:$/m, `routines:\n${line}`));
    const times = { kind: 'remove animals', everyDays: 7, firstDay: 67, lastDay: 200 };
    const bait = { population: 'planorbella-duryi', finds: 0.3 };
    expect(routines.filter(({ kind }) => kind === 'remove animals')).toEqual([
      { ...times, ...bait, stage: 'adult', count: 20 },
      { ...times, ...bait, stage: 'juvenile', count: 10 },
    ]);
    const stranger = openEnclosure(
      text.replace(/^routines:$/m, `routines:\n${line.replace('planorbella-duryi', 'danio-margaritatus')}`),
      'a.yaml',
    );
    expect(stranger.plan).toBeUndefined();
    expect(stranger.findings.map(({ path }) => path)).toContain('routines[0].species');
  });

  it('has a band for each bound of each inhabitant, in the unit of its series', () => {
    const owners = new Set(plan.bands.map(({ owner }) => owner));
    expect(owners).toContain('Mexican scuds');
    expect(owners).toContain('rough woodlice');
    for (const { low, high, source } of plan.bands) {
      expect(low === undefined && high === undefined).toBe(false);
      expect(source.length).toBeGreaterThan(2);
    }
  });

  it('is the same whatever the units of the file', () => {
    const inches = text
      .replace('length: 90 cm', 'length: 35.433070866141736 in')
      .replace('flow: 180 L/h', 'flow: 47.5509694 gal/h')
      .replace('mean: 17 °C', 'mean: 62.6 °F')
      .replace('season: 3 K', 'season: 5.4 °F');
    const other = planned(inches);
    expect(other.box.length).toBeCloseTo(plan.box.length, 9);
    expect(other.devices.pump?.flow).toBeCloseTo(plan.devices.pump?.flow ?? 0, 9);
    expect(other.room.temperature.mean).toBeCloseTo(17, 9);
    expect(other.room.temperature.yearAmplitude).toBeCloseTo(3, 9);
  });
});

describe('waters', () => {
  it.each(Object.values(library.data.waters))('$id has charges that add up within 5 %', (water) => {
    const { imbalance, surplus, composition } = libraryWater(water);
    expect(imbalance <= 0.05 || Math.abs(surplus) < 0.1).toBe(true);
    expect(alkalinityOf(composition)).toBeGreaterThan(-0.1);
  });

  // The suppliers' own measurements at 25 degC; their analyses leave out silica, iron and traces.
  it.each(Object.values(library.data.waters).filter(({ conductivity }) => conductivity !== undefined))(
    '$id conducts as the supplier measured, within 8 %',
    (water) => {
      const { composition, alkalinity = 0 } = libraryWater(water);
      const values = new Float64Array(VARIABLE_IDS.length);
      for (const id of DISSOLVED_IDS) values[VARIABLE_INDEX[id]] = composition[id];
      values[VARIABLE_INDEX.dissolvedInorganicCarbon] = alkalinity * 1.06;
      values[VARIABLE_INDEX.waterVolume] = 1;
      values[VARIABLE_INDEX.waterTemperature] = 25;
      const measured = water.conductivity?.value ?? Number.NaN;
      expect(Math.abs(waterReport(values).conductivity / measured - 1)).toBeLessThan(0.08);
    },
  );

  it('a blend is mixed by volume', () => {
    const hard = libraryWater(library.water('hard-tap')).composition;
    const mixed = blendOf(
      [
        { water: 'hard-tap', share: 0.25 },
        { water: 'distilled', share: 0.75 },
      ],
      (id) => libraryWater(library.water(id)),
    );
    expect(mixed.calcium).toBeCloseTo(hard.calcium / 4, 12);
  });

  it('hardness and alkalinity alone make a water with both', () => {
    const own = {
      id: 'tap',
      hardness: convert(14, '°dGH', 'mmol/L'),
      alkalinity: convert(10, '°dKH', 'meq/L'),
    };
    const { composition, assumed } = ownWater(own as Parameters<typeof ownWater>[0]);
    expect(convert(generalHardness(composition), 'mmol/L', '°dGH')).toBeCloseTo(14, 9);
    expect(convert(alkalinityOf(composition), 'meq/L', '°dKH')).toBeCloseTo(10, 9);
    expect(assumed).toHaveLength(1);
  });

  it('a stated alkalinity is kept, the difference goes to chloride or sodium', () => {
    const own = {
      id: 'tap',
      calcium: 2.5,
      magnesium: 0.4,
      sodium: 1,
      chloride: 1.2,
      sulfate: 0.5,
      alkalinity: 4.5,
    };
    const { composition, surplus } = ownWater(own as Parameters<typeof ownWater>[0]);
    expect(surplus).toBeCloseTo(0.1, 12);
    expect(alkalinityOf(composition)).toBeCloseTo(4.5, 12);
    expect(composition.chloride).toBeCloseTo(1.3, 12);
  });
});

describe('contents', () => {
  it('of feed: shrimp pellets of 90 % dry matter, 45 % C and 5.76 % N hold 405 and 51.8 g/kg', () => {
    const feed = feedOf('shrimp-pellet', library);
    expect(feed.carbon).toBeCloseTo(405 / 12.011, 3);
    expect(feed.nitrogen).toBeCloseTo(51.84 / 14.007, 3);
  });
  it('of litter: soluble and firm carbon make the whole', () => {
    const oak = library.material('oak-litter');
    if (oak.use !== 'litter') throw new Error('oak leaves are litter');
    const { carbon, leachable } = litterContents(oak, 1);
    expect(carbon + leachable).toBeCloseTo(480 / 12.011, 6);
  });
});
