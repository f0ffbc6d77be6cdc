import type { Organism, Plant } from '@shoreglass/library';

/** Conductivity from which water counts as brackish [uS/cm]. */
const BRACKISH = 5000;

type Spans = NonNullable<Organism['tolerances']>;

function needsOfWaterAndAir(spans: Partial<Spans> | undefined): string[] {
  if (!spans) return [];
  const warmth = [spans.waterTemperature, spans.airTemperature].filter((span) => span !== undefined);
  const words: (string | false)[] = [
    (spans.conductivity?.low?.value ?? 0) >= BRACKISH && 'brackish water',
    (spans.GH?.high?.value ?? 99) <= 10 && 'soft water',
    (spans.GH?.low?.value ?? 0) >= 6 && 'hard water',
    warmth.some(({ high }) => (high?.value ?? 99) <= 24) && 'cool',
    warmth.some(({ low }) => (low?.value ?? 0) >= 22) && 'warm',
    (spans.relativeHumidity?.low?.value ?? 0) >= 75 && 'humid air',
  ];
  return words.filter((word) => word !== false);
}

const has = (entry: Pick<Organism, 'risks'>, kind: string): boolean =>
  (entry.risks ?? []).some((risk) => risk.kind === kind);

/** Words to find an animal by: what it needs, and what to mind. */
export function needsOfAnimal(animal: Organism): string[] {
  const words: (string | false)[] = [
    animal.ways?.needsTightLid === true && 'tight lid',
    animal.development === 'brackish larvae' && 'no young in fresh water',
    has(animal, 'toxin') && 'poison',
    has(animal, 'invasive') && 'forbidden in places',
  ];
  return [...needsOfWaterAndAir(animal.tolerances), ...words.filter((word) => word !== false)];
}

/** Words to find a plant by. */
export function needsOfPlant(plant: Plant): string[] {
  const words: (string | false)[] = [
    plant.light.good.value <= 50 && 'little light',
    plant.light.good.value >= 100 && 'much light',
    has(plant, 'toxin') && 'poison',
    has(plant, 'invasive') && 'forbidden in places',
  ];
  return [...needsOfWaterAndAir(plant.tolerances), ...words.filter((word) => word !== false)];
}
