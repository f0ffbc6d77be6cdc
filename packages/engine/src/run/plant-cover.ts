import { outlineArea } from '../geometry/ground-surface.ts';
import type { Plan, Planting, Zone } from '../plan/plan.ts';

/** The pool that holds each group of plants that feeds from the water. */
export const PLANT_POOLS = {
  submerged: 'submergedPlants',
  floating: 'floatingPlants',
  emersed: 'emersedPlants',
} as const;
export type RootedInWater = keyof typeof PLANT_POOLS;
export type PlantPool = (typeof PLANT_POOLS)[RootedInWater];

type Ground = Pick<Plan, 'box' | 'zones'>;
type Planted = Pick<Plan, 'box' | 'zones' | 'plants'>;

const isWet = ({ kind }: Pick<Zone, 'kind'>): boolean =>
  kind === 'pool' || kind === 'margin' || kind === 'stream';

/** Plan area of a zone [m2]. `derived`. */
export function planArea({ box }: Ground, { from, to, outline }: Zone): number {
  return outline ? outlineArea(outline) : (to - from) * box.width;
}

/** Plan area of the pool zones [m2]. `derived`. */
export function poolArea(plan: Ground): number {
  return plan.zones
    .filter(({ kind }) => kind === 'pool')
    .reduce((area, zone) => area + planArea(plan, zone), 0);
}

/** True when a planting feeds from the pool's water: under it, on it, or rooted where its water stands in the ground. */
export function feedsFromWater(
  planting: Pick<Planting, 'group' | 'zone'>,
  zones: readonly Pick<Zone, 'id' | 'kind'>[],
): boolean {
  if (planting.group === 'submerged' || planting.group === 'floating') return true;
  const zone = zones.find(({ id }) => id === planting.zone);
  return planting.group === 'emersed' && zone !== undefined && isWet(zone);
}

/**
 * True when a planting grows by the soil and air of the land: moss, plants of the land, and plants of the margin set in
 * dry ground; not those at the bottom of a pool.
 */
export function growsOnLand(
  planting: Pick<Planting, 'group' | 'zone'>,
  zones: readonly Pick<Zone, 'id' | 'kind'>[],
): boolean {
  const zone = zones.find(({ id }) => id === planting.zone);
  if (zone === undefined || zone.kind === 'pool') return false;
  return (
    planting.group === 'moss' ||
    planting.group === 'land' ||
    (planting.group === 'emersed' && !feedsFromWater(planting, zones))
  );
}

function plantingsOf(plan: Planted, group: RootedInWater): Planting[] {
  return plan.plants.filter((planting) => planting.group === group && feedsFromWater(planting, plan.zones));
}

/** Ground that plants of a group can fill [m2]: the pool, or the wet zones planted with those above the water. */
function groundOf(plan: Planted, group: RootedInWater): number {
  if (group !== 'emersed') return poolArea(plan);
  const planted = new Set(plantingsOf(plan, group).map(({ zone }) => zone));
  return plan.zones
    .filter(({ id }) => planted.has(id))
    .reduce((area, zone) => area + planArea(plan, zone), 0);
}

/** Wet ground planted with plants that stand above the water [m2]. `derived`. */
export function wetPlantGround(plan: Planted): number {
  return groundOf(plan, 'emersed');
}

/** Biomass of a planting of a group on the first day [mol C]: full cover times cover times ground. */
function biomassOf(
  plan: Planted,
  group: RootedInWater,
  { fullCoverBiomass, cover, zone: id }: Planting,
): number {
  const zone = plan.zones.find((each) => each.id === id);
  const area = group === 'emersed' && zone ? planArea(plan, zone) : poolArea(plan);
  return fullCoverBiomass * area * cover;
}

/** Biomass of a group on the first day [mol C]: full cover times cover times ground, summed. `derived`. */
export function plantedBiomass(plan: Planted, group: RootedInWater): number {
  return plantingsOf(plan, group).reduce((sum, planting) => sum + biomassOf(plan, group, planting), 0);
}

/** Mean of a trait over the plantings of a group by biomass on the first day; 0 without any. `derived`. */
export function meanOfPlantings(
  plan: Planted,
  group: RootedInWater,
  trait: (planting: Planting) => number,
): number {
  let [all, sum] = [0, 0];
  for (const planting of plantingsOf(plan, group)) {
    const biomass = biomassOf(plan, group, planting);
    all += biomass;
    sum += biomass * trait(planting);
  }
  return all > 0 ? sum / all : 0;
}

/** Share of the submerged plants that use bicarbonate, by biomass on the first day [0..1]; 0 without any. `derived`. */
export function bicarbonateUsers(plan: Planted): number {
  return meanOfPlantings(plan, 'submerged', ({ bicarbonate = 0 }) => bicarbonate);
}

/** Part of a group that no animal takes on the first day [0..1], kept all run: mean over its plantings. `derived`. */
export function toughPart(plan: Planted, group: RootedInWater): number {
  if (plantingsOf(plan, group).length === 0) return 0;
  return 1 - meanOfPlantings(plan, group, ({ edible = 1 }) => edible);
}

/** Biomass of a group at full cover of its ground [mol C]: mean of the plantings, 0 without any. `derived`. */
export function fullCover(plan: Planted, group: RootedInWater = 'submerged'): number {
  const plantings = plantingsOf(plan, group);
  if (plantings.length === 0) return 0;
  const perArea =
    plantings.reduce((sum, { fullCoverBiomass }) => sum + fullCoverBiomass, 0) / plantings.length;
  return perArea * groundOf(plan, group);
}
