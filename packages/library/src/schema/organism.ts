import {
  ACTIVE_TIMES,
  DEVELOPMENTS,
  DIET_PARTS,
  HABITATS,
  isSpared,
  MATINGS,
  PREY_KINDS,
  TRAIT_IDS,
  TRAIT_SPECS,
  type TraitId,
} from '@shoreglass/engine';
import { z } from 'zod';
import { anyQuantity, entryHead, known, type Quantity, quantity, risk, share } from './quantity.ts';
import { tolerances } from './tolerance.ts';

/** A trait in the unit, and within the range, the life module gives it. */
function trait(id: TraitId) {
  const { unit, min, max } = TRAIT_SPECS[id];
  return anyQuantity.check((context) => {
    const { value, unit: written } = context.value;
    const say = (message: string) => context.issues.push({ code: 'custom', message, input: context.value });
    if (written !== unit) say(`trait ${id} is given in '${unit}', not '${written}'`);
    if (!(value >= min && value <= max)) say(`trait ${id} = ${value} is outside ${min} to ${max} ${unit}`);
  });
}

/** Measured energetics; complete, or together with a life history only what it knows better than the rules. */
const traits = z.strictObject(
  Object.fromEntries(TRAIT_IDS.map((id) => [id, trait(id).optional()])) as Record<
    TraitId,
    z.ZodOptional<ReturnType<typeof trait>>
  >,
);

/** A value in exactly one unit, within a range. */
function plain(unit: string, min: number, max: number) {
  return anyQuantity.check((context) => {
    const { value, unit: written } = context.value;
    const say = (message: string) => context.issues.push({ code: 'custom', message, input: context.value });
    if (written !== unit) say(`is given in '${unit}', not '${written}'`);
    if (!(value >= min && value <= max)) say(`${value} ${unit} is outside ${min} to ${max} ${unit}`);
  });
}

/** What keepers and field guides tell, from which rules make the traits the file does not state. */
const lifeHistory = z.strictObject({
  /** At which the times below hold. */
  temperature: plain('°C', 0, 40),
  /** What the lengths measure: 'body length', 'carapace width', 'shell height', 'snout to vent'. */
  lengthMeasure: z.string().min(4),
  lengthAtBirth: plain('mm', 0.05, 100),
  lengthAtPuberty: plain('mm', 0.1, 300).optional(),
  /** Usual full-grown size. */
  adultLength: plain('mm', 0.2, 400),
  /** Wet mass at that size, without shell. */
  adultMass: plain('mg', 1e-4, 1e6),
  dryPart: plain('g/g', 0.03, 0.5).optional(),
  /** From release, hatching or birth to the first eggs. */
  maturityAge: plain('d', 1, 4000),
  youngPerBrood: plain('1', 0.5, 1e5),
  broodInterval: plain('d', 0.5, 400),
  /** From egg laid to young released. */
  broodTime: plain('d', 0.5, 400),
  femaleShare: plain('1', 0.01, 1).optional(),
  lifespan: plain('d', 5, 20_000),
  /** Rest as a pupa, a part of the age at maturity; needed with development 'pupa', whose lifespan is that of the fly. */
  pupaTime: plain('d', 0.5, 200).optional(),
  /** Wetness of the upper ground, over what it can hold, that eggs and larvae in it need. */
  wetGround: plain('1', 0.01, 1).optional(),
  /** Length at which water larvae change; needed with development 'water larvae'. */
  lengthAtChange: plain('mm', 0.1, 200).optional(),
  /** From release to that change; left out: larvae grow as their grown kind does. */
  larvalTime: plain('d', 1, 2000).optional(),
});

/** A check that the shares given sum to 1, rounding aside. */
function sumsToOne(what: string) {
  return (context: {
    readonly value: Readonly<Record<string, Quantity | undefined>>;
    readonly issues: { push(issue: { code: 'custom'; message: string; input: unknown }): unknown };
  }): void => {
    const sum = Object.values(context.value).reduce(
      (total, part) => total + (part ? part.value / (part.unit === '%' ? 100 : 1) : 0),
      0,
    );
    if (Math.abs(sum - 1) > 0.011)
      context.issues.push({
        code: 'custom',
        message: `shares of the ${what} sum to ${sum.toFixed(3)}, not 1`,
        input: context.value,
      });
  };
}

const diet = z
  .strictObject(
    Object.fromEntries(DIET_PARTS.map((part) => [part, share.optional()])) as Record<
      (typeof DIET_PARTS)[number],
      z.ZodOptional<typeof share>
    >,
  )
  .check(sumsToOne('diet'));

