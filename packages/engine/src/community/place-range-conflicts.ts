import { capital } from '../outlook/capital.ts';
import { seriesSpec } from '../run/series.ts';
import { type Conflict, type Expected, type Inhabitant, type PlaceFacts, shown } from './inhabitant.ts';

/** How far outside its range a species is before it is told, in the unit of the series: lamp and pump warm, readings
 * round. @source assumed */
const MARGIN: Readonly<Record<string, number>> = {
  waterTemperature: 1.5,
  airTemperature: 1.5,
  GH: 0.2,
  KH: 0.2,
};

/** What the place gives beside what one of those who live there needs, on the side on which it falls short. */
function outside(one: Inhabitant, expected: Expected): Conflict[] {
  const range = one.ranges.find(({ series }) => series === expected.series);
  if (!range) return [];
  const { name, unit } = seriesSpec(expected.series);
  const margin = MARGIN[expected.series] ?? 0;
  const { low, high } = range;
  const tell = (limit: typeof low, given: number, side: 'least' | 'most'): Conflict[] => {
    const far = limit ? (side === 'least' ? limit.value - given : given - limit.value) : 0;
    if (!limit || !(far > margin)) return [];
    const say = (value: number): string => `${shown(value)} ${unit}`.trim();
    const isOfRoom = expected.from === 'the room';
    return [
      {
        kind: 'range',
        who: [one.id],
        severity: 'warning',
        sentence: `${capital(one.name)} need ${name} of at ${side} ${say(limit.value)}; ${expected.from} gives ${say(given)}, ${say(far)} too ${side === 'least' ? 'little' : 'much'}.`,
        source: limit.source,
        mend: isOfRoom
          ? 'Choose another species, place or heater.'
          : 'Choose another water, a blend, or another species.',
      },
    ];
  };
  return [...tell(low, expected.low, 'least'), ...tell(high, expected.high, 'most')];
}

/**
 * Species that need what the room or the fill water does not give, and by how much; guests are not asked.
 * @source derived: comparison of the species' ranges with what can be told before any run
 */
export function placeRangeConflicts(all: readonly Inhabitant[], place: PlaceFacts | undefined): Conflict[] {
  const expected = place?.expected ?? [];
  return all
    .filter(({ isGuest }) => isGuest !== true)
    .flatMap((one) => {
      const told = (series: Expected['series']): Conflict[] =>
        expected.filter((each) => each.series === series).flatMap((each) => outside(one, each));
      const others = expected.filter(({ series }) => series !== 'airTemperature');
      // Where the room is what makes the water too cold or warm, the air would say the same again.
      const air = told('waterTemperature').length > 0 ? [] : told('airTemperature');
      return [...others.flatMap((each) => outside(one, each)), ...air];
    });
}
