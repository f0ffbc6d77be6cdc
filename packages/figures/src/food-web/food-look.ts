import type { TermLook } from '../budget/term-look.ts';

/** A wash that recalls the food, and a pattern that tells apart those with a like wash. */
const LOOKS: Readonly<Record<string, TermLook>> = {
  algae: { letter: '', wash: 'algae', pattern: 0 },
  detritus: { letter: '', wash: 'soil', pattern: 1 },
  litter: { letter: '', wash: 'litter', pattern: 2 },
  feed: { letter: '', wash: 'wood', pattern: 3 },
  plants: { letter: '', wash: 'moss', pattern: 4 },
  biofilm: { letter: '', wash: 'waterDeep', pattern: 5 },
  'suspended algae': { letter: '', wash: 'algae', pattern: 6 },
  'floating plants': { letter: '', wash: 'moss', pattern: 7 },
  carrion: { letter: '', wash: 'stone', pattern: 8 },
  'dead plants': { letter: '', wash: 'litter', pattern: 4 },
  moss: { letter: '', wash: 'moss', pattern: 0 },
  'land plants': { letter: '', wash: 'moss', pattern: 1 },
  'marsh plants': { letter: '', wash: 'moss', pattern: 2 },
  'land litter': { letter: '', wash: 'litter', pattern: 7 },
  'land fungi': { letter: '', wash: 'stone', pattern: 6 },
  soil: { letter: '', wash: 'soilDeep', pattern: 0 },
  remains: { letter: '', wash: 'wood', pattern: 8 },
};

const PREY_LOOK: TermLook = { letter: '', wash: 'fanInner', pattern: 5 };

/** How a food is drawn everywhere: the same wash and pattern in every week; animals as food share one look. */
export function foodLook(food: string): TermLook {
  return LOOKS[food] ?? PREY_LOOK;
}
