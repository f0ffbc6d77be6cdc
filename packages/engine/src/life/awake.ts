/** When a kind of animal is up and eats. */
export const ACTIVE_TIMES = ['day', 'night', 'twilight', 'always'] as const;
export type ActiveTime = (typeof ACTIVE_TIMES)[number];

/** Light of a stretch of the day: lamps lit, about their switching, or dark. */
export const DAY_LIGHTS = ['light', 'dusk', 'dark'] as const;
export type DayLight = (typeof DAY_LIGHTS)[number];

/**
 * How keenly each kind eats by light, over its keenest hours [1].
 * @source assumed: animals of the day feed little after dark (mudskippers: Colombini et al. 1996, abstract), those of the
 * night come out at dusk; a tenth, a fifth and a half are judgement
 */
const KEENNESS: Readonly<Record<ActiveTime, Readonly<Record<DayLight, number>>>> = {
  day: { light: 1, dusk: 0.5, dark: 0.1 },
  night: { light: 0.1, dusk: 0.5, dark: 1 },
  twilight: { light: 0.2, dusk: 1, dark: 0.4 },
  always: { light: 1, dusk: 1, dark: 1 },
};

/** How fast each kind eats in a stretch over its mean of the day [1]. */
export type Activity = Readonly<Record<ActiveTime, number>>;

/**
 * How fast each kind of animal eats by light over its mean of the day [1], so that its day's appetite stays what it is.
 * keenness / sum(keenness hours / 24).
 * @param hours of light, dusk and dark in the day [h], together 24
 * @source derived from the table above
 */
export function activityByLight(
  hours: Readonly<Record<DayLight, number>>,
): Readonly<Record<DayLight, Activity>> {
  const of = (light: DayLight): Activity =>
    Object.fromEntries(
      ACTIVE_TIMES.map((active) => {
        const mean = DAY_LIGHTS.reduce((sum, each) => sum + (KEENNESS[active][each] * hours[each]) / 24, 0);
        return [active, KEENNESS[active][light] / mean];
      }),
    ) as unknown as Activity;
  return { light: of('light'), dusk: of('dusk'), dark: of('dark') };
}

/** Whether a kind of animal is up in some light: it eats at least half as keenly as at its best. `derived`. */
export function isAwake(active: ActiveTime, light: DayLight): boolean {
  return KEENNESS[active][light] >= 0.5;
}
