import { TRAIT_IDS, TRAIT_SPECS, type TraitId } from '@shoreglass/engine';
import { z } from 'zod';
import { anyQuantity, entryHead, quantity } from './quantity.ts';
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

const traits = z.strictObject(
  Object.fromEntries(TRAIT_IDS.map((id) => [id, trait(id)])) as Record<TraitId, ReturnType<typeof trait>>,
);

const animalHead = {
  ...entryHead,
  scientificName: z.string().min(3),
  group: z.string().min(3),
  /** Fewest founders from which a population has a fair chance. */
  leastFounders: quantity('share', { min: 1, max: 1000 }),
};

/** Lives in the water and is modelled; the bands of temperature, pH, hardness, oxygen and ammonia follow from the traits. */
const waterAnimal = z.strictObject({
  ...animalHead,
  habitat: z.literal('water'),
  mating: z.enum(['two sexes', 'self-fertile']),
  brood: z.enum(['carried', 'laid']),
  traits,
  tolerances: tolerances.optional(),
});

/** Lives on land; kept in the file and not modelled yet. */
const landAnimal = z.strictObject({ ...animalHead, habitat: z.literal('land'), tolerances });

export const organismSchema = z.discriminatedUnion('habitat', [waterAnimal, landAnimal]);

export type Organism = z.infer<typeof organismSchema>;
export type WaterAnimal = z.infer<typeof waterAnimal>;
export type LandAnimal = z.infer<typeof landAnimal>;
