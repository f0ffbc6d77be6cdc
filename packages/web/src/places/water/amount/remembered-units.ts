import { create } from 'zustand';
import { recall, remember } from '../../../app/kept.ts';
import { AMOUNTS, type AmountId, type AmountKind } from './amount-kind.ts';

interface Units {
  readonly units: Readonly<Record<string, string>>;
  keep(id: AmountId, unit: string): void;
}

const KEY = 'units';

/** The unit in which each quantity was last written on this device. */
export const useUnits = create<Units>((set, get) => ({
  units: recalled(),
  keep(id, unit) {
    if (get().units[id] === unit) return;
    const units = { ...get().units, [id]: unit };
    remember(KEY, JSON.stringify(units));
    set({ units });
  },
}));

/** The unit meant where none is written. */
export function useUnit(id: AmountId): string {
  const kept = useUnits((state) => state.units[id]);
  const kind: AmountKind = AMOUNTS[id];
  return kept !== undefined && kept in kind.from ? kept : kind.usual;
}

function recalled(): Record<string, string> {
  try {
    const kept: unknown = JSON.parse(recall(KEY) ?? '{}');
    if (typeof kept !== 'object' || kept === null) return {};
    return Object.fromEntries(
      Object.entries(kept).filter((entry): entry is [string, string] => typeof entry[1] === 'string'),
    );
  } catch {
    return {};
  }
}
