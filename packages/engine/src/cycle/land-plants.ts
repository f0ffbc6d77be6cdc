import { exp, expm1 } from '../numerics/elementary.ts';
import { COMPOSITIONS, type Composition } from '../variables/compositions.ts';
import { VARIABLE_INDEX as V } from '../variables/variables.ts';
import { type LandGrowth, landGrowth } from './land-growth.ts';
import { leafMoisture, type Moisture, mossMoisture } from './land-moisture.ts';
import type { LandPlantParameters, MossParameters } from './land-plant-parameters.ts';
import { LAND_PLANT_CAUSES, LAND_PLANT_ENTRIES, type LandLayer, type LandStand } from './land-stand.ts';
import { leafTranspiration } from './leaf-transpiration.ts';
import { meanTransmission } from './underwater-light.ts';

/** Air and ground of a day: mean temperature [degC], humidity [%] and wetness of the ground [0..1]. */
export interface LandDay extends Moisture {
  readonly temperature: number;
}

/** Moss and plants on land, moved on once a day beside the pools that hold them. */
export interface LandPlants {
  readonly stands: readonly LandStand[];
  /** Biomass of each stand [mol C]. */
  readonly carbon: Float64Array;
  /** By stand, what kept it back since the last call of `clearHeldBack`, in the order of the causes, then what it could have grown [mol C]. */
  readonly heldBack: Float64Array;
  clearHeldBack(): void;
  /** Part of the light on the pool that plants on its shore let through [0..1]. */
  readonly lightLeftForWater: number;
  /** Water given off by taller plants on the last day [kg]. */
  readonly transpired: number;
  /** Leaves of taller plants rooted in the ground, area over resistance [m3/s]. */
  leafConductance(): number;
  /** Puts the planted biomass into the pools, times a factor that also holds for full cover. */
  plant(values: Float64Array, factor: number): void;
  /** Lets a day pass. */
  pass(values: Float64Array, day: LandDay): void;
  /** Part of its ground that a stand covers [0..1]. */
  cover(stand: number): number;
  /** Cuts stands of a layer, of one zone when named, to a cover; cuttings become litter on land when left. */
  trim(values: Float64Array, cut: LandCut): void;
}

export interface LandCut {
  readonly layer: LandLayer;
  readonly keepCover: number;
  readonly zone?: string;
  readonly left: boolean;
}

export interface LandPlantSetting {
  readonly stands: readonly LandStand[];
  /** Missing parameters are an error only where a layer grows. */
  readonly moss: () => MossParameters;
  readonly tall: () => LandPlantParameters;
  /** Pool surface that plants on the shore may shade [m2]. */
  readonly poolArea: number;
}

const LAYERS = ['moss', 'tall'] as const;
const POOL = { moss: V.moss, tall: V.landPlants } as const;
const TOUGH = { moss: V.toughMoss, tall: V.toughLandPlants } as const;
const MADE_OF: Readonly<Record<LandLayer, Composition>> = {
  moss: COMPOSITIONS.moss,
  tall: COMPOSITIONS.landPlants,
};
/** Moisture below which a plant dries up, all the faster the drier [1]. @source assumed */
const DRY = 0.3;
const POSSIBLE = LAND_PLANT_CAUSES.length;
const [LIGHT, SHADE, WARMTH, DRYNESS, NUTRIENTS, EATEN] = LAND_PLANT_CAUSES.keys();

function add(values: Float64Array, pool: number, amount: number): void {
  values[pool] = values[pool]! + amount;
}

/** Dead or cut plants fall to the litter of the land. */
function toLitter(values: Float64Array, carbon: number, made: Composition): void {
  add(values, V.landLitterCarbon, carbon);
  add(values, V.landLitterNitrogen, carbon * made.nitrogenPerCarbon);
  add(values, V.landLitterPhosphorus, carbon * made.phosphorusPerCarbon);
}

/** A pool keeps this part whatever is wanted: the stands' takings, rounded one by one, must not add up to more than it. */
const KEPT = 1e-12;
/** Part of a want that a pool meets in a day when all draw on it alike [0..1]. */
const met = (wanted: number, there: number): number =>
  wanted > 0 ? (there > 0 ? ((1 - KEPT) * -expm1(-wanted / there) * there) / wanted : 0) : 1;

/** What a stand would do today if nutrients did not matter. */
interface Plans {
  /** Assimilation less respiration [mol C]; below 0 it lives on itself. */
  readonly gain: Float64Array;
  /** Parts shed and dried up. */
  readonly shed: Float64Array;
  readonly dried: Float64Array;
  /** Part of its ground that its layer covers this morning. */
  readonly covered: Float64Array;
}

