import { describe, expect, it } from 'vitest';
import { listed } from '../process/contract.ts';
import { changesByState, checkProcess, ratesByName } from '../process/process-test-kit.ts';
import { EATEN_BY_FOOD, grazing } from './grazing.ts';

const process = listed(grazing);

describe('grazing', () => {
  it('keeps the contract', () => checkProcess(process));

  it('names reactions that exist, for every food', () => {
    const names = new Set(grazing.prepare({}, { index: () => 0 }).reactions.map(({ name }) => name));
    const own = Object.values(EATEN_BY_FOOD).filter((food) => (food.process ?? 'grazing') === 'grazing');
    const listedNames = own.flatMap(({ carbon, nitrogen, phosphorus, alongside }) =>
      [carbon, nitrogen, phosphorus, alongside?.carbon].filter((name) => name !== undefined),
    );
    expect(new Set(listedNames)).toEqual(names);
  });

  it('clears a food at the clearance rate and no other', () => {
    const rates = ratesByName(process, {}, { grazingOnFeed: 1e-4, feedCarbon: 2, litterCarbon: 3 });
    expect(rates['feed carbon eaten']).toBeCloseTo(2e-4, 18);
    expect(rates['litter carbon eaten']).toBe(0);
  });

  it('hands over carbon, nitrogen and phosphorus of algae in their composition', () => {
    // Redfield 106:16:1
    const change = changesByState(process, {}, { grazingOnAlgae: 1, attachedAlgae: 106 });
    expect(change.eatenCarbon).toBeCloseTo(106, 12);
    expect(change.eatenNitrogen).toBeCloseTo(16, 12);
    expect(change.eatenPhosphorus).toBeCloseTo(1, 12);
  });
});
