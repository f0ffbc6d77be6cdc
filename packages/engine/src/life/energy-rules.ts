import { exp, log } from '../numerics/elementary.ts';
import { SECONDS_PER_DAY } from '../units/constants.ts';
import { MOLAR_MASS } from '../water/molar-masses.ts';
import { arrheniusFactor } from './arrhenius.ts';

/** Standard metabolism of a cold-blooded animal at 20 degC, b M^p [W], M its wet mass [kg]. @source peters-1983 (memory) */
const STANDARD_WATTS = 0.14;
const STANDARD_POWER = 0.751;
const PETERS_TEMPERATURE = 20;
const METABOLIC_ENERGY = 0.65;
/** Dry part of the bodies that rule was drawn from [g/g], so that watery bodies count by what lives in them. @source assumed */
const USUAL_DRY_PART = 0.25;
/** Heat of a carbon burnt with one oxygen [J/mol]. @source memory: oxycaloric 440 to 470 kJ/mol O2 */
const HEAT_PER_CARBON = 450e3;
/**
 * Most upkeep taken for an animal going about its day, over its standard metabolism [1].
 * @source assumed: measured are 0.5 in a springtail (stam-1996), 0.7 in an amphipod (mathias-1971), 2.7 in a water flea
 * (evers-1989)
 */
const MOST_OVER_STANDARD = 2;
/** Carbon made into body per carbon put into growth where none is given. @source jager-2013 Table 1 */
const GROWTH_YIELD = 0.8;
const EGG_YIELD = 0.95;
/** Share to soma allowed [1]. Beyond these the broods given cannot be made by a body of the size and growth given. */
const LEAST_KAPPA = 0.3;
const MOST_KAPPA = 0.98;

/** Lengths [mm] and von Bertalanffy rate [1/d]. */
export interface Sizes {
  readonly birth: number;
  readonly puberty: number;
  readonly end: number;
  readonly rate: number;
  /** Length up to which feeding per surface rises with length; none when left out. */
  readonly accelerated?: number;
}

/** The body a species' metabolism is reckoned for. */
export interface Body {
  /** Dry mass when full grown [mg], and carbon in it [g/g]. */
  readonly dryMass: number;
  readonly carbonContent: number;
  /** [degC] */
  readonly temperature: number;
}

/**
 * Most carbon an unfed animal going about its day burns over its own carbon [1/d], > 0: twice its standard metabolism.
 * 2 b M^0.751 arrhenius(T, 20, 0.65 eV) 86400 / (heat per carbon x body carbon), M the mass with a quarter dry.
 * @param body full grown; mass [mg] dry, temperature [degC]
 * @source peters-1983 (memory); brown-2004 for temperature; the factor of two is assumed
 */
export function mostUpkeep({ dryMass, carbonContent, temperature }: Body): number {
  const kilograms = (dryMass / USUAL_DRY_PART) * 1e-6;
  const watts =
    MOST_OVER_STANDARD *
    STANDARD_WATTS *
    exp(STANDARD_POWER * log(kilograms)) *
    arrheniusFactor(temperature, PETERS_TEMPERATURE, METABOLIC_ENERGY);
  const carbon = (dryMass * 1e-3 * carbonContent) / MOLAR_MASS.carbon;
  return (watts * SECONDS_PER_DAY) / (HEAT_PER_CARBON * carbon);
}

/**
 * Upkeep of its own for a species that grows faster than the upkeep of its size allows, or that stops growing when
 * grown up [1/d]; 0 where upkeep follows from growth.
 * @source derived: 3 r / y is what growth asks for (`energeticsOf`)
 */
export function ownUpkeep({ rate }: Sizes, body: Body, growsOn = true): number {
  const asked = (3 * rate) / GROWTH_YIELD;
  const most = mostUpkeep(body);
  return growsOn && asked <= most ? 0 : Math.min(asked, most);
}

/** What a full-grown female makes. */
export interface Broods {
  /** Usual full-grown length [mm]. */
  readonly length: number;
  /** Eggs of a brood as cubes of length [mm3], and time from one brood to the next [d]. */
  readonly eggs: number;
  readonly interval: number;
}

/** Share to soma by rule, the upkeep it goes with [1/d], and what had to be settled. */
export interface RuledEnergy {
  readonly kappa: number;
  readonly upkeep: number;
  /** Share that leaves what the broods ask for; the same as kappa unless that is out of bounds. */
  readonly asked: number;
}

/**
 * Share to soma with which a full-grown female makes the broods given, for an upkeep that follows from growth (`own` 0):
 *   (1 - kappa)/kappa = eggs / (0.95 interval m (Lend L^2 - Lpuberty^3)),  m = 3 r/0.8
 * or for an upkeep u of its own:
 *   a = (u L^3 + g L^2 (Lend - L) + eggs/(0.95 interval))/L^2,  kappa = u Lend/a,  g = 3 r/0.8,
 * and a at least u L + g (Lend - L) at L half way from birth to puberty, so that only the smallest grow slower than told (at
 * Lj of those that start slowly, if longer, since theirs is the share of that length).
 * @param own u [1/d]
 * @source derived: the energy budget of `energeticsOf` at the full-grown length
 */
export function energyOfBroods(
  own: number,
  { birth, puberty, end, rate, accelerated = 0 }: Sizes,
  broods: Broods,
): RuledEnergy {
  const { length, eggs, interval } = broods;
  const byGrowth = (3 * rate) / GROWTH_YIELD;
  const intoEggs = eggs / (EGG_YIELD * interval);
  const square = length * length;
  if (own > 0) {
    const stillGrowing = length > puberty ? byGrowth * (end - length) : 0;
    const needed = own * length + stillGrowing + intoEggs / square;
    const young = Math.max(0.5 * (birth + puberty), accelerated);
    const forYoung = own * young + byGrowth * (end - young);
    const asked = (own * end) / Math.max(needed, forYoung);
    const kappa = bounded(asked);
    return { kappa, upkeep: own, asked: Math.min(asked, kappa) };
  }
  const able = byGrowth * (end * square - puberty * puberty * puberty);
  const asked = 1 / (1 + intoEggs / able);
  return { kappa: bounded(asked), upkeep: byGrowth, asked };
}

function bounded(kappa: number): number {
  return Math.min(MOST_KAPPA, Math.max(LEAST_KAPPA, kappa));
}
