import { describe, expect, it } from 'vitest';
import { ACTIVE_TIMES, activityByLight, DAY_LIGHTS } from './awake.ts';

describe('activity by light', () => {
  it.each([
    { light: 10, dusk: 4, dark: 10 },
    { light: 24, dusk: 0, dark: 0 },
    { light: 0, dusk: 0, dark: 24 },
    { light: 3, dusk: 2, dark: 19 },
  ])('leaves the appetite of a day what it is: $light h of light', (hours) => {
    const activity = activityByLight(hours);
    for (const active of ACTIVE_TIMES) {
      const day = DAY_LIGHTS.reduce((sum, light) => sum + (activity[light][active] * hours[light]) / 24, 0);
      expect(day).toBeCloseTo(1, 12);
    }
    expect(activity.light.always).toBe(1);
    expect(activity.dark.always).toBe(1);
  });

  it('is highest when each kind is awake', () => {
    const { light, dusk, dark } = activityByLight({ light: 10, dusk: 4, dark: 10 });
    expect(light.day).toBeGreaterThan(dusk.day);
    expect(dark.night).toBeGreaterThan(dusk.night);
    expect(dusk.twilight).toBeGreaterThan(dark.twilight);
  });
});
