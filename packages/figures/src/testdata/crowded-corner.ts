import type { AheadDocument, QuantileSeries } from '@shoreglass/engine';
import type { SectionPlan } from '../section/section-plan.ts';
import { ALDER_CORNER } from './alder-corner.ts';
import { ALDER_YEAR } from './alder-year.ts';

/** The invented enclosure once more, awkward on purpose: ten populations with long names, half of them in the water. */
const NAMES = [
  'freshwater amphipods of the Danube form with very long antennae',
  'great ramshorn snails',
  'water lice',
  'Malaysian trumpet snails, hitch-hikers from the plant nursery',
  'blackworms',
  'dwarf white woodlice',
  'springtails of three species that nobody can tell apart',
  'Donaudampfschifffahrtsgesellschaftskapitänsassel',
  'millipedes',
  'stick insects, only as a test of the label solver',
];

export const CROWDED_CORNER: SectionPlan = {
  ...ALDER_CORNER,
  id: 'crowded-corner',
  name: 'Crowded corner',
  populations: NAMES.map((name, index) => ({
    id: `population-${index}`,
    species: name,
    name,
    zone: index < 5 ? 'pool' : 'bank',
  })),
};

export const CROWDED_YEAR: AheadDocument = {
  ...ALDER_YEAR,
  enclosure: { ...ALDER_YEAR.enclosure, id: 'crowded-corner', name: 'Crowded corner' },
  series: {
    ...ALDER_YEAR.series,
    ...Object.fromEntries(
      NAMES.map((name, index) => [`population:population-${index}`, steady(name, 3 ** (index + 1))]),
    ),
  },
};

function steady(name: string, count: number): QuantileSeries {
  const at = (factor: number) => [count * factor, count * factor];
  return {
    name,
    unit: 'animals',
    days: [0, 300],
    expected: at(1),
    q05: at(0.5),
    q25: at(0.8),
    q50: at(1),
    q75: at(1.3),
    q95: at(2),
    band: { high: 5000, highOwner: 'keeper' },
  };
}
