import { FOODS, type Food } from '@shoreglass/engine';
import type { TermLook } from '../budget/term-look.ts';
import type { Ink } from '../palette/palette.ts';

/** A wash that recalls the food; the pattern tells apart those with a like wash. */
const WASHES: Readonly<Record<string, Ink>> = {
  algae: 'algae',
  detritus: 'soil',
  litter: 'litter',
  feed: 'wood',
  plants: 'moss',
  biofilm: 'waterDeep',
  'suspended algae': 'algae',
  'floating plants': 'moss',
  carrion: 'stone',
  'land litter': 'litter',
  'land fungi': 'stone',
  soil: 'soilDeep',
  remains: 'wood',
};

const PATTERN_COUNT = 8;
const PREY_LOOK: TermLook = { letter: '', wash: 'vermilion', pattern: 6 };

/** How a food is drawn everywhere: the same wash and pattern in every week; animals as food share one look. */
export function foodLook(food: string): TermLook {
  const at = FOODS.indexOf(food as Food);
  const wash = WASHES[food];
  if (at < 0 || wash === undefined) return PREY_LOOK;
  return { letter: '', wash, pattern: at % PATTERN_COUNT };
}
