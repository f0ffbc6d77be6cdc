import type { Plan } from '../plan/plan.ts';
import { feedsFromWater, fullCover, plantedBiomass } from '../run/plant-cover.ts';
import { firstLeaving } from './crossings.ts';
import type { Ensemble } from './ensemble.ts';
import { type Event, eventOf } from './event.ts';
import type { PreparedOutlook } from './prepare.ts';

/** Part of the planted cover below which a planting on land counts as failing. @source assumed */
const FAILING = 0.5;
/** Cover of a planting on land above which its ground counts as grown over [%]. @source common practice, no source */
const GROWN_OVER = 90;

/** Plantings on land: they fail, or close over their ground. `derived`. */
export function plantingEvents({ plan, setting }: PreparedOutlook, ensemble: Ensemble): Event[] {
  const { seriesIds, days, stands } = setting;
  const level = (value: number): Float64Array => new Float64Array(days).fill(value);
  return stands.flatMap(({ id, cover }, planting) => {
    const subject = `planting:${id}` as const;
    const position = seriesIds.indexOf(subject);
    const planted = plan.plants.find((each) => each.id === id);
    const owner = planted?.name ?? id;
    const [low, high] = [Math.round(100 * FAILING * cover), GROWN_OVER];
    const leaving = (limit: number, side: 'low' | 'high') => (member: number) =>
      firstLeaving(ensemble.series(member, position), level(limit), side);
    const fails = eventOf(
      ensemble,
      {
        id: `${subject}-low`,
        subject,
        kind: 'falls below',
        owner,
        source: 'half of what was planted',
        band: { low },
        limit: low,
        planting,
        ends: true,
      },
      leaving(low, 'low'),
    );
    // What came along by accident may well go again.
    const failures = planted?.chance === undefined ? [fails] : [];
    if (cover * 100 >= high) return failures;
    const closes = eventOf(
      ensemble,
      {
        id: `${subject}-high`,
        subject,
        kind: 'rises above',
        owner,
        source: 'nearly all of its ground is covered; common practice: trim',
        band: { high },
        limit: high,
        planting,
        ends: false,
      },
      leaving(high, 'high'),
    );
    return [...failures, closes];
  });
}

const COVER_OF = { submerged: 'plantCover', floating: 'floatingCover', emersed: 'emersedCover' } as const;

/** Plants that feed from the water, by group: they fail, or close over what they grow on and take over. `derived`. */
export function waterPlantEvents({ plan, setting }: PreparedOutlook, ensemble: Ensemble): Event[] {
  const { seriesIds, days } = setting;
  return (Object.keys(COVER_OF) as (keyof typeof COVER_OF)[]).flatMap((group) => {
    const subject = COVER_OF[group];
    const position = seriesIds.indexOf(subject);
    const set = plan.plants.filter((each) => each.group === group && feedsFromWater(each, plan.zones));
    const all = fullCover(plan, group);
    if (position < 0 || !(all > 0)) return [];
    const kept: Plan = { ...plan, plants: plan.plants.filter(({ chance }) => chance === undefined) };
    const planted = Math.round((100 * plantedBiomass(kept, group)) / all);
    const owner = [...new Set(set.map(({ name }) => name))].join(', ');
    const event = (side: 'low' | 'high', limit: number): Event =>
      eventOf(
        ensemble,
        {
          id: `${subject}-${side}`,
          subject,
          kind: side === 'low' ? 'falls below' : 'rises above',
          owner,
          source:
            side === 'low'
              ? 'half of what was planted'
              : 'nearly all the room they have; common practice: thin out',
          band: { [side]: limit },
          limit,
          ends: side === 'low',
        },
        (member) => firstLeaving(ensemble.series(member, position), new Float64Array(days).fill(limit), side),
      );
    const low = Math.round(FAILING * planted);
    return [
      ...(low > 0 ? [event('low', low)] : []),
      ...(planted < GROWN_OVER ? [event('high', GROWN_OVER)] : []),
    ];
  });
}
