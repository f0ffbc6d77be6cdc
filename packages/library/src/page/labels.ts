/** Titles of the groups an entry's values stand in, by the key of the file. */
export const TITLES: Readonly<Record<string, string>> = {
  values: 'Values',
  lifeHistory: 'Size, growth and breeding',
  traits: 'Measured energetics',
  diet: 'Food, as parts of what it eats',
  prey: 'Prey',
  place: 'Where it spends its time',
  space: 'Space',
  light: 'Light',
  tissue: 'Tissue',
  exchange: 'Exchange with the water',
  leaching: 'What leaches out',
  leached: 'What leaches from a piece',
  phosphate: 'Phosphate that it binds',
  portions: 'What portions weigh',
  properties: 'Properties',
  ions: 'Dissolved in it',
  fastestChange: 'Fastest change a day',
};

/** Words for keys that do not read well by themselves. */
const WORDS: Readonly<Record<string, string>> = {
  temperature: 'temperature at which the times hold',
  adultLength: 'usual full-grown length',
  adultMass: 'wet mass full-grown, without shell',
  dryPart: 'dry part of the mass',
  maturityAge: 'age at the first eggs, from release or hatching',
  youngPerBrood: 'young in a brood',
  broodInterval: 'from one brood to the next',
  broodTime: 'from egg to young',
  femaleShare: 'share that bears eggs',
  lifespan: 'life span',
  edible: 'part that animals eat',
  pupaTime: 'rest as a pupa',
  wetGround: 'wetness of the ground its eggs and larvae need',
  lengthAtChange: 'length at the change from larva',
  larvalTime: 'time as a larva',
  leastFounders: 'fewest to begin with',
  shell: 'lime of shell or cuticle over dry mass without it',
  groundPerAdult: 'ground each grown animal claims',
  floor: 'floor for the smallest group',
  'space.water': 'water for the smallest group',
  'prey.kinds': 'hunts',
  'phosphate.maximum': 'most that it binds, as phosphorus',
  'phosphate.half': 'phosphate of the water at which it holds half of that',
  'phosphate.balance': 'phosphate of the water in which it, when new, takes and gives none',
  height: 'height',
  smallest: 'smallest taken by a grown animal',
  largest: 'largest taken by a grown animal',
  fullCoverBiomass: 'carbon at full cover',
  least: 'lives from',
  good: 'grows well from',
  most: 'suffers above',
  growth: 'growth a day in good light',
  bicarbonate: 'use of bicarbonate under water (0 none, 1 full)',
  breakdown: 'breakdown of dead parts in water over that of soft shoots',
  dryMatter: 'dry matter',
  decay: 'loss of what is not eaten, at 25 °C',
  hour: 'in an hour',
  day: 'in a day',
  filmSurface: 'surface for films',
  bulkDensity: 'density by the bulk',
  heldWater: 'water it holds drained',
  capillaryRise: 'height to which it lifts water',
  pace: 'breakdown in water over that of oak leaves',
  quick: 'part that leaves in the first weeks',
  quickShare: 'part that leaves in the first weeks',
  canopy: 'plants and walls',
  KH: 'carbonate hardness',
  GH: 'general hardness',
  oxygenLow: 'oxygen at dawn',
  oxygen: 'oxygen',
  unionisedAmmonia: 'ammonia, un-ionised',
  totalAmmonia: 'ammonia and ammonium',
};

/**
 * A key of a file as words: lengthAtBirth reads 'length at birth'. Keys that are words already stay.
 * @param within key of the group it stands in, for words that mean another thing there
 */
export function wordsOf(key: string, within = ''): string {
  const here = `${within}.${key}`;
  const given = Object.hasOwn(WORDS, here) ? WORDS[here] : Object.hasOwn(WORDS, key) ? WORDS[key] : undefined;
  if (given) return given;
  if (/[\s,]/.test(key) || /^[A-Z]/.test(key) || key === 'pH') return key;
  return key.replaceAll(/([a-z])([A-Z]+)/g, (_, before: string, capital: string) => {
    const word = capital.length > 1 ? capital : capital.toLowerCase();
    return `${before} ${word}`;
  });
}

/** First letter large, but for words like pH. */
export function capital(text: string): string {
  return text.startsWith('pH') ? text : text.charAt(0).toUpperCase() + text.slice(1);
}
