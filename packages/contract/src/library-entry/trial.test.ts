import { library } from '@shoreglass/library';
import { describe, expect, it } from 'vitest';
import { animalTraitsOf } from '../enclosure/plan/animal-traits.ts';
import { trialOf } from './trial.ts';

const ANIMALS = Object.values(library.data.organisms);

describe('every animal by itself for 60 days in an invented box that suits it', () => {
  it.each(ANIMALS.map((animal) => [animal.id, animal] as const))('%s', (_, animal) => {
    const { staysFinite, closure, founders, adults, young, courses } = trialOf(animal, 60);
    expect(staysFinite).toBe(true);
    expect(closure).toBeLessThan(1e-10);
    expect(adults + young).toBeGreaterThan(0.55 * founders);
    if (animal.development === 'brackish larvae') expect(Math.max(...courses.juvenile)).toBe(0);
  });
});

/** First young by day, about as the files' sources have it: eggs are laid soon after settling in. */
describe('breeders breed', () => {
  it.each([
    // 6 young and more a brood, carried three to four weeks (files' sources).
    ['porcellionides-pruinosus', 60, 20],
    // 'From a small breeding group, young show within about four months' (common practice, no source).
    ['geosesarma-dennerle', 120, 20],
    // Doubling in about three days at 20 degC with ample food (Lochhead and Learner 1983); in a box food is not ample.
    ['nais-spp', 60, 100],
    // Grindal worms: dozens of cocoons in a life, matures in 16 d at 20 degC (Learner 1972).
    ['enchytraeus-buchholzi', 60, 500],
    ['tanichthys-albonubes', 60, 20],
    ['daphnia-magna', 30, 50],
  ] as const)('%s: within %i days at least %i young or grown young', (id, days, least) => {
    const { founders, adults, young } = trialOf(library.organism(id), days);
    expect(adults + young - founders).toBeGreaterThan(least);
  });
});

it('no life history asks for broods that the body given cannot make', () => {
  expect(ANIMALS.flatMap((animal) => animalTraitsOf(animal).remarks)).toEqual([]);
});