class Flora implements LandPlants {
  readonly stands: readonly LandStand[];
  readonly carbon: Float64Array;
  readonly heldBack: Float64Array;
  lightLeftForWater = 1;
  transpired = 0;
  private readonly full: Float64Array;
  private readonly growth: readonly LandGrowth[];
  private readonly moss: MossParameters | undefined;
  private readonly tall: LandPlantParameters | undefined;
  private readonly poolArea: number;
  private readonly neighbours: readonly (readonly number[])[];
  private readonly shaders: readonly (readonly number[])[];
  private readonly plans: Plans;
  private age = 0;

  constructor({ stands, moss, tall, poolArea }: LandPlantSetting) {
    this.stands = stands;
    this.poolArea = poolArea;
    this.moss = stands.some(({ layer }) => layer === 'moss') ? moss() : undefined;
    this.tall = stands.some(({ layer }) => layer === 'tall') ? tall() : undefined;
    this.growth = stands.map((stand) => landGrowth(stand, this.parametersOf(stand)));
    const count = stands.length;
    this.carbon = new Float64Array(count);
    this.full = new Float64Array(count);
    this.heldBack = new Float64Array(count * LAND_PLANT_ENTRIES);
    const inZone = (of: LandStand, layer: LandLayer): number[] =>
      stands.flatMap((each, k) => (each.zone === of.zone && each.layer === layer ? [k] : []));
    this.neighbours = stands.map((stand) => inZone(stand, stand.layer));
    this.shaders = stands.map((stand) => (stand.layer === 'moss' ? inZone(stand, 'tall') : []));
    this.plans = {
      gain: new Float64Array(count),
      shed: new Float64Array(count),
      dried: new Float64Array(count),
      covered: new Float64Array(count),
    };
  }

  private parametersOf({ layer }: LandStand): MossParameters | LandPlantParameters {
    return (layer === 'moss' ? this.moss : this.tall)!;
  }

  plant(values: Float64Array, factor: number): void {
    for (const [k, { area, fullCoverBiomass, cover, layer }] of this.stands.entries()) {
      this.full[k] = factor * area * fullCoverBiomass;
      this.carbon[k] = cover * this.full[k]!;
      add(values, POOL[layer], this.carbon[k]!);
    }
    this.setTough(values);
    this.shadeWater();
  }

  cover(stand: number): number {
    return Math.min(1, this.carbon[stand]! / this.full[stand]!);
  }

  leafConductance(): number {
    const { tall } = this;
    if (!tall) return 0;
    let carbon = 0;
    for (const [k, { layer, offGround }] of this.stands.entries())
      if (layer === 'tall' && !offGround) carbon += this.carbon[k]!;
    return (tall.leafArea * carbon) / tall.leafResistance;
  }

  clearHeldBack(): void {
    this.heldBack.fill(0);
  }

  pass(values: Float64Array, day: LandDay): void {
    this.follow(values);
    for (let k = 0; k < this.stands.length; k += 1) this.planDay(k, day);
    const fed = this.nutrientsMet(values);
    for (let k = 0; k < this.stands.length; k += 1) this.live(values, k, fed);
    this.transpired = this.giveOffWater(day);
    this.age += 1;
    this.gather(values);
    this.shadeWater();
  }

  trim(values: Float64Array, { layer, keepCover, zone, left }: LandCut): void {
    for (const [k, stand] of this.stands.entries()) {
      if (stand.layer !== layer || (zone !== undefined && stand.zone !== zone)) continue;
      const cut = this.carbon[k]! - keepCover * this.full[k]!;
      if (!(cut > 0)) continue;
      this.carbon[k] = this.carbon[k]! - cut;
      if (left) toLitter(values, cut, MADE_OF[layer]);
    }
    this.gather(values);
  }

  /** Carbon of a layer, and what of it animals take [mol C]. */
  private sumOf(layer: LandLayer): { readonly all: number; readonly edible: number } {
    let all = 0;
    let edible = 0;
    for (const [k, stand] of this.stands.entries()) {
      if (stand.layer !== layer) continue;
      all += this.carbon[k]!;
      edible += (stand.edible ?? 1) * this.carbon[k]!;
    }
    return { all, edible };
  }

