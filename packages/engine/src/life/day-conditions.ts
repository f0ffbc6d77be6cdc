import type { Shore } from './drowning.ts';
import type { AirConditions } from './surroundings.ts';
import type { WaterConditions } from './water-stress.ts';

/** Water and air of one day as animals meet them. */
export interface DayConditions extends WaterConditions {
  /** Left out: mild and moist. */
  readonly air?: AirConditions;
  /** Part of the cover of the glass that is open [0..1]; closed when left out. */
  readonly openCover?: number;
  /** Where water and land meet; a gentle bank when left out. */
  readonly shore?: Shore;
}
