import {
  alkalinityOf,
  DISSOLVED_IDS,
  type DissolvedId,
  MOLAR_MASS,
  nameList,
  type WaterComposition,
} from '@shoreglass/engine';
import type { OwnWater } from '../schema/water.ts';

/** A water as the analysis gives it, and as it is used: with charges that add up to the stated alkalinity. */
export interface Analysed {
  readonly name: string;
  readonly origin: 'pure' | 'rain' | 'tap';
  readonly composition: WaterComposition;
  /** Stated alkalinity [eq/m3]. */
  readonly alkalinity?: number;
  /** Positive charges less negative ones, the stated alkalinity among these [eq/m3]; what was inferred left out. */
  readonly surplus: number;
  /** Size of the surplus as a share of all charges [0..1]. */
  readonly imbalance: number;
  /** What had to be assumed, one sentence each. */
  readonly assumed: readonly string[];
}

/** Sum of all positive and negative charges but those of the alkalinity [eq/m3]. */
function chargesOf(w: WaterComposition): number {
  const positive = 2 * (w.calcium + w.magnesium) + w.sodium + w.potassium + w.ammonium;
  const negative = w.chloride + 2 * w.sulfate + w.nitrate + w.nitrite + w.phosphate;
  return positive + negative;
}

/**
 * The charges closed on the stated alkalinity: a surplus of cations is taken to be missing chloride, a lack of them
 * missing sodium, the ions of which an analysis is least certain and on which nothing here depends.
 */
function closed(composition: WaterComposition, surplus: number): WaterComposition {
  return surplus > 0
    ? { ...composition, chloride: composition.chloride + surplus }
    : { ...composition, sodium: composition.sodium - surplus };
}

/** What every analysis becomes, whoever made it. */
export interface Stated {
  readonly name: string;
  readonly origin: Analysed['origin'];
  readonly ions: WaterComposition;
  readonly alkalinity: number | undefined;
  readonly assumed?: readonly string[];
}

/** An analysis with its charges closed, and how far they were apart. */
export function analysed({ name, origin, ions, alkalinity, assumed = [] }: Stated): Analysed {
  if (alkalinity === undefined) return { name, origin, composition: ions, surplus: 0, imbalance: 0, assumed };
  const surplus = alkalinityOf(ions) - alkalinity;
  const all = chargesOf(ions) + Math.abs(alkalinity);
  return {
    name,
    origin,
    composition: closed(ions, surplus),
    alkalinity,
    surplus,
    imbalance: all > 0 ? Math.abs(surplus) / all : 0,
    assumed,
  };
}

/** Calcium share of the hardness where only the hardness is known. @source assumed: usual of limestone waters */
const CALCIUM_SHARE = 0.8;

function ionsOf(own: OwnWater): WaterComposition {
  const { 'organic-carbon': dissolvedOrganicCarbon, copper } = own;
  const ions = Object.fromEntries(
    DISSOLVED_IDS.map((id) => [
      id,
      (id === 'dissolvedOrganicCarbon' ? dissolvedOrganicCarbon : own[id]) ?? 0,
    ]),
  ) as unknown as WaterComposition;
  return copper ? { ...ions, copper: (copper * 1000) / MOLAR_MASS.copper } : ions;
}

/** Alkalinity an analysis states, as such or as bicarbonate [eq/m3]. */
export function statedAlkalinity({ alkalinity, bicarbonate }: OwnWater): number | undefined {
  if (alkalinity !== undefined) return alkalinity;
  return bicarbonate === undefined ? undefined : (bicarbonate * 1000) / MOLAR_MASS.bicarbonate;
}

/** Whether calcium and magnesium can be told: both, or one of them, or the hardness. */
export function knowsHardness({ calcium, magnesium, hardness }: OwnWater): boolean {
  return calcium !== undefined || magnesium !== undefined || hardness !== undefined;
}

