import { library } from '@shoreglass/library';
import { culture, day } from '../culture.ts';
import { type Experiment, NotStated, type Question, temperatureOf } from '../experiment.ts';

/** Hard water of a lake in summer, aired, some nitrogen and phosphorus in it [mol/m3]. @source assumed */
const LAKE = { calcium: 1, magnesium: 0.2, sodium: 0.4, potassium: 0.05, chloride: 0.5, sulfate: 0.1 };
const NUTRIENTS = { nitrate: 0.03, phosphate: 0.0006 };
/** Light among shoots one to three metres deep on a summer day [umol/m2/s], 15 h. @source assumed */
const LIGHT = 100;

/** Relative growth rate of loose shoots over twenty days [1/d]. */
function relativeGrowth(question: Question): number {
  const plant = Object.values(library.data.plants).find(({ name }) =>
    question.topic.toLowerCase().includes(name),
  );
  if (!plant) throw new NotStated('no plant of the library is named');
  const start = 0.5;
  const water = culture({
    water: { ...LAKE, ...NUTRIENTS },
    contents: { submergedPlants: start },
    setting: {
      waterVolume: 0.3,
      waterArea: 1,
      waterDepth: 0.3,
      submergedArea: 1,
      darkFilmSurface: 0,
      wetSubstrate: 0,
      waterTemperature: temperatureOf(question, 18),
      bicarbonateUsers: plant.bicarbonate?.value ?? 0,
    },
    without: ['attached-algae', 'suspended-algae'],
  });
  const days = 20;
  for (let k = 0; k < days; k += 1) day(water, { light: LIGHT, lit: 15, medium: NUTRIENTS });
  return Math.log(water.amount('submergedPlants') / start) / days;
}

export const hornwortGrowth: Experiment = {
  name: 'growth of submerged plants in a lake',
  asks: /hornwort growth/i,
  answer: relativeGrowth,
};
