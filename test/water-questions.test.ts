import { loadBundledEnclosure, shelfCarbonates } from '@shoreglass/contract';
import {
  answerHere,
  answerWith,
  type Band,
  type BufferAnswer,
  type BufferOffer,
  type BufferQuestion,
  blended,
  bufferPiece,
  DISSOLVED_IDS,
  type HardscapePiece,
  type Plan,
  runTrial,
  sizeBuffer,
  type WaterComposition,
  withAndWithout,
} from '@shoreglass/engine';
import { beforeAll, describe, expect, test } from 'vitest';
import { FIRST_TO_JUDGE } from '../packages/engine/src/outlook/fresh-members.ts';

const DAYS = 60;
const { plan: demo } = loadBundledEnclosure('beck-bank');

function coral(): BufferOffer {
  const found = shelfCarbonates().find(({ material }) => material === 'crushed-coral');
  if (!found) throw new Error('the library holds crushed coral');
  return found;
}

/** The demo's box with soft water, wood and litter, and nobody in it: little but chemistry, so that runs are quick. */
const soft: Plan = {
  ...demo,
  water: { ...demo.water, fill: blended(demo.water.fill, demo.water.topOff, 0.3) },
  plants: [],
  populations: [],
  routines: demo.routines.filter(({ kind }) => kind === 'top-off'),
  actions: [],
};

const band = (series: 'pH' | 'KH', ends: { low?: number; high?: number }, fromDay = 20): Band => ({
  series,
  ...ends,
  owner: 'a test',
  basis: 'assumed',
  source: 'test',
  fromDay,
});

function ask(plan: Plan, bands: readonly Band[], more: Partial<BufferQuestion> = {}): BufferAnswer {
  const question: BufferQuestion = {
    offers: [coral()],
    days: DAYS,
    probability: 0.75,
    seed: 1,
    bands,
    members: { search: 4, confirm: 8 },
    ...more,
  };
  return answerHere(plan, sizeBuffer(plan, question));
}

describe('more carbonate', () => {
  test('never lowers the least carbonate hardness or pH of any run', () => {
    const least = [0, 0.005, 0.02, 0.1, 0.5].map((mass) =>
      runTrial(soft, {
        change: mass > 0 ? { pieces: [bufferPiece(coral(), mass, 0.002)] } : {},
        days: 40,
        seed: 3,
        members: ['expected', 0, 1],
        series: ['KH', 'pH'],
      }).map(({ series }) => series.map((values) => Math.min(...values))),
    );
    for (let step = 1; step < least.length; step += 1) {
      for (const [member, quantities] of least[step]!.entries()) {
        // A hundredth of a degree and of pH: the accuracy of the cycle, a tenth of the finest test.
        for (const [q, value] of quantities.entries())
          expect(value).toBeGreaterThan(least[step - 1]![member]![q]! - 0.01);
      }
    }
  });
});

describe('facts of the trade, common practice without source', () => {
  const { plan: window } = loadBundledEnclosure('espoo-window');
  const pure = Object.fromEntries(DISSOLVED_IDS.map((id) => [id, 0])) as unknown as WaterComposition;
  const withWood: Plan = {
    ...window,
    water: { ...window.water, fill: pure, topOff: pure },
    hardscape: window.hardscape.filter(({ kind }) => kind === 'wood'),
    plants: [],
    populations: [],
    routines: window.routines.filter(({ kind }) => kind === 'top-off'),
    actions: [],
  };
  const lastPH = (plan: Plan, pieces: readonly HardscapePiece[] = []): number[] =>
    runTrial(plan, {
      change: { pieces },
      days: 42,
      seed: 1,
      members: ['expected', 0, 1, 2],
      series: ['pH'],
    }).map(({ series: [pH] }) => pH?.at(-1) ?? Number.NaN);
  const bare = (plan: Plan): Plan => ({ ...plan, hardscape: [] });

  test('pure water with fresh bog wood sinks below pH 7 within weeks; crushed coral stops that', () => {
    expect(withWood.hardscape.map(({ material }) => material)).toEqual(['bog-wood']);
    // Pure water in a room's air is acid by itself, so the wood is told from the same runs without it.
    const without = lastPH(bare(withWood));
    for (const [run, pH] of lastPH(withWood).entries()) {
      expect(pH).toBeLessThan(7);
      expect(pH).toBeLessThan(without[run]!);
    }
    for (const pH of lastPH(withWood, [bufferPiece(coral(), 0.1, 0.003)])) expect(pH).toBeGreaterThan(7);
  });
});

