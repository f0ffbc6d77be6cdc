import { analyseWater } from '@shoreglass/contract';
import { DISSOLVED_IDS, type SplitChange, splitChange, type WaterComposition } from '@shoreglass/engine';
import type { ChangeOver } from './messages.ts';

/** Both waters are taken to stand at one temperature [°C]; temper the new one before it goes in. */
const TEMPERED = 20;

/**
 * Replacing part of the pool, in steps those who live there bear.
 * @throws Error in words for people where even small steps are too fast, or the reading cannot be a water
 */
export function changeOver({ plan, from, fraction, to }: ChangeOver): SplitChange {
  const start = from === 'fill' ? plan.water.fill : asRead(from);
  return splitChange(
    plan,
    { composition: start, temperature: TEMPERED },
    { kind: 'water change', fraction, water: { composition: to, temperature: TEMPERED } },
  );
}

/** A pool of which only hardness and alkalinity were read; its other ions are inferred from the charges. */
function asRead({ GH, KH }: { readonly GH: number; readonly KH: number }): WaterComposition {
  const { water, findings } = analyseWater({
    id: 'pool',
    hardness: `${GH} °dGH`,
    alkalinity: `${KH} °dKH`,
  });
  if (!water) throw new Error(findings[0]?.message ?? 'The readings make no water.');
  const { composition } = water;
  return Object.fromEntries(
    DISSOLVED_IDS.map((id) => [id, composition[id] ?? 0]),
  ) as unknown as WaterComposition;
}
