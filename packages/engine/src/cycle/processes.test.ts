import { describe, expect, it } from 'vitest';
import { checkDerivation, checkProcess } from '../process/process-test-kit.ts';
import { CYCLE_DERIVATIONS, CYCLE_NOT_MODELLED, CYCLE_PROCESSES } from './processes.ts';

describe('the cycle', () => {
  it.each(CYCLE_PROCESSES.map((process) => [process.id, process] as const))(
    '%s keeps the contract',
    (_id, process) => checkProcess(process),
  );
  it.each(CYCLE_DERIVATIONS.map((derivation) => [derivation.id, derivation] as const))(
    '%s keeps the contract',
    (_id, derivation) => checkDerivation(derivation),
  );
});
