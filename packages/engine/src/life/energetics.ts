import { cbrt } from '../numerics/elementary.ts';
import { MOLAR_MASS } from '../water/molar-masses.ts';
import { arrheniusFactor, warmPart, workingPart } from './arrhenius.ts';
import { lengthBefore } from './growth-curve.ts';
import type { TraitValues } from './traits.ts';

/** Carbon freed for upkeep per structure given up. @source jager-2013 Table 1. */
export const SHRINKING_YIELD = 0.8;
/** Egg buffer made per assimilated carbon. @source jager-2013 Table 1. */
export const EGG_YIELD = 0.95;

/**
 * DEBkiss parameters of one species, carbon for mass and body length for size, per animal and day at the
 * reference temperature.
 */
export interface Energetics {
  /** Structure of body length L holds carbonPerCube L^3 [mol/mm3], a well-fed body (1 + store) times that. */
  readonly carbonPerCube: number;
  readonly birth: number;
  readonly puberty: number;
  /** Length from which the first brood is made, a brood interval before puberty with ample food [mm]. */
  readonly firstBrood: number;
  readonly end: number;
  /** Length up to which feeding per surface rises with length [mm]; 0 for those that start at full pace. */
  readonly accelerated: number;
  /** Length of a full-grown animal: the end length, or that at puberty where growth stops there [mm]. */
  readonly fullGrown: number;
  /** Length from which nothing goes into growth [mm]; endless for those that grow on. */
  readonly stops: number;
  /** [1/d] */
  readonly growthRate: number;
  /** Share to soma at the end length, kappa [1]. */
  readonly kappa: number;
  /** How much larger that share is at no length than at the end length [1]; 0 where upkeep follows from growth. */
  readonly youngerKappa: number;
  /** Upkeep over that which the growth rate would ask for [1]. */
  readonly ease: number;
  /** Assimilation at ample food is assimilation times `feedingSquare`, L^2 of the grown [mol/mm2/d]. */
  readonly assimilation: number;
  /** Largest intake whatever the food is worth, ingestion times the same [mol/mm2/d]. */
  readonly ingestion: number;
  /** Somatic upkeep is upkeep L^3 [mol/mm3/d]. */
  readonly upkeep: number;
  /** Upkeep of maturity is maturityUpkeep min(L, puberty)^3 [mol/mm3/d]. */
  readonly maturityUpkeep: number;
  /** Carbon of an egg when laid and of a newborn [mol]. */
  readonly eggCarbon: number;
  readonly newbornCarbon: number;
  /** Reserve of a well-fed animal over its structure [1]; the newborn's is full. */
  readonly store: number;
  /** Most reserve after a meal that follows hunger, over structure [1]. */
  readonly mostStore: number;
  /** Structure made per carbon put into growth, y [1]. */
  readonly growthYield: number;
  /** Part of the egg share spent on ripening at puberty, q [1]. */
  readonly lateMaturing: number;
  /** [mol/mol] */
  readonly nitrogenPerCarbon: number;
  readonly phosphorusPerCarbon: number;
}

/**
 * DEBkiss parameters from measured traits. With a well-fed body c L^3, growth dW/dt = y (kappa A - M), A = a f L^2 and
 * M = m L^3 is von Bertalanffy growth dL/dt = r (f Lend - L) when
 *   m = 3 c r / y,   a = m Lend / kappa.
 * Maturity upkeep per volume is (1 - kappa)/kappa m, so that young stop paying for maturity where growth stops.
 * Where upkeep is a trait u of its own, m = c u, and growth with ample food stays dL/dt = r (Lend - L) when the share to soma
 * falls with length,
 *   kappa(L) = kappa (L/Lend + (g/m) (1 - L/Lend)),   g = 3 c r / y:
 * fast growers put ever more into eggs rather than burning it. An unfed animal respires u with maturity upkeep in it.
 * Those that start slowly (`accelerated` Lj) assimilate a L^3/Lj below Lj at the share of that length, kappa(Lj), so that
 * dL/dt = r L (Lend/Lj - 1): growth in proportion to length, which meets the curve at Lj.
 * Structure is 1/(1 + store) of the body, the store the rest, and the two grow together.
 * @param traits in the units of TRAIT_SPECS
 * @source jager-2013 eq. 1-9 and Table 1; kooijman-2014 for the slow start; the inversion and the falling share are derived
 * by comparing coefficients
 */
