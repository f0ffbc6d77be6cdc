import { NotStated, type Quantity } from './quantities.ts';
import { rear } from './rearing.ts';

const LONGEST = 3000;
const COHORT = 1000;
/**
 * Of a stream that is warm the year round [degC]; the abstract names no temperature. @source assumed: springs that are
 * called so stand at 17 to 20 degC in winter (Onuki 2021, another stream)
 */
const WARM_STREAM = 20;

/** Age at the first eggs and age by which half have died [d], of animals of a field study, by a rearing. */
export const firstEggsAndLife: Quantity = ({ species, temperatures, text }) => {
  const temperature = temperatures[0] ?? (/warm stream/i.test(text) ? WARM_STREAM : undefined);
  if (temperature === undefined) throw new NotStated('the conditions name no temperature');
  const rearing = rear(species, { temperature, count: COHORT });
  let eggs: number | undefined;
  let half: number | undefined;
  for (let day = 1; day <= LONGEST && half === undefined; day += 1) {
    rearing.pass('ample');
    rearing.keepOldest();
    if (eggs === undefined && rearing.population.day.laid > 0) eggs = day;
    if (!(rearing.alive() > COHORT / 2)) half = day;
  }
  if (eggs === undefined || half === undefined) throw new Error('the animals never breed, or half never die');
  return [eggs, half];
};