const prey = z.strictObject({
  /** Taken by a full-grown animal, in the length measure of the prey's body. */
  smallest: plain('mm', 0, 400),
  largest: plain('mm', 0, 400),
  /** How hunting is spread over kinds of prey. */
  kinds: z.strictObject(
    Object.fromEntries(PREY_KINDS.map((kind) => [kind, share.optional()])) as Record<
      (typeof PREY_KINDS)[number],
      z.ZodOptional<typeof share>
    >,
  ),
});

/** Where it spends its time; shares that sum to 1. */
const place = z
  .strictObject({
    water: share.optional(),
    margin: share.optional(),
    land: share.optional(),
    canopy: share.optional(),
    burrow: share.optional(),
  })
  .check(sumsToOne('place'));

const ways = z.strictObject({
  climbsGlass: z.boolean().optional(),
  jumps: z.boolean().optional(),
  flies: z.boolean().optional(),
  needsTightLid: z.boolean().optional(),
  /** Drowns where it finds no way out of the water. */
  needsWayOut: z.boolean().optional(),
  moults: z.boolean().optional(),
  /** False for those that stop growing when grown up, such as copepods. */
  growsOn: z.boolean().optional(),
  eatsOwnKind: z.enum(['never', 'when hungry', 'often']).optional(),
});

/** When it is up and eats. */
const active = z.strictObject({
  when: z.enum(ACTIVE_TIMES),
  basis: anyQuantity.shape.basis,
  source: z.string().min(3),
  note: z.string().min(3).optional(),
});

/** Space it needs, for the check of the place. */
const space = z.strictObject({
  /** Floor, land and water, of the smallest place for the smallest group. */
  floor: plain('cm²', 0, 1e6).optional(),
  /** Water for the smallest group. */
  water: plain('L', 0, 5000).optional(),
  height: plain('cm', 0, 500).optional(),
  /** Claimed by each full-grown animal. */
  groundPerAdult: plain('cm²', 0, 1e5).optional(),
});

/** Fastest change of the water it is to be put through, a day; the conductivity as a share of what it was. */
const fastestChange = z.strictObject({
  waterTemperature: plain('K', 0.1, 30).optional(),
  pH: plain('pH', 0.01, 5).optional(),
  KH: plain('°dKH', 0.05, 30).optional(),
  conductivity: plain('%', 1, 1000).optional(),
});

const organism = z
  .strictObject({
    ...entryHead,
    scientificName: z.string().min(3),
    group: z.string().min(3),
    /** Fewest founders from which a population has a fair chance. */
    leastFounders: quantity('share', { min: 1, max: 1000 }),
    /** Calcium carbonate of shell or cuticle over dry mass without it, built from the water it lives in, on land from what it eats. */
    shell: quantity('share', { min: 0, max: 10 }).optional(),
    /** What it is made of; calcite when left out. */
    shellMineral: z.enum(['calcite', 'aragonite']).optional(),
    /** How well its numbers are known. */
    known: known.optional(),
    habitat: z.enum(HABITATS),
    mating: z.enum(MATINGS),
    brood: z.enum(['carried', 'laid']),
    development: z.enum(DEVELOPMENTS).optional(),
    active: active.optional(),
    lifeHistory: lifeHistory.optional(),
    traits: traits.optional(),
    /** Ranges in which it is fine. */
    tolerances: tolerances.optional(),
    /** Outermost ranges it survives, for the rules; traits say the same for measured species. */
    survives: tolerances.optional(),
    fastestChange: fastestChange.optional(),
    diet: diet.optional(),
    prey: prey.optional(),
    /** As what others hunt it. */
    preyKind: z.enum(PREY_KINDS).optional(),
    place: place.optional(),
    ways: ways.optional(),
    space: space.optional(),
    /** Law, poison, disease, welfare: sentences with a source. */
    risks: z.array(risk).optional(),
  })
  .check((context) => {
    const { traits: stated = {}, lifeHistory: history, diet: eats, development } = context.value;
    const say = (message: string) => context.issues.push({ code: 'custom', message, input: context.value });
    const lacking = TRAIT_IDS.filter((id) => !isSpared(id) && stated[id] === undefined);
    if (!history && lacking.length > 0)
      say(
        `give a lifeHistory, or the traits ${lacking.slice(0, 5).join(', ')}${lacking.length > 5 ? ' …' : ''}`,
      );
    if (history && !eats) say('a lifeHistory needs a diet beside it');
    if (development === 'pupa' && history && !history.pupaTime) say("'pupa' needs lifeHistory.pupaTime");
    if (development === 'water larvae' && history && !history.lengthAtChange)
      say('water larvae need lifeHistory.lengthAtChange');
  });

export const organismSchema = organism;

export type Organism = z.infer<typeof organism>;