describe('sizing a buffer', () => {
  let found: BufferAnswer;
  beforeAll(() => {
    found = ask(soft, [band('KH', { low: 2.4 })]);
  }, 60_000);

  test('finds a mass that other members confirm, and tells its share in others again, with its interval', () => {
    expect(found.verdict).toBe('found');
    const option = found.options[found.best ?? -1];
    expect(option?.inBand.runs).toBe(8);
    expect(option?.fresh).toBe(true);
    // Those that confirmed it came to the share asked; that share is kept with the masses tried.
    const confirmed = option?.tried.filter(({ mass, inBand }) => mass === option.mass && inBand.runs === 8);
    expect(Math.max(...(confirmed ?? []).map(({ inBand }) => inBand.share))).toBeGreaterThanOrEqual(0.75);
    // The share told, counted here in the same runs far beyond all that searched and confirmed.
    const fresh = runTrial(soft, {
      change: { pieces: [bufferPiece(coral(), option!.mass, option!.grain)] },
      days: DAYS,
      seed: 1,
      members: Array.from({ length: 8 }, (_, at) => FIRST_TO_JUDGE + at),
      series: ['KH'],
    });
    const held = fresh.filter(
      ({ series: [KH] }) =>
        !KH!.some((_, day) => day >= 22 && KH!.subarray(day - 2, day + 1).every((kh) => kh < 2.4)),
    );
    expect(option?.inBand.share).toBe(held.length / 8);
    expect(found.sentences[0]).toMatch(/% of 8 fresh runs \(true share/);
    expect(option?.inBand.low).toBeLessThan(option?.inBand.share ?? 0);
    expect(option?.monotone).toBe(true);
    expect(option?.left).toBeGreaterThan(0);
    expect(option?.left).toBeLessThan(1);
    expect(found.without.share).toBeLessThan(0.75);
  });

  test('wants twice as much for an enclosure twice as wide with twice of everything', () => {
    const { pump } = soft.devices;
    const wide: Plan = {
      ...soft,
      box: { ...soft.box, width: 2 * soft.box.width },
      hardscape: soft.hardscape.map((piece) => ({
        ...piece,
        mass: 2 * piece.mass,
        volume: 2 * piece.volume,
        contents: Object.fromEntries(
          Object.entries(piece.contents).map(([id, amount]) => [id, 2 * (amount ?? 0)]),
        ),
      })),
      devices: {
        ...soft.devices,
        ...(pump && { pump: { ...pump, flow: 2 * pump.flow, filmSurface: 2 * pump.filmSurface } }),
      },
    };
    const double = ask(wide, [band('KH', { low: 2.4 })]);
    const ratio = (double.options[0]?.mass ?? 0) / (found.options[0]?.mass ?? 1);
    // The search stops when masses are a quarter apart, on both sides.
    expect(ratio).toBeGreaterThan(2 / 1.35);
    expect(ratio).toBeLessThan(2 * 1.35);
  });

  test('goes in by portions where somebody lives, and at once where nobody does yet', () => {
    const [scuds] = demo.populations;
    if (!scuds) throw new Error('the demo holds scuds');
    const livedFrom = (day: number): Plan => ({
      ...soft,
      water: { ...soft.water, fill: soft.water.topOff },
      populations: [scuds],
      actions: [{ kind: 'add animals', population: scuds.id, stage: 'adult', count: 5, day }],
    });
    const portions = (plan: Plan) =>
      ask(plan, [band('KH', { low: 2 }, 6)], { days: 30, members: { search: 2, confirm: 2 } }).options[0]
        ?.portions;
    expect(portions(livedFrom(0))?.length).toBeGreaterThan(1);
    expect(portions(livedFrom(45))).toHaveLength(1);
  });

  test('needs more for a harder task', () => {
    const harder = ask(soft, [band('KH', { low: 2.8 })]);
    expect(harder.options[0]?.mass ?? 0).toBeGreaterThan(found.options[0]?.mass ?? Infinity);
  });

  test('is not needed where the band holds anyway', () => {
    const { verdict, sentences } = ask(soft, [band('KH', { low: 0.2 })]);
    expect(verdict).toBe('not needed');
    expect(sentences[0]).toMatch(/No buffer is needed/);
  });

  test('says no: saturated, since water in balance with carbonate takes up no more', () => {
    const { verdict, options } = ask(soft, [band('KH', { low: 9 })]);
    expect(verdict).toBe('cannot');
    expect(options[0]?.because).toBe('saturated');
    expect(options[0]?.sentence).toMatch(/salts or harder water/);
  });

  test('says no: too late, when the fill itself is below the band', () => {
    const lumps = { ...coral(), grains: [0.1] };
    const { options } = ask(soft, [band('KH', { low: 4 }, 0)], { offers: [lumps] });
    expect(options[0]?.because).toBe('too late');
  });

  test('says no: rises too high for who needs soft water, and names the limit', () => {
    const { options } = ask(soft, [band('KH', { low: 2.4, high: 2.42 })]);
    expect(options[0]?.because).toBe('rises too high');
    expect(options[0]?.sentence).toMatch(/2\.4 °dKH that is the most for a test/);
  });

  test('says no: limits that leave nothing between them', () => {
    const { verdict, sentences } = ask(soft, [band('KH', { low: 5 }), band('KH', { high: 3 })]);
    expect(verdict).toBe('cannot');
    expect(sentences[0]).toMatch(/No buffer can: .* at least 5 °dKH .* at most 3 °dKH/);
  });

  test('refuses what cannot be asked', () => {
    expect(() => ask(soft, [])).toThrow(/nobody .* has a band/);
    expect(() => ask(soft, [band('KH', { low: 2 })], { probability: 1 })).toThrow(/50 % and 99 %/);
    expect(() => ask(soft, [band('KH', { low: 2 })], { days: 0 })).toThrow(/1 to 1500/);
  });
});

describe('with and without each piece', () => {
  test('wood colours the water and never raises pH; the answer is the same however the runs are shared out', async () => {
    const options = { days: 40, seed: 5, members: 6, pieces: ['branch'] };
    const here = answerHere(soft, withAndWithout(soft, options));
    const [branch] = here;
    const course = (id: string) => branch?.courses.find(({ series }) => series === id);
    expect(course('dissolvedOrganicCarbon')?.largest.q05).toBeGreaterThan(0);
    for (const day of [10, 20, 39]) expect(course('pH')?.q95[day]).toBeLessThanOrEqual(0);
    expect(branch?.sentence).toMatch(/^Alder branch: .*colours the water/);
    const elsewhere = await answerWith(withAndWithout(soft, options), async (order) => runTrial(soft, order));
    expect(elsewhere).toEqual(here);
  });
  test('a stone does nothing and a piece that is not there is refused', () => {
    const [stones] = answerHere(
      soft,
      withAndWithout(soft, { days: 5, seed: 1, members: 2, pieces: ['stones'] }),
    );
    expect(stones?.sentence).toMatch(/nothing on pH/);
    expect(() => answerHere(soft, withAndWithout(soft, { days: 5, seed: 1, pieces: ['tree'] }))).toThrow(
      /no piece 'tree'; its pieces are: branch, stones, leaves/,
    );
  });
});