  /** What animals took from a pool today they took from its stands by what is edible of each. */
  private follow(values: Float64Array): void {
    for (const layer of LAYERS) {
      const { all, edible } = this.sumOf(layer);
      const there = values[POOL[layer]]!;
      if (!(all > 0) || there === all) continue;
      // What bites took beyond the edible, as several meals a day may, they took of all alike.
      const lost = Math.max(0, all - there);
      const bitten = edible > 0 ? Math.min(1, lost / edible) : 0;
      const left = all - bitten * edible;
      const scale = left > 0 ? there / left : 0;
      for (const [k, stand] of this.stands.entries()) {
        if (stand.layer !== layer) continue;
        const before = this.carbon[k]!;
        this.carbon[k] = before * (1 - bitten * (stand.edible ?? 1)) * scale;
        this.hold(k, EATEN!, before - this.carbon[k]!);
      }
    }
  }

  private setTough(values: Float64Array): void {
    for (const layer of LAYERS) {
      const { all, edible } = this.sumOf(layer);
      values[TOUGH[layer]] = all > 0 ? 1 - edible / all : 0;
    }
  }

  private gather(values: Float64Array): void {
    values[V.moss] = 0;
    values[V.landPlants] = 0;
    for (const [k, { layer }] of this.stands.entries()) add(values, POOL[layer], this.carbon[k]!);
    this.setTough(values);
  }

  /** Light left by the taller plants of the zone. */
  private shadeOn(k: number): number {
    const { tall } = this;
    if (!tall) return 1;
    let leaves = 0;
    for (const other of this.shaders[k]!) leaves += this.carbon[other]! / this.stands[other]!.area;
    return leaves > 0 ? exp(-tall.attenuation * leaves) : 1;
  }

  /** Mean over the layer of a zone of what its shoots make, over what sparse ones make. */
  private thickness(k: number, attenuation: number): number {
    let leaves = 0;
    for (const other of this.neighbours[k]!) leaves += this.carbon[other]! / this.stands[other]!.area;
    return meanTransmission(attenuation * leaves);
  }

  private moistureOf(stand: LandStand, day: LandDay): number {
    return stand.layer === 'moss'
      ? mossMoisture(stand, this.moss!, day)
      : leafMoisture(stand, this.tall!, day);
  }

  private planDay(k: number, day: LandDay): void {
    const { gain, shed, dried, covered } = this.plans;
    const stand = this.stands[k]!;
    const growth = this.growth[k]!;
    const { respiredShare, dryingRate, attenuation } = this.parametersOf(stand);
    const carbon = this.carbon[k]!;
    const moisture = this.moistureOf(stand, day);
    const open = growth.byLight(stand.light);
    const lit = growth.byLight(stand.light * this.shadeOn(k));
    const warm = growth.warmth(day.temperature);
    const settled = !(stand.fragments && this.moss && this.age < this.moss.settlingTime);
    const best = settled ? growth.best * carbon * this.thickness(k, attenuation) : 0;
    // Dry moss rests: it neither grows nor respires.
    const pace = (stand.layer === 'moss' ? moisture : 1) * growth.upkeepWarmth(day.temperature);
    const upkeep = settled ? growth.upkeep * pace : 0;
    const dies = dryingRate * Math.max(0, 1 - moisture / DRY);
    const respired = respiredShare * upkeep * carbon;
    gain[k] = best * lit * warm * moisture - respired;
    shed[k] = (1 - respiredShare) * upkeep;
    dried[k] = dies;
    covered[k] = 0;
    for (const other of this.neighbours[k]!) covered[k] = covered[k]! + this.cover(other);
    this.hold(k, POSSIBLE, best);
    this.hold(k, LIGHT!, best * (1 - Math.min(1, open)));
    this.hold(k, SHADE!, best * (Math.min(1, open) - Math.min(1, lit)));
    this.hold(k, WARMTH!, best * Math.min(1, lit) * (1 - Math.min(1, warm)));
    this.hold(k, DRYNESS!, best * lit * warm * (1 - moisture) + carbon * -expm1(-dies));
  }

  private hold(k: number, cause: number, amount: number): void {
    add(this.heldBack, k * LAND_PLANT_ENTRIES + cause, amount);
  }

  /** Part of what all stands want of nitrogen and phosphorus, the scarcer of both, that the soil gives today. */
  private nutrientsMet(values: Float64Array): number {
    let nitrogen = 0;
    let phosphorus = 0;
    for (const [k, { layer }] of this.stands.entries()) {
      const gain = Math.max(0, this.plans.gain[k]!);
      nitrogen += gain * MADE_OF[layer].nitrogenPerCarbon;
      phosphorus += gain * MADE_OF[layer].phosphorusPerCarbon;
    }
    return Math.min(
      met(nitrogen, values[V.soilMineralNitrogen]!),
      met(phosphorus, values[V.soilMineralPhosphorus]!),
    );
  }

