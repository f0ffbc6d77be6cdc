import { expect, test } from 'vitest';
import { readRun, USUAL_RUN } from './run-choice.ts';

test('a remembered choice is read back; what is missing, broken or out of range is the usual', () => {
  expect(readRun(undefined)).toEqual(USUAL_RUN);
  expect(readRun('{"days":500,"members":50,"seed":7}')).toEqual({ days: 500, members: 50, seed: 7 });
  expect(readRun('{"days":99,"members":50.5,"seed":"1"}')).toEqual(USUAL_RUN);
  expect(readRun('no')).toEqual(USUAL_RUN);
  expect(readRun('null')).toEqual(USUAL_RUN);
});
