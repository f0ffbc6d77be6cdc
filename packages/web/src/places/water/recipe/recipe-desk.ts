import type { ShelfWater } from '@shoreglass/contract';
import {
  MOLAR_MASS,
  type Plan,
  type RecipeQuantity,
  type RecipeRequest,
  type RecipeTarget,
} from '@shoreglass/engine';
import { recall, remember } from '../../../app/kept.ts';
import type { Shelf } from '../../../worker/messages.ts';
import type { AmountId } from '../amount/amount-kind.ts';
import { isAmount } from '../amount/read-amount.ts';
import { isWritten, readWritten, type Written, writtenIn } from '../amount/written.ts';
import type { PoolSource, PoolWater } from './pool-now.tsx';

/** A target as it is asked for: what one comes near to, or what is not to be passed. */
export interface TargetSpec {
  readonly id: AmountId & RecipeQuantity;
  readonly asks: 'about' | 'at most';
  /** From the unit the field is read in to mol/m3, eq/m3 or µS/cm. */
  readonly toPlan: number;
}

export const TARGETS: readonly TargetSpec[] = [
  { id: 'GH', asks: 'about', toPlan: 1 },
  { id: 'KH', asks: 'about', toPlan: 1 },
  { id: 'calcium', asks: 'about', toPlan: 1 / MOLAR_MASS.calcium },
  { id: 'magnesium', asks: 'about', toPlan: 1 / MOLAR_MASS.magnesium },
  { id: 'sodium', asks: 'at most', toPlan: 1 / MOLAR_MASS.sodium },
  { id: 'conductivity', asks: 'at most', toPlan: 1 },
];

/** What lies on the recipe desk, as typed; kept on this device for each enclosure. */
export interface RecipeDesk {
  readonly waters: readonly string[];
  readonly salts: readonly string[];
  readonly targets: Readonly<Partial<Record<string, Written>>>;
  readonly volume: Written;
  /** What of that volume stays in the enclosure, and from where it is known what that is. */
  readonly kept?: Written;
  readonly keptFrom?: PoolSource;
  /** Water reports typed here, key by key as in the file. */
  readonly reports: readonly Readonly<Record<string, string>>[];
}

/** Salts one may start with: quick or slow to dissolve, none that burns skin, none sold twice. */
const FIRST_SALTS = ['gypsum', 'epsom-salt', 'calcium-chloride', 'potassium-bicarbonate', 'baking-soda'];

type Units = Readonly<Record<string, string>>;

/** A desk for an enclosure that has none yet: its own fill, pure water, everyday salts, what suits who lives there. */
export function firstDesk(shelf: Shelf, volume: number | undefined, units: Units): RecipeDesk {
  const named = [...new Set([...shelf.fill, 'distilled'])];
  return {
    waters: named.filter((id) => shelf.waters.some((water) => water.id === id)),
    salts: FIRST_SALTS.filter((id) => shelf.salts.some((salt) => salt.id === id)),
    targets: suitedTargets(shelf, units),
    volume: writtenIn('volume', Math.max(1, Math.round(volume ?? 40)), units.volume ?? 'L'),
    reports: [],
  };
}

/** Ordinary hardness where nobody sets a limit [mmol/L, meq/L]: 6 dGH and 4 dKH. */
const USUAL = { GH: 1.07, KH: 1.426 };

/** Targets drawn from those who live there. */
export function suitedTargets({ suited }: Pick<Shelf, 'suited'>, units: Units): RecipeDesk['targets'] {
  const written = (id: 'GH' | 'KH') => {
    const aim = suited.find(({ target }) => target.quantity === id)?.target.aim ?? USUAL[id];
    return writtenIn(id, aim, units[id] ?? '', 2);
  };
  return { GH: written('GH'), KH: written('KH') };
}

const keyOf = (id: string) => `recipe.${id}`;

export function recallDesk(id: string): RecipeDesk | undefined {
  try {
    const kept = JSON.parse(recall(keyOf(id)) ?? 'null') as Partial<RecipeDesk> | null;
    if (!kept || !Array.isArray(kept.waters) || !Array.isArray(kept.salts)) return undefined;
    const { waters, salts, targets = {}, volume, reports = [], keptFrom = 'fill' } = kept;
    const known = Object.entries(targets).filter(([, written]) => isWritten(written));
    return {
      waters,
      salts,
      targets: Object.fromEntries(known),
      volume: isWritten(volume) ? volume : { text: '', unit: 'L' },
      ...(isWritten(kept.kept) && { kept: kept.kept, keptFrom }),
      reports: Array.isArray(reports) ? reports : [],
    };
  } catch {
    return undefined;
  }
}

export function rememberDesk(id: string, desk: RecipeDesk): void {
  remember(keyOf(id), JSON.stringify(desk));
}

interface RequestParts {
  readonly desk: RecipeDesk;
  readonly waters: readonly ShelfWater[];
  readonly shelf: Shelf;
  readonly room: Plan['room'] | undefined;
  /** What is in the enclosure now, once it is known. */
  readonly pool?: PoolWater | undefined;
}

/** What the desk asks for; `waits` says what is missing before anything can be computed. */
export function requestOf(parts: RequestParts): RecipeRequest | { readonly waits: string } {
  const { desk, waters, shelf, room, pool } = parts;
  const volume = readWritten(desk.volume, 'volume');
  if (!isAmount(volume)) return { waits: 'Say how much water is to be made.' };
  const chosen = waters.filter(({ id }) => desk.waters.includes(id));
  if (chosen.length === 0) return { waits: 'Choose at least one water to mix from.' };
  const targets = TARGETS.flatMap(({ id, asks, toPlan }): RecipeTarget[] => {
    const amount = readWritten(desk.targets[id], id);
    if (!isAmount(amount)) return [];
    const value = amount.value * toPlan;
    const limit = amount.limit ?? (asks === 'at most' ? 'high' : undefined);
    return [{ quantity: id, [limit ?? 'aim']: value }];
  });
  const stays = readWritten(desk.kept, 'volume');
  const kept = isAmount(stays) && stays.value > 0 ? stays.value / 1000 : undefined;
  if (kept !== undefined && !pool) return { waits: 'What is in the enclosure now is not known yet.' };
  if (targets.length === 0) return { waits: 'Write at least one target, such as 6 dGH.' };
  return {
    volume: volume.value / 1000,
    waters: chosen,
    salts: shelf.salts.filter(({ id }) => desk.salts.includes(id)),
    targets,
    ...(kept !== undefined && pool && { kept: { ...pool, volume: kept } }),
    temperature: 20,
    air: { carbonDioxide: room?.carbonDioxide ?? 420, pressure: room?.pressure ?? 101_325 },
  };
}

/** A plan value of a target in the keeper's unit of that quantity. */
export function targetInUnit(id: string, value: number): number {
  const spec = TARGETS.find((target) => target.id === id);
  return value / (spec?.toPlan ?? 1);
}
