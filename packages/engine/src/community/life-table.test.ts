import { describe, expect, it } from 'vitest';
import { GRAZER } from '../life/life-test-kit.ts';
import { chanceOfDyingOut } from './dying-out.ts';
import { renewalOf } from './euler-lotka.ts';
import { lifeTable } from './life-table.ts';
import { lifeOfMatrix, projectionOf, stepOf } from './projection-matrix.ts';
import { type RearedSpecies, rearAlone } from './rearing-alone.ts';

const grazer: RearedSpecies = {
  id: 'grazer',
  traits: { mating: 'two sexes', brood: 'carried' },
  values: GRAZER,
};

describe('a life table', () => {
  const table = lifeTable(grazer, 20);
  const { renewal, structure, rows } = table;

  it('grows as the whole population does on the same code', () => {
    const rearing = rearAlone(grazer, 20, 1000);
    const count = (): number => {
      const { train } = rearing.population;
      return train.count.slice(0, train.size).reduce((sum, each) => sum + each, 0);
    };
    for (let day = 0; day < 700; day += 1) rearing.pass(true);
    const before = count();
    for (let day = 0; day < 300; day += 1) rearing.pass(true);
    const rate = Math.log(count() / before) / 300;
    // A population merges its cohorts of like size into 24; the table keeps one cohort.
    expect(Math.abs(rate / renewal!.growthRate - 1)).toBeLessThan(0.03);
  });

  it('tells the structure of that population', () => {
    const rearing = rearAlone(grazer, 20, 1000);
    for (let day = 0; day < 700; day += 1) rearing.pass(true);
    const { train } = rearing.population;
    let young = 0;
    let all = 0;
    for (let i = 0; i < train.size; i += 1) {
      all += train.count[i]!;
      if (train.adult[i] === 0) young += train.count[i]!;
    }
    expect(Math.abs(structure!.stable[0]! - young / all)).toBeLessThan(0.03);
    expect(Math.log(structure!.growth)).toBeCloseTo(renewal!.growthRate, 9);
    expect(structure!.worth[1]!).toBeGreaterThan(1);
  });

  it('lets newborns grow by von Bertalanffy and die by their own hazards', () => {
    const day40 = rows[40]!;
    expect(day40.length).toBeCloseTo(7 - 6 * Math.exp(-0.02 * 40), 1);
    // Juveniles to puberty at ln(6/4)/0.02 = 20.3 d, then adults, and old age by a Weibull of shape 3 of 150 d.
    const expected = Math.exp(-0.005 * 20.3 - 0.003 * 19.7 - (40 / 150) ** 3);
    expect(day40.alive).toBeCloseTo(expected, 2);
    expect(table.maturity).toBe(21);
    expect(table.firstYoung).toBeGreaterThan(20.3 + 12);
  });

  it('is slower in the cool and empty where nobody breeds', () => {
    expect(lifeTable(grazer, 15).renewal!.growthRate).toBeLessThan(renewal!.growthRate);
    const cold = lifeTable(grazer, 5);
    expect(cold).toMatchObject({ clutch: 0, lineDiesOut: 1 });
    expect(cold.renewal).toBeUndefined();
    expect(cold.doubling).toBeUndefined();
    expect(() => lifeTable(grazer, 60)).toThrow('not for 60 °C');
  });

  it('has no young where larvae need salt', () => {
    const marine = lifeTable({ ...grazer, traits: { ...grazer.traits, development: 'brackish larvae' } }, 20);
    expect(marine.firstYoung).toBeUndefined();
    expect(marine.clutch).toBeGreaterThan(1);
  });
});

describe('the Euler-Lotka equation', () => {
  it('is solved for a single age, for growth, standstill and decline', () => {
    expect(renewalOf({ ages: [3], births: [8] })).toMatchObject({ netReproduction: 8, generationTime: 3 });
    expect(renewalOf({ ages: [3], births: [8] })!.growthRate).toBeCloseTo(Math.log(8) / 3, 12);
    expect(renewalOf({ ages: [1, 2], births: [0.5, 0.5] })!.growthRate).toBeCloseTo(0, 12);
    const falling = renewalOf({ ages: [1, 4], births: [0.1, 0.2] })!;
    expect(0.1 * Math.exp(-falling.growthRate) + 0.2 * Math.exp(-4 * falling.growthRate)).toBeCloseTo(1, 10);
  });
  it('has no answer without births, and refuses what is no table', () => {
    expect(renewalOf({ ages: [1, 2], births: [0, 0] })).toBeUndefined();
    expect(() => renewalOf({ ages: [2, 1], births: [1, 1] })).toThrow('must rise');
    expect(() => renewalOf({ ages: [1], births: [-1] })).toThrow('not 0 or more');
  });
});

describe('a stage matrix', () => {
  it('splits growth, and waves of a matrix with two eigenvalues of one size never die down', () => {
    // Biennials: lambda^2 = 0.5 * 8, both eigenvalues 2 in size.
    const biennial = [
      [0, 8],
      [0.5, 0],
    ];
    const projection = projectionOf(biennial)!;
    expect(projection.growth).toBeCloseTo(2, 10);
    expect(projection.damping).toBeCloseTo(1, 10);
    expect(projection.stable[0]).toBeCloseTo(0.8, 10);
    expect(projection.worth[1]).toBeCloseTo(4, 10);
    expect(projection.elasticity[0]![1]).toBeCloseTo(0.5, 10);
    expect(stepOf(biennial, [1, 1])).toEqual([8, 0.5]);
    expect(lifeOfMatrix(biennial)).toEqual({ netReproduction: 4, expectancy: 1.5 });
  });
  it('is refused when it is none', () => {
    expect(() => projectionOf([[1, 2]])).toThrow('has 2 elements, not 1');
    expect(() => projectionOf([[-1]])).toThrow('below 0');
    expect(projectionOf([[0]])).toBeUndefined();
    expect(() =>
      lifeOfMatrix([
        [0, 1],
        [0.5, 1],
      ]),
    ).toThrow('for ever');
  });
});

describe('the chance that a line dies out', () => {
  it('is sure without growth and zero for those that never die before they bear', () => {
    expect(chanceOfDyingOut({ alive: [1, 0], births: [0.9] })).toBe(1);
    expect(chanceOfDyingOut({ alive: [1, 0], births: [1] })).toBe(1);
  });
  it('holds death before breeding against a line', () => {
    // Half die young: q = 0.5 + 0.5 exp(-3 (1 - q)).
    const q = chanceOfDyingOut({ alive: [1, 0.5, 0], births: [0, 3] });
    expect(q).toBeCloseTo(0.5 + 0.5 * Math.exp(-3 * (1 - q)), 10);
    expect(q).toBeLessThan(0.75);
    expect(() => chanceOfDyingOut({ alive: [1, 0], births: [0, 1] })).toThrow('one part alive more');
  });
});