/** Calcium and magnesium, what is missing of them from the hardness; and what was assumed. */
function hardnessIons(own: OwnWater, name: string) {
  const { calcium, magnesium, hardness } = own;
  if (calcium !== undefined && magnesium !== undefined) return { calcium, magnesium, assumed: [] };
  if (hardness === undefined) return { calcium: calcium ?? 0, magnesium: magnesium ?? 0, assumed: [] };
  if (calcium !== undefined)
    return {
      calcium,
      magnesium: Math.max(0, hardness - calcium),
      assumed: [`The magnesium of ${name} is its hardness less its calcium.`],
    };
  if (magnesium !== undefined)
    return {
      calcium: Math.max(0, hardness - magnesium),
      magnesium,
      assumed: [`The calcium of ${name} is its hardness less its magnesium.`],
    };
  return {
    calcium: CALCIUM_SHARE * hardness,
    magnesium: (1 - CALCIUM_SHARE) * hardness,
    assumed: [`Four fifths of the hardness of ${name} are taken as calcium, the rest as magnesium.`],
  };
}

const MAIN_IONS = ['sodium', 'potassium', 'chloride', 'sulfate'] as const;
const massOf = (id: (typeof MAIN_IONS)[number], amount: number): string =>
  `${(amount * MOLAR_MASS[id]).toFixed(1)} mg/L of ${id}`;

/**
 * Most potassium that is inferred [mol/m3]: 20 mg/L; drinking water rarely holds 10, so that what lacks beyond it is a
 * figure or a unit that is wrong. @source assumed; common practice, no source
 */
const MOST_POTASSIUM = 0.5;

/**
 * The main ions an analysis does not state, from what the charges leave open: anions that are lacking are chloride and
 * sulfate in equal charges, or the one that is not stated; cations that are lacking are sodium, or a little potassium where
 * sodium is stated. What is stated is not touched.
 */
function inferred(own: OwnWater, ions: WaterComposition, alkalinity: number) {
  const open = alkalinityOf(ions) - alkalinity;
  const unknown = (id: DissolvedId) => own[id as 'sodium'] === undefined;
  const added: Partial<Record<(typeof MAIN_IONS)[number], number>> = {};
  if (open > 0) {
    const both = unknown('chloride') && unknown('sulfate');
    if (unknown('chloride')) added.chloride = both ? open / 2 : open;
    if (unknown('sulfate')) added.sulfate = both ? open / 4 : open / 2;
  } else if (open < 0 && unknown('sodium')) added.sodium = -open;
  else if (open < 0 && unknown('potassium')) added.potassium = Math.min(-open, MOST_POTASSIUM);
  return added;
}

function missingIons(own: OwnWater): string[] {
  return MAIN_IONS.filter((id) => own[id] === undefined);
}

/** A water of the keeper's own file, with what it does not state inferred from hardness, alkalinity and charges. */
export function ownWater(own: OwnWater): Analysed {
  const name = own.name ?? own.id;
  const origin = own.origin ?? 'tap';
  const { assumed, ...hardness } = hardnessIons(own, name);
  const ions = { ...ionsOf(own), ...hardness };
  const alkalinity = statedAlkalinity(own);
  const missing = missingIons(own);
  if (alkalinity === undefined) {
    const anions = missing.filter((id) => id === 'chloride' || id === 'sulfate');
    const taken =
      anions.length > 0 && alkalinityOf(ions) > 0.05
        ? [
            `${name} states neither its alkalinity nor its ${nameList(anions)}: all its positive ions leave over is taken as alkalinity, which may be too much.`,
          ]
        : [];
    return analysed({ name, origin, ions, alkalinity, assumed: [...assumed, ...taken] });
  }
  const added = inferred(own, ions, alkalinity);
  const filled = Object.entries(added) as [(typeof MAIN_IONS)[number], number][];
  const sentence =
    filled.length > 0
      ? [
          `${name} does not state ${nameList(missing)}; from its charges it is taken to hold ${nameList(filled.map(([id, amount]) => massOf(id, amount)))}.`,
        ]
      : [];
  const whole: Record<DissolvedId, number> & Pick<WaterComposition, 'copper'> = { ...ions };
  for (const [id, amount] of filled) whole[id] += amount;
  const said = [...assumed, ...sentence].join(' ');
  return analysed({ name, origin, ions: whole, alkalinity, assumed: said === '' ? [] : [said] });
}