export function energeticsOf(traits: TraitValues): Energetics {
  const bodyPerCube = (traits.dryMassPerCube * 1e-3 * traits.carbonContent) / MOLAR_MASS.carbon;
  const kappa = traits.shareToSoma;
  const byGrowth = (3 * bodyPerCube * traits.growthRate) / traits.growthYield;
  const isMeasured = traits.upkeep > 0;
  const growsOn = traits.growsOn > 0;
  const upkeep = isMeasured ? bodyPerCube * traits.upkeep : byGrowth;
  const newbornCarbon = bodyPerCube * traits.lengthAtBirth * traits.lengthAtBirth * traits.lengthAtBirth;
  const perCarbon = MOLAR_MASS.carbon / traits.carbonContent;
  return {
    carbonPerCube: bodyPerCube / (1 + traits.store),
    birth: traits.lengthAtBirth,
    puberty: traits.lengthAtPuberty,
    firstBrood: firstBroodLength(traits),
    end: traits.lengthAtEnd,
    accelerated: traits.lengthAccelerated,
    fullGrown: growsOn ? traits.lengthAtEnd : traits.lengthAtPuberty,
    stops: growsOn ? Number.POSITIVE_INFINITY : traits.lengthAtPuberty,
    growthRate: traits.growthRate,
    kappa,
    youngerKappa: isMeasured ? kappa * (byGrowth / upkeep - 1) : 0,
    ease: isMeasured ? upkeep / byGrowth : 1,
    assimilation: (upkeep * traits.lengthAtEnd) / kappa,
    ingestion: traits.maxIngestion * bodyPerCube * Math.max(traits.lengthAtPuberty, traits.lengthAccelerated),
    upkeep,
    maturityUpkeep: isMeasured ? 0 : (upkeep * (1 - kappa)) / kappa,
    eggCarbon: newbornCarbon * traits.eggPerNewborn,
    newbornCarbon,
    store: traits.store,
    mostStore: traits.store + traits.gorge * (1 + traits.store),
    growthYield: traits.growthYield,
    lateMaturing: traits.lateMaturing,
    nitrogenPerCarbon: (traits.nitrogenContent / MOLAR_MASS.nitrogen) * perCarbon,
    phosphorusPerCarbon: (traits.phosphorusContent / MOLAR_MASS.phosphorus) * perCarbon,
  };
}

/** Least length at which a first brood is begun, over that at puberty [1]. @source assumed */
const EARLIEST_BROOD = 0.8;

/**
 * Length at which the first brood begins to be made [mm]: that of an animal with ample food one brood interval before
 * it reaches puberty, but at least four fifths of the length at puberty, half its mass.
 * max(Lbirth, 0.8 Lpuberty, Lend - (Lend - Lpuberty) exp(r interval)), the last by `lengthBefore` for slow starters.
 * @source derived: yolk is laid down between one brood and the next, so the brood that makes an animal adult was begun
 * before; the bound for those that breed seldom is assumed
 */
function firstBroodLength(traits: TraitValues): number {
  const { lengthAtEnd, lengthAccelerated, lengthAtPuberty, lengthAtBirth } = traits;
  const curve = { end: lengthAtEnd, accelerated: lengthAccelerated };
  const before = lengthBefore(curve, lengthAtPuberty, traits.growthRate * traits.broodInterval);
  return Math.max(lengthAtBirth, EARLIEST_BROOD * lengthAtPuberty, before);
}

/**
 * Share of assimilated carbon that goes to upkeep and growth of a body [1], 0 to 1.
 * kappa + younger (1 - L/Lend), at most 1: a body that grows faster than its food allows grows slower. Below Lj that of Lj.
 * @param length L [mm], at most the end length
 * @source derived: see `energeticsOf`
 */
export function somaShare({ kappa, youngerKappa, end, accelerated }: Energetics, length: number): number {
  if (youngerKappa === 0) return kappa;
  return Math.min(1, kappa + youngerKappa * (1 - Math.max(length, accelerated) / end));
}

/**
 * Part of the carbon to spare that an adult puts into eggs rather than further ripening [1], 0 to 1.
 * 1 - q Lpuberty / L.
 * @param length L [mm], at least that at puberty
 * @source assumed: broods of many crustaceans rise more steeply with length than its square; q from published broods
 */
export function eggShare({ lateMaturing, puberty }: Energetics, length: number): number {
  return 1 - (lateMaturing * puberty) / Math.max(length, puberty);
}

/**
 * Factor on feeding, upkeep, growth and ageing relative to the reference temperature [1], > 0.
 * c = arrhenius(T) h(T) / h(Tref), h by heat and, for those that cold stops, by cold.
 * @param temperature of the water [degC]
 * @source derived from `arrheniusFactor`, `workingPart` and `warmPart`
 */
export function bodyRate(traits: TraitValues, temperature: number): number {
  const { referenceTemperature, activationEnergy, heatLimit, coldLimit } = traits;
  const byHeat =
    (arrheniusFactor(temperature, referenceTemperature, activationEnergy) *
      workingPart(temperature, heatLimit)) /
    workingPart(referenceTemperature, heatLimit);
  if (coldLimit <= NO_COLD_LIMIT) return byHeat;
  return (byHeat * warmPart(temperature, coldLimit)) / warmPart(referenceTemperature, coldLimit);
}

/** A cold limit that stops nobody [degC]. */
const NO_COLD_LIMIT = -30;

/** Factor on egg development relative to the reference temperature [1], > 0. @source derived from `arrheniusFactor`. */
export function broodRate(traits: TraitValues, temperature: number): number {
  return arrheniusFactor(temperature, traits.referenceTemperature, traits.broodActivationEnergy);
}

/** Keeps the middle of a day short of the length at which growth stops, so that the day's end can reach it [1]. */
const JUST_BELOW = 1 - 1e-9;