  private live(values: Float64Array, k: number, fed: number): void {
    const { layer } = this.stands[k]!;
    const made = MADE_OF[layer];
    const before = this.carbon[k]!;
    const wanted = this.plans.gain[k]!;
    // Living on itself never takes all.
    const gain = wanted > 0 ? wanted * fed : before > 0 ? before * expm1(wanted / before) : 0;
    if (wanted > 0) this.hold(k, NUTRIENTS!, wanted - gain);
    if (gain > 0) add(values, V.airCarbonTaken, gain);
    else add(values, V.givenOffCarbon, -gain);
    add(values, V.soilMineralNitrogen, -gain * made.nitrogenPerCarbon);
    add(values, V.soilMineralPhosphorus, -gain * made.phosphorusPerCarbon);
    const lost = before * -expm1(-this.plans.shed[k]! - this.plans.dried[k]!);
    // On full ground what grows above what is shed pushes old shoots out.
    const crowded = Math.max(0, gain + before * expm1(-this.plans.shed[k]!)) * this.plans.covered[k]!;
    const fallen = Math.min(before + Math.min(0, gain), lost + crowded);
    this.carbon[k] = before + gain - fallen;
    toLitter(values, fallen, made);
    // What is shed, not what dries up, gives half of its nutrients back first.
    const shed = lost > 0 ? this.plans.shed[k]! / (this.plans.shed[k]! + this.plans.dried[k]!) : 0;
    const back = this.parametersOf(this.stands[k]!).resorbed * Math.min(fallen, lost * shed + crowded);
    add(values, V.landLitterNitrogen, -back * made.nitrogenPerCarbon);
    add(values, V.landLitterPhosphorus, -back * made.phosphorusPerCarbon);
    add(values, V.soilMineralNitrogen, back * made.nitrogenPerCarbon);
    add(values, V.soilMineralPhosphorus, back * made.phosphorusPerCarbon);
  }

  private giveOffWater({ temperature, humidity }: LandDay): number {
    const { tall } = this;
    if (!tall) return 0;
    let mass = 0;
    for (const [k, { layer, hoursLit }] of this.stands.entries()) {
      if (layer !== 'tall') continue;
      const area = tall.leafArea * this.carbon[k]!;
      mass += area * leafTranspiration({ temperature, humidity, hoursLit, resistance: tall.leafResistance });
    }
    return mass;
  }

  private shadeWater(): void {
    const { tall, poolArea } = this;
    if (!tall || !(poolArea > 0)) return;
    let kept = 0;
    for (const [k, { layer, shore, area }] of this.stands.entries()) {
      if (layer !== 'tall' || !(shore > 0)) continue;
      const dark = -expm1((-tall.attenuation * this.full[k]!) / area);
      kept += tall.overhang * shore * this.cover(k) * dark;
    }
    this.lightLeftForWater = 1 - Math.min(1, kept / poolArea);
  }
}

/**
 * Moss and plants on land. A day of a stand of carbon B, with assimilation best light warmth moisture (`landGrowth`),
 * respiration and shedding:
 *   gain = (assimilation - respiration) as far as the soil's mineral nitrogen and phosphorus allow; carbon from the air;
 *   loss = shed + dried up + crowding (what is shed and crowded out leaves part of its nutrients to the soil), crowding = (gain - shed) times the covered part of its ground, so that cover
 *   rises along a logistic curve to 1 and what grows beyond falls to the litter of the land.
 * Shoots deep in a layer make less, in proportion to the light there: assimilation takes the mean transmission of the
 * layer (1 - e^-tau)/tau. Moss lies under the taller plants of its zone: its light is cut by exp(-k leaves). Dry moss rests, neither growing nor
 * respiring; what is drier than a third of wet dies by the day. Without light plants live on themselves and their
 * nutrients return to the soil. Taller plants on a shore take the light of the water they hang over.
 * @param setting the stands, parameters of both layers, and the pool's surface
 * @throws RangeError as `landGrowth` does
 * @validity daily means; all land shares one soil; no nitrogen from mist or air; roots, leaves and stems are one
 * @source monod-1949 (light), verhulst-1838 (crowding), kirk-2011 (shade), tobias-niinemets-2010 (shoots acclimate to the
 *   light within a mat); routes derived, see docs/science/land-plants.md
 */
export function createLandPlants(setting: LandPlantSetting): LandPlants {
  return new Flora(setting);
}
