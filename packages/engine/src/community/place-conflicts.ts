import { capital } from '../outlook/capital.ts';
import {
  type Conflict,
  type Inhabitant,
  median,
  type PlaceFacts,
  type Sourced,
  shown,
} from './inhabitant.ts';

function tooFew(one: Inhabitant): Conflict[] {
  const { count, leastFounders, name, id } = one;
  if (count === undefined || count === 0 || count >= leastFounders.value) return [];
  const sexes = one.traits.mating === 'two sexes' ? ', both sexes among them' : '';
  return [
    {
      kind: 'few',
      who: [id],
      severity: 'warning',
      sentence: `A start with ${count} is small for ${name}; a population has a fair chance from about ${leastFounders.value}${sexes}.`,
      source: leastFounders.source,
      mend: `Start with ${leastFounders.value} or more, young and adults.`,
    },
  ];
}

interface Need {
  readonly needed: Sourced | undefined;
  readonly there: number;
  readonly unit: string;
  readonly what: string;
}

function tooSmall(one: Inhabitant, place: PlaceFacts): Conflict[] {
  const dry = median(one, 'shareInWater') < 0.3;
  const { floor, water, height, groundPerAdult } = one.space;
  const claimed: Sourced | undefined =
    groundPerAdult && one.count !== undefined
      ? { value: groundPerAdult.value * one.count, source: groundPerAdult.source }
      : undefined;
  const needs: Need[] = [
    { needed: floor, there: dry ? place.landFloor : place.floor, unit: 'cm²', what: dry ? 'land' : 'floor' },
    { needed: water, there: place.water, unit: 'L', what: 'water' },
    { needed: height, there: place.height, unit: 'cm', what: 'height' },
    {
      needed: claimed,
      there: dry ? place.landFloor : place.floor,
      unit: 'cm²',
      what: 'ground for their number',
    },
  ];
  return needs.flatMap(({ needed, there, unit, what }): Conflict[] => {
    if (!needed || needed.value <= 0 || there >= 0.98 * needed.value) return [];
    return [
      {
        kind: 'space',
        who: [one.id],
        severity: 'warning',
        sentence: `${capital(one.name)} need at least ${shown(needed.value)} ${unit} of ${what}; here there are ${shown(there)} ${unit}.`,
        source: needed.source,
        mend: 'Choose a larger place, fewer animals or a smaller species.',
      },
    ];
  });
}

/** An animal passes where a third of its length does. @source assumed */
const WIDTH_OF_LENGTH = 1 / 3;

/** Openings the grown animal passes, the bare part of the cover first. */
function openingsFor(one: Inhabitant, { openCover, gaps }: PlaceFacts): string[] {
  const body = median(one, 'lengthAtEnd') * WIDTH_OF_LENGTH;
  const passed = gaps.filter(({ width }) => width >= body);
  return [
    ...(openCover > 0 ? [`the cover, open over ${shown(100 * openCover)} % without mesh`] : []),
    ...passed.map(({ name, width }) => `${name}, ${shown(width)} mm wide`),
  ];
}

function wayOut(one: Inhabitant, place: PlaceFacts): Conflict[] {
  const { climbsGlass, jumps, flies, needsTightLid } = one.ways;
  const openings = openingsFor(one, place);
  if (needsTightLid === false || openings.length === 0) return [];
  const how = [climbsGlass && 'climb glass', jumps && 'jump', flies && 'fly'].filter(Boolean).join(', ');
  if (!how && !needsTightLid) return [];
  return [
    {
      kind: 'way out',
      who: [one.id],
      severity: 'warning',
      sentence: `${capital(one.name)} ${how || 'leave through gaps'} and find a way through ${openings.join('; ')}; they will get out, and dry up in the room.`,
      source: 'common practice, no source',
      mend: 'Close the gaps, or cover them with fine mesh; seal around cables and hoses.',
    },
  ];
}

function neverBreeds(one: Inhabitant): Conflict[] {
  if (one.traits.development !== 'brackish larvae') return [];
  return [
    {
      kind: 'never breeds',
      who: [one.id],
      severity: 'note',
      sentence: `${capital(one.name)} have larvae that need salt water; in fresh water they never have young, and their number only falls.`,
      source: 'the species file',
      mend: 'Keep them for what they do, without counting on young; choose another species where young are wanted.',
    },
  ];
}

const RISK_KIND = {
  toxin: 'toxin',
  zoonosis: 'disease',
  disease: 'disease',
  law: 'law',
  invasive: 'law',
  welfare: 'welfare',
} as const;

/** What helps, clause by clause: each with what a text says that says as much. */
const RISK_MEND: Readonly<Record<(typeof RISK_KIND)[keyof typeof RISK_KIND], readonly [string, RegExp][]>> = {
  toxin: [
    ['keep apart those that could swallow or touch it', /keep no other species|never keep it with/i],
    ['wear gloves', /gloves/i],
    ['wash hands', /wash hands/i],
  ],
  disease: [
    ['keep newcomers apart for some weeks', /newcomers apart/i],
    ['use own tools', /own tools/i],
    ['wash hands before and after', /wash hands/i],
  ],
  law: [
    [
      'ask your authority before you buy',
      /ask your authority|ask before you buy|check (what may|where you)/i,
    ],
    [
      'never release animals, plants, water or ground outdoors',
      /never release|do not release|must not be kept/i,
    ],
  ],
  welfare: [
    ['give it what it needs, or choose another species', /find one before you buy/i],
    ['a vet for sick animals', /\bvet\b/i],
  ],
};

/** What helps against a risk beyond what its text says already. */
function riskMend(kind: keyof typeof RISK_MEND, text: string): string {
  const left = RISK_MEND[kind].flatMap(([clause, said]) => (said.test(text) ? [] : [clause]));
  return left.length > 0
    ? `${capital(left.join(kind === 'disease' || kind === 'toxin' ? ', ' : '; '))}.`
    : 'Do as it says.';
}

function risks(one: Inhabitant): Conflict[] {
  return one.risks.flatMap(({ kind, text, source }): Conflict[] => {
    const shownAs = RISK_KIND[kind as keyof typeof RISK_KIND];
    if (!shownAs) return [];
    return [
      {
        kind: shownAs,
        who: [one.id],
        severity: 'note',
        sentence: `${capital(one.name)}: ${text}`,
        source,
        mend: riskMend(shownAs, text),
      },
    ];
  });
}

/** Poison where somebody else could meet it. */
function toxins(all: readonly Inhabitant[]): Conflict[] {
  const poisonous = all.filter(({ risks: own }) => own.some(({ kind }) => kind === 'toxin'));
  return poisonous.flatMap((one) => {
    const others = all.filter((each) => each !== one);
    if (others.length === 0) return [];
    return [
      {
        kind: 'toxin' as const,
        who: [one.id, ...others.map(({ id }) => id)],
        severity: 'warning' as const,
        sentence: `${capital(one.name)} give off or carry poison and would share air and water with ${others.map(({ name }) => name).join(', ')}.`,
        source: one.risks.find(({ kind }) => kind === 'toxin')!.source,
        mend: 'Keep poisonous species by themselves.',
      },
    ];
  });
}

/** Too few, too small a place, ways out, larvae that need salt, poison, disease, law. @source derived */
export function placeConflicts(all: readonly Inhabitant[], place: PlaceFacts | undefined): Conflict[] {
  return [
    ...all.flatMap((one) => [
      ...tooFew(one),
      ...(place ? [...tooSmall(one, place), ...wayOut(one, place)] : []),
      ...neverBreeds(one),
      ...risks(one),
    ]),
    ...toxins(all),
  ];
}
