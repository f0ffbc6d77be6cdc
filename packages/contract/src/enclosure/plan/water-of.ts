import {
  alkalinityOf,
  DISSOLVED_IDS,
  MOLAR_MASS,
  toPlanUnit,
  type WaterComposition,
} from '@shoreglass/engine';
import type { Library, Water } from '@shoreglass/library';
import type { EnclosureContent } from '../schema/enclosure.ts';
import { type Blend, concentrationOf, type OwnWater } from '../schema/water.ts';

/** A water as the analysis gives it, and as it is used: with charges that add up to the stated alkalinity. */
export interface Analysed {
  readonly name: string;
  readonly composition: WaterComposition;
  /** Stated alkalinity [eq/m3]. */
  readonly alkalinity?: number;
  /** Positive charges less negative ones, the stated alkalinity among these [eq/m3]. */
  readonly surplus: number;
  /** Size of the surplus as a share of all charges [0..1]. */
  readonly imbalance: number;
  /** What had to be assumed, one sentence each. */
  readonly assumed: readonly string[];
}

const NONE = Object.fromEntries(DISSOLVED_IDS.map((id) => [id, 0])) as unknown as WaterComposition;

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

function analysed(name: string, ions: WaterComposition, alkalinity: number | undefined): Analysed {
  if (alkalinity === undefined) return { name, composition: ions, surplus: 0, imbalance: 0, assumed: [] };
  const surplus = alkalinityOf(ions) - alkalinity;
  const all = chargesOf(ions) + Math.abs(alkalinity);
  return {
    name,
    composition: closed(ions, surplus),
    alkalinity,
    surplus,
    imbalance: all > 0 ? Math.abs(surplus) / all : 0,
    assumed: [],
  };
}

/** Calcium share of the hardness where only the hardness is known. @source assumed: usual of limestone waters */
const CALCIUM_SHARE = 0.8;

/** Ions from hardness and alkalinity alone: what the charges leave open is chloride and sulfate, or sodium. */
function fromHardness(own: OwnWater, hardness: number, alkalinity: number): Analysed {
  const name = own.name ?? own.id;
  const given = ionsOf(own);
  const ions = { ...given, calcium: CALCIUM_SHARE * hardness, magnesium: (1 - CALCIUM_SHARE) * hardness };
  const open = alkalinityOf(ions) - alkalinity;
  const composition =
    open > 0
      ? { ...ions, chloride: ions.chloride + open / 2, sulfate: ions.sulfate + open / 4 }
      : { ...ions, sodium: ions.sodium - open };
  return {
    name,
    composition,
    alkalinity,
    surplus: 0,
    imbalance: 0,
    assumed: [
      `${name} is known by hardness and alkalinity only: four fifths of the hardness are taken as calcium, and the rest of its ions as ${open > 0 ? 'chloride and sulfate in equal charges' : 'sodium'}.`,
    ],
  };
}

function ionsOf(own: OwnWater): WaterComposition {
  const { 'organic-carbon': dissolvedOrganicCarbon } = own;
  return Object.fromEntries(
    DISSOLVED_IDS.map((id) => [
      id,
      (id === 'dissolvedOrganicCarbon' ? dissolvedOrganicCarbon : own[id]) ?? 0,
    ]),
  ) as unknown as WaterComposition;
}

/** Alkalinity an analysis states, as such or as bicarbonate [eq/m3]. */
export function statedAlkalinity({ alkalinity, bicarbonate }: OwnWater): number | undefined {
  if (alkalinity !== undefined) return alkalinity;
  return bicarbonate === undefined ? undefined : (bicarbonate * 1000) / MOLAR_MASS.bicarbonate;
}

/** A water of the keeper's own file. */
export function ownWater(own: OwnWater): Analysed {
  const alkalinity = statedAlkalinity(own);
  const knowsIons = own.calcium !== undefined || own.magnesium !== undefined;
  if (!knowsIons && own.hardness !== undefined && alkalinity !== undefined)
    return fromHardness(own, own.hardness, alkalinity);
  return analysed(own.name ?? own.id, ionsOf(own), alkalinity);
}

/** A water of the library. @throws Error when a concentration is in a unit that does not measure it. */
export function libraryWater(water: Water): Analysed {
  const ions = Object.fromEntries(
    DISSOLVED_IDS.map((id) => {
      const { value, unit } = water.ions[id];
      const concentration = concentrationOf(id, value, unit);
      if (concentration === undefined) throw new Error(`${water.id}: ${unit} does not measure ${id}`);
      return [id, concentration];
    }),
  ) as unknown as WaterComposition;
  const { alkalinity } = water;
  return analysed(
    water.name,
    ions,
    alkalinity && toPlanUnit(alkalinity.value, alkalinity.unit, 'charge concentration'),
  );
}

/** Finds waters by name: the file's own first, then the library's. */
export function waterFinder(content: EnclosureContent, library: Library): (id: string) => Analysed {
  const own = new Map((content.waters ?? []).map((water) => [water.id, water]));
  return (id) => {
    const found = own.get(id);
    return found ? ownWater(found) : libraryWater(library.water(id));
  };
}

/** A blend mixed by volume [mol/m3]; shares are taken relative to their sum. */
export function blendOf(blend: Blend, find: (id: string) => Analysed): WaterComposition {
  if (typeof blend === 'string') return find(blend).composition;
  const total = blend.reduce((sum, { share }) => sum + share, 0);
  return blend.reduce<WaterComposition>((mixed, { water, share }) => {
    const { composition } = find(water);
    return Object.fromEntries(
      DISSOLVED_IDS.map((id) => [id, mixed[id] + (share / total) * composition[id]]),
    ) as unknown as WaterComposition;
  }, NONE);
}
