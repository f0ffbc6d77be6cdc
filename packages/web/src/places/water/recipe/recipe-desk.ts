import type { ShelfWater } from '@shoreglass/contract';
import {
  convert,
  type Plan,
  type RecipeQuantity,
  type RecipeRequest,
  type RecipeTarget,
} from '@shoreglass/engine';
import { recall, remember } from '../../../app/kept.ts';
import type { Shelf } from '../../../worker/messages.ts';
import { type AmountId, type AmountKind, AMOUNTS } from '../amount/amount-kind.ts';
import { isAmount, readAmount } from '../amount/read-amount.ts';

/** A target as it is asked for: what one comes near to, or what is not to be passed. */
export interface TargetSpec {
  readonly id: AmountId & RecipeQuantity;
  readonly asks: 'about' | 'at most';
  /** From the unit the field is read in to mol/m3, eq/m3 or µS/cm. */
  readonly toPlan: number;
}

/** @source iupac-atomic-weights; mg/L of an ion over its molar mass is mmol/L = mol/m3 */
const perMass = (molarMass: number) => 1 / molarMass;

export const TARGETS: readonly TargetSpec[] = [
  { id: 'GH', asks: 'about', toPlan: 1 },
  { id: 'KH', asks: 'about', toPlan: 1 },
  { id: 'calcium', asks: 'about', toPlan: perMass(40.078) },
  { id: 'magnesium', asks: 'about', toPlan: perMass(24.305) },
  { id: 'sodium', asks: 'at most', toPlan: perMass(22.99) },
  { id: 'conductivity', asks: 'at most', toPlan: 1 },
];
export type TargetId = (typeof TARGETS)[number]['id'];

/** What lies on the recipe desk, as typed; kept on this device for each enclosure. */
export interface RecipeDesk {
  readonly waters: readonly string[];
  readonly salts: readonly string[];
  readonly targets: Readonly<Partial<Record<string, string>>>;
  readonly volume: string;
  /** Water reports typed here, key by key as in the file. */
  readonly reports: readonly Readonly<Record<string, string>>[];
}

/** Salts one may start with: quick or slow to dissolve, none that burns skin, none sold twice. */
const FIRST_SALTS = ['gypsum', 'epsom-salt', 'calcium-chloride', 'potassium-bicarbonate', 'baking-soda'];

/** A desk for an enclosure that has none yet: its own fill, pure water, everyday salts, what suits who lives there. */
export function firstDesk(shelf: Shelf, volume: number | undefined): RecipeDesk {
  const named = [...new Set([...shelf.fill, 'distilled'])];
  return {
    waters: named.filter((id) => shelf.waters.some((water) => water.id === id)),
    salts: FIRST_SALTS.filter((id) => shelf.salts.some((salt) => salt.id === id)),
    targets: suitedTargets(shelf),
    volume: `${Math.max(1, Math.round(volume ?? 40))} L`,
    reports: [],
  };
}

const USUAL = { GH: '6 dGH', KH: '4 dKH' };

/** Targets drawn from those who live there; ordinary ones where nobody sets a limit. */
export function suitedTargets({ suited }: Pick<Shelf, 'suited'>): RecipeDesk['targets'] {
  const texts = suited.flatMap(({ target }) => {
    if (target.aim === undefined) return [];
    if (target.quantity === 'GH') return [['GH', `${convert(target.aim, 'mmol/L', '°dGH').toFixed(1)} dGH`]];
    if (target.quantity === 'KH') return [['KH', `${convert(target.aim, 'meq/L', '°dKH').toFixed(1)} dKH`]];
    return [];
  });
  return { ...USUAL, ...Object.fromEntries(texts) };
}

const keyOf = (id: string) => `recipe.${id}`;

export function recallDesk(id: string): RecipeDesk | undefined {
  try {
    const kept = JSON.parse(recall(keyOf(id)) ?? 'null') as Partial<RecipeDesk> | null;
    if (!kept || !Array.isArray(kept.waters) || !Array.isArray(kept.salts)) return undefined;
    const { waters, salts, targets = {}, volume = '', reports = [] } = kept;
    return { waters, salts, targets, volume, reports: Array.isArray(reports) ? reports : [] };
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
  readonly units: Readonly<Record<string, string>>;
  readonly room: Plan['room'] | undefined;
}

/** What the desk asks for; `waits` says what is missing before anything can be computed. */
export function requestOf(parts: RequestParts): RecipeRequest | { readonly waits: string } {
  const { desk, waters, shelf, units, room } = parts;
  const read = (id: AmountId, text: string | undefined) =>
    readAmount(text ?? '', AMOUNTS[id], unitOf(units, id));
  const volume = read('volume', desk.volume);
  if (!isAmount(volume)) return { waits: 'Say how much water is to be made.' };
  const chosen = waters.filter(({ id }) => desk.waters.includes(id));
  if (chosen.length === 0) return { waits: 'Choose at least one water to mix from.' };
  const targets = TARGETS.flatMap(({ id, asks, toPlan }): RecipeTarget[] => {
    const amount = read(id, desk.targets[id]);
    if (!isAmount(amount)) return [];
    const value = amount.value * toPlan;
    const limit = amount.limit ?? (asks === 'at most' ? 'high' : undefined);
    return [{ quantity: id, [limit ?? 'aim']: value }];
  });
  if (targets.length === 0) return { waits: 'Write at least one target, such as 6 dGH.' };
  return {
    volume: volume.value / 1000,
    waters: chosen,
    salts: shelf.salts.filter(({ id }) => desk.salts.includes(id)),
    targets,
    temperature: 20,
    air: { carbonDioxide: room?.carbonDioxide ?? 420, pressure: room?.pressure ?? 101_325 },
  };
}

function unitOf(units: Readonly<Record<string, string>>, id: AmountId): string {
  const kind: AmountKind = AMOUNTS[id];
  const kept = units[id];
  return kept !== undefined && kept in kind.from ? kept : kind.usual;
}

/** A plan value of a target in the keeper's unit of that quantity. */
export function targetInUnit(id: string, value: number): number {
  const spec = TARGETS.find((target) => target.id === id);
  return value / (spec?.toPlan ?? 1);
}