/**
 * Body length in the middle of the coming day [mm], at least the present one; below that at which growth stops as long as the
 * present one is.
 * L + r/2 (f Lend - L (f + (1 - f) m/g)) where that is growth; m/g is 1 where upkeep follows from growth. Below Lj the growth
 * at that length times L/Lj.
 * @param length present [mm]
 * @param fullness assimilation over that at ample food of the mean of its kind, f [>= 0]
 * @param rate temperature factor [1]
 * @source derived: half an Euler step of the von Bertalanffy equation
 */
export function midDayLength(energetics: Energetics, length: number, fullness: number, rate: number): number {
  if (length >= energetics.stops) return length;
  const { accelerated } = energetics;
  const isSlow = length < accelerated;
  const held = (isSlow ? accelerated : length) * (fullness + (1 - fullness) * energetics.ease);
  const free = 0.5 * rate * energetics.growthRate * (fullness * energetics.end - held);
  const growth = isSlow ? (free * length) / accelerated : free;
  return growth > 0 ? Math.min(length + growth, JUST_BELOW * energetics.stops) : length;
}

/** What one animal's day comes to; filled in place so that a run allocates nothing. */
export interface AnimalDay {
  /** Change of structure, of the store by growth, and of the egg buffer [mol C]. */
  structure: number;
  store: number;
  buffer: number;
}

/** One animal of a cohort at the start of its day, and what it was given. */
export interface AnimalState {
  /** Length in the middle of the day [mm]. */
  length: number;
  /** Egg buffer [mol C]. */
  buffer: number;
  /** Assimilated today [mol]. */
  carbon: number;
  nitrogen: number;
  phosphorus: number;
}

/** Factors on the day's budget that hold for the whole population. */
export interface DayRates {
  /** Temperature factor [1]. */
  rate: number;
  /** Upkeep of a starving animal over that of a fed one [1]. */
  starvedUpkeep: number;
  femaleShare: number;
}

/**
 * Writes what one animal's day comes to into `into` [mol C].
 * Fed: growth y (kappa A - M), none from the length at which growth stops, shared by structure and store; from the length of the first brood on EGG_YIELD ((1 - kappa) A - J) of
 * females goes into the buffer, the young and males respire it. Hungry: no growth, upkeep paid from all assimilated carbon, then from the buffer; then upkeep
 * falls to its starved level and structure is given up for it. Growth and eggs are cut to what assimilated
 * nitrogen and phosphorus allow at the body's fixed composition.
 * @source jager-2013 section 2.5 (starvation); the nutrient limit is derived from fixed composition
 */
export function animalDay(
  energetics: Energetics,
  state: AnimalState,
  rates: DayRates,
  into: AnimalDay,
): void {
  into.store = 0;
  const { length, carbon } = state;
  const upkeep = rates.rate * energetics.upkeep * length * length * length;
  const mature = Math.min(length, energetics.puberty);
  const maturity = rates.rate * energetics.maturityUpkeep * mature * mature * mature;
  const forGrowth = length < energetics.stops ? somaShare(energetics, length) * carbon - upkeep : 0;
  const spare = carbon - upkeep - maturity - Math.max(forGrowth, 0);
  if (spare < 0 && forGrowth <= 0) {
    hungryDay(state, upkeep + maturity, rates.starvedUpkeep, into);
    return;
  }
  const growth = forGrowth > 0 ? energetics.growthYield * forGrowth : 0;
  const eggs =
    length >= energetics.firstBrood && spare > 0
      ? EGG_YIELD * rates.femaleShare * spare * eggShare(energetics, length)
      : 0;
  const allowed = nutrientLimit(energetics, state, growth + eggs);
  into.structure = (growth * allowed) / (1 + energetics.store);
  into.store = growth * allowed - into.structure;
  into.buffer = eggs * allowed;
}

/** Share of the wanted growth that assimilated nitrogen and phosphorus allow [0..1]. */
function nutrientLimit(energetics: Energetics, state: AnimalState, wanted: number): number {
  if (wanted <= 0) return 1;
  const byNitrogen = state.nitrogen / (wanted * energetics.nitrogenPerCarbon);
  const byPhosphorus = state.phosphorus / (wanted * energetics.phosphorusPerCarbon);
  return Math.min(1, byNitrogen, byPhosphorus);
}

function hungryDay(state: AnimalState, upkeep: number, starvedUpkeep: number, into: AnimalDay): void {
  const missing = upkeep - state.carbon;
  if (missing <= state.buffer) {
    into.structure = 0;
    into.buffer = -missing;
    return;
  }
  const stillMissing = starvedUpkeep * upkeep - state.carbon - state.buffer;
  into.structure = stillMissing > 0 ? -stillMissing / SHRINKING_YIELD : 0;
  into.buffer = -state.buffer;
}

/** Body length that holds an amount of structural carbon [mm]. L = cbrt(W / c). @source derived. */
export function lengthOf(energetics: Energetics, structure: number): number {
  return cbrt(structure / energetics.carbonPerCube);
}

/** Structural carbon of a body length [mol]. W = c L^3. @source derived. */
export function structureOf(energetics: Energetics, length: number): number {
  return energetics.carbonPerCube * length * length * length;
}
