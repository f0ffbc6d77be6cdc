import type { Budget, BufferAnswer, ChangeLimit, PieceEffect, SplitChange } from '@shoreglass/engine';
import { expectTypeOf, it } from 'vitest';
import type { WaterDocument } from './water-document.ts';

it('the water document carries what the engine answers, both ways', () => {
  expectTypeOf<BufferAnswer>().toExtend<NonNullable<WaterDocument['buffer']>>();
  expectTypeOf<NonNullable<WaterDocument['buffer']>>().toExtend<BufferAnswer>();
  expectTypeOf<SplitChange>().toExtend<NonNullable<WaterDocument['change']>>();
  expectTypeOf<NonNullable<WaterDocument['change']>>().toExtend<SplitChange>();
  expectTypeOf<PieceEffect>().toExtend<WaterDocument['pieces'][number]>();
  expectTypeOf<ChangeLimit>().toExtend<WaterDocument['changeLimits'][number]>();
  expectTypeOf<Budget>().toExtend<WaterDocument['budgets'][number]>();
});
