import type { LengthUnit } from '@shoreglass/figures';
import { create } from 'zustand';
import { recall, remember } from '../../../app/kept.ts';

interface UnitState {
  readonly unit: LengthUnit;
  choose(unit: LengthUnit): void;
}

/** Centimetres with litres and kilograms, or inches with gallons and pounds; what was chosen last on this device. */
export const useUnit = create<UnitState>((set) => ({
  unit: recall('length-unit') === 'in' ? 'in' : 'cm',
  choose(unit) {
    remember('length-unit', unit);
    set({ unit });
  },
}));
