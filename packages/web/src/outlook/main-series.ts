import type { AheadDocument, SeriesId } from '@shoreglass/engine';

const ALWAYS_OF_INTEREST: readonly SeriesId[] = [
  'pH',
  'KH',
  'nitrate',
  'oxygenLow',
  'waterTemperature',
  'plantCover',
  'floatingCover',
  'emersedCover',
];

/** Series in the order in which they matter here: what limits first, what turns next, then animals and the usual ones. */
export function seriesByWeight(document: AheadDocument): SeriesId[] {
  const turning = [...document.turningPoints].sort((a, b) => b.probability - a.probability);
  const populations = (Object.keys(document.series) as SeriesId[]).filter(isWholePopulation);
  const ordered = [
    ...document.handsOffHorizon.limitedBy.map(({ subject }) => subject),
    ...turning.map(({ subject }) => subject),
    ...populations,
    ...ALWAYS_OF_INTEREST,
    ...(Object.keys(document.series) as SeriesId[]).filter((id) => id.startsWith('planting:')),
  ];
  return [...new Set(ordered)].filter((id) => id in document.series && !isStage(id));
}

/** The first few by weight, always with the water's chemistry and an animal among them where there are any. */
export function stripsFor(document: AheadDocument, count: number): SeriesId[] {
  const ordered = seriesByWeight(document);
  const wanted = [
    ordered[0],
    ordered.find((id) => !isPopulation(id)),
    ordered.find(isPopulation),
    ...ordered,
  ].filter((id) => id !== undefined);
  return [...new Set(wanted)].slice(0, count);
}

export function isPopulation(id: SeriesId): boolean {
  return id.startsWith('population:');
}

function isWholePopulation(id: SeriesId): boolean {
  return isPopulation(id) && !isStage(id);
}

/** `population:<id>:<stage>` is a part of a population already shown. */
function isStage(id: SeriesId): boolean {
  return id.split(':').length > 2;
}
