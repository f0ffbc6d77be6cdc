import { CYCLE_NOT_MODELLED } from '../cycle/processes.ts';
import type { RunRecord } from '../run/run.ts';
import { seriesSpec } from '../run/series.ts';
import { ENGINE_VERSION } from '../version.ts';
import { type Limit, type Limits, limitsOf, type Side } from './bands.ts';
import { bookReader } from './book-reader.ts';
import { budgetsOf } from './budgets.ts';
import type { AheadDocument, QuantileSeries } from './document.ts';
import { dailyQuantiles, type Ensemble, ensembleOf, type MemberBatch } from './ensemble.ts';
import { eventsOf } from './events.ts';
import { handsOffHorizon } from './horizon.ts';
import type { PreparedOutlook } from './prepare.ts';
import { subjectName, turningPoints } from './turning-points.ts';

const PROBABILITIES = [0.05, 0.25, 0.5, 0.75, 0.95] as const;

function bandOf(limits: readonly Limits[], id: string): Pick<QuantileSeries, 'band'> {
  const narrowest = (side: Side): Limit | undefined =>
    limits.find((each) => each.series === id && each.side === side)?.limits[0];
  const low = narrowest('low');
  const high = narrowest('high');
  if (!low && !high) return {};
  return {
    band: {
      ...(low && { low: low.value, lowOwner: low.owner }),
      ...(high && { high: high.value, highOwner: high.owner }),
    },
  };
}

function allSeries(
  prepared: PreparedOutlook,
  expected: RunRecord,
  ensemble: Ensemble,
): Record<string, QuantileSeries> {
  const { days, seriesIds } = prepared.setting;
  const bands = limitsOf(prepared.plan.bands);
  const dayNumbers = Array.from({ length: days }, (_, day) => day);
  return Object.fromEntries(
    seriesIds.map((id, position) => {
      const expectedDays = [...expected.series[position]!];
      const rows = dailyQuantiles(ensemble, position, days, PROBABILITIES);
      const [q05 = [], q25 = [], q50 = [], q75 = [], q95 = []] = rows;
      const name = subjectName(prepared, id);
      const series = {
        name,
        unit: seriesSpec(id).unit,
        ...bandOf(bands, id),
        days: dayNumbers,
        expected: expectedDays,
      };
      return [id, { ...series, q05, q25, q50, q75, q95 }];
    }),
  );
}

function frame(
  prepared: PreparedOutlook,
  expected: RunRecord,
  members: number,
): Omit<AheadDocument, 'series' | 'turningPoints' | 'handsOffHorizon' | 'budgets'> {
  const { plan, options } = prepared;
  const { nitrogen, phosphorus, carbon, oxygen, calcium, alkalinity, water } = expected.closure;
  return {
    enclosure: { id: plan.id, name: plan.name, startDate: plan.startDate },
    run: { days: options.days, members, seed: options.seed, engineVersion: ENGINE_VERSION },
    closure: { nitrogen, phosphorus, carbon, oxygen, calcium, alkalinity, water },
    notModelled: [...plan.notModelled, ...CYCLE_NOT_MODELLED],
  };
}

/**
 * Returns the outlook as one document from the expected run and all members.
 * @throws Error when members are missing or doubled. @source derived
 */
export function summarise(
  prepared: PreparedOutlook,
  expected: RunRecord,
  batches: readonly MemberBatch[],
): AheadDocument {
  const ensemble = ensembleOf(prepared, batches);
  const events = eventsOf(prepared, ensemble);
  const reader = bookReader(prepared);
  return {
    ...frame(prepared, expected, ensemble.count),
    series: allSeries(prepared, expected, ensemble),
    turningPoints: turningPoints(prepared, ensemble, events, reader),
    handsOffHorizon: handsOffHorizon(events, ensemble.count, prepared.options.days),
    budgets: budgetsOf({
      ...reader,
      rows: expected.bookRows,
      start: expected.start,
      days: prepared.options.days,
    }),
  };
}

/**
 * Returns the expected run alone in the form of an outlook with one member, for a first picture while the members
 * are on their way: its quantiles all equal the expected values.
 * @source derived
 */
export function expectedDocument(prepared: PreparedOutlook, expected: RunRecord): AheadDocument {
  const alone: PreparedOutlook = { ...prepared, options: { ...prepared.options, members: 1 } };
  const { days, seriesIds } = prepared.setting;
  const series = new Float64Array(seriesIds.length * days);
  for (const [s, values] of expected.series.entries()) series.set(values, s * days);
  return summarise(alone, expected, [{ from: 0, to: 1, series, books: expected.bookRows }]);
}
