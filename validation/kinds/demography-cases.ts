import { beetleFigures, stockFigures } from '../demography/cannibals.ts';
import {
  delayFigures,
  extinctionFigures,
  growthFitFigures,
  matrixFromCountsFigures,
  warmthFigures,
} from '../demography/from-counts.ts';
import { dwindlingFigures, intakeFigures, responseFigures } from '../demography/functional-responses.ts';
import { grazerFigures } from '../demography/grazer-and-algae.ts';
import { competitionFigures, quotaFigures } from '../demography/integrated.ts';
import { lifeTableFigures, lineFigures, matrixFigures } from '../demography/matrices.ts';
import { chainFigures, ripeningFigures, smallPopulationFigures } from '../demography/stages-in-time.ts';
import { temperatureFigures } from '../demography/temperature.ts';
import type { Calculation, Check, Expected, Kind } from '../harness/check.ts';
import { Inputs, isRecord } from '../harness/inputs.ts';
import { record, text } from '../harness/read-case.ts';

/** By what a case's topic says; the first that fits takes it. */
const TOPICS: readonly { readonly asks: RegExp; readonly answer: Calculation }[] = [
  { asks: /^stage matrix$|leslie/i, answer: matrixFigures },
  { asks: /stage matrix from a time series/i, answer: matrixFromCountsFigures },
  { asks: /extinction risk/i, answer: extinctionFigures },
  { asks: /logistic growth least squares/i, answer: growthFitFigures },
  { asks: /delay model/i, answer: delayFigures },
  { asks: /degree-days/i, answer: warmthFigures },
  { asks: /euler-lotka/i, answer: lifeTableFigures },
  { asks: /branching/i, answer: lineFigures },
  { asks: /linear chain/i, answer: chainFigures },
  { asks: /stage-structured maturation/i, answer: ripeningFigures },
  { asks: /extinction times/i, answer: smallPopulationFigures },
  { asks: /depletion/i, answer: dwindlingFigures },
  { asks: /michaelis-menten functional response/i, answer: intakeFigures },
  { asks: /functional response type ii/i, answer: responseFigures },
  { asks: /cannibalism map/i, answer: beetleFigures },
  { asks: /ricker/i, answer: stockFigures },
  { asks: /predator-prey/i, answer: grazerFigures },
  { asks: /lotka-volterra competition/i, answer: competitionFigures },
  { asks: /droop chemostat steady/i, answer: quotaFigures },
  { asks: /q10|arrhenius/i, answer: temperatureFigures },
];

const isNumber = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value);

/** A number, a list or a table of numbers as one list; undefined for anything else. */
function numbersOf(value: unknown): number | number[] | undefined {
  if (typeof value === 'boolean') return value ? 1 : 0;
  if (isNumber(value)) return value;
  if (!Array.isArray(value) || value.length === 0) return undefined;
  const flat: unknown[] = value.flat();
  return flat.every(isNumber) ? flat : undefined;
}

/** Every number under a name of its own, groups by 'group.name'; words are left out. */
function flattened(value: unknown, path: string): [string, number | number[]][] {
  const numbers = numbersOf(value);
  if (numbers !== undefined) return [[path, numbers]];
  if (!isRecord(value)) return [];
  return Object.entries(value).flatMap(([key, inner]) => flattened(inner, path ? `${path}.${key}` : key));
}

/** Below this a number expected to be 0 counts as 0. */
const ROUNDING = 1e-12;

function expectedOf(raw: unknown, relative: number): Map<string, Expected> {
  return new Map(
    flattened(record(raw, "'expected'"), '').map(([name, value]) => [
      name,
      { value, unit: '-', absolute: ROUNDING, relative },
    ]),
  );
}

function inputsOf(raw: unknown): Inputs {
  const given = Object.entries(record(raw, "'inputs'")).map(([name, value]) => {
    const numbers = numbersOf(value);
    return [name, numbers === undefined ? value : { value: numbers }] as const;
  });
  return new Inputs(Object.fromEntries(given));
}

/** { items: [{ id, topic, inputs, expected, tolerance_relative, citation }] } */
export const demographyCases: Kind = {
  name: 'demography',
  cases(document) {
    if (!isRecord(document) || !Array.isArray(document.items)) return undefined;
    return document.items.some((raw: unknown) => isRecord(raw) && 'topic' in raw && 'expected' in raw)
      ? document.items
      : undefined;
  },
  read(raw): Check {
    const given = record(raw, 'the case');
    const tolerance = given.tolerance_relative;
    if (!isNumber(tolerance) || tolerance < 0)
      throw new Error("'tolerance_relative' is not a number of 0 or more");
    return {
      id: text(given.id, "'id'"),
      key: text(given.topic, "'topic'"),
      inputs: inputsOf(given.inputs),
      expected: expectedOf(given.expected, tolerance),
      source: typeof given.citation === 'string' ? given.citation : '',
    };
  },
  calculation: (topic) => TOPICS.find(({ asks }) => asks.test(topic))?.answer,
  abscissae: new Set(),
  title: () => '',
};
