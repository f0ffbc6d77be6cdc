import { lossToRemains } from '../cycle/producer.ts';
import type { SingleCare } from '../plan/care.ts';
import { checkedParameters } from '../process/compose.ts';
import type { Book } from '../run/book.ts';
import { placeCarbonate } from '../run/carbonate-grains.ts';
import { bringShells } from '../run/pass-day.ts';
import { placeLitter } from '../run/place-litter.ts';
import { fullCover, PLANT_POOLS, type RootedInWater } from '../run/plant-cover.ts';
import { drain, pour } from '../run/pour.ts';
import type { World } from '../run/world.ts';
import { COMPOSITIONS } from '../variables/compositions.ts';
import { VARIABLE_INDEX as V, type VariableId } from '../variables/variables.ts';

/** Parameters of care that members vary. */
const CARE_PARAMETERS = {
  portionFactor: { unit: '1', min: 0.2, max: 5, meaning: 'feed given over the portion stated' },
} as const;
const CARE = { id: 'care', parameters: CARE_PARAMETERS };

function add({ values }: World, id: keyof typeof V, amount: number): void {
  values[V[id]] = values[V[id]]! + amount;
}

function topOff(world: World, book: Book): void {
  const { plan, geometry } = world.setting;
  const missing = geometry.volumeAt(plan.water.level) - world.volume;
  if (missing <= 0) return;
  book.care(world, 'top-off', () =>
    pour(world, plan.water.topOff, missing, world.climate.state.airTemperature),
  );
  book.water('top-off', missing);
  world.volume += missing;
}

function changeWater(world: World, book: Book, care: Extract<SingleCare, { kind: 'water change' }>): void {
  const exchanged = world.volume * care.fraction;
  book.care(world, 'water change', () => {
    drain(world, care.fraction);
    pour(world, care.water, exchanged, world.climate.state.airTemperature);
  });
}

type Trim = Extract<SingleCare, { kind: 'trim' }>;

function trimInWater(world: World, keepCover: number, group: RootedInWater, left: boolean): void {
  const pool = PLANT_POOLS[group];
  const cut = world.values[V[pool]]! - fullCover(world.setting.plan, group) * keepCover;
  if (!(cut > 0)) return;
  if (!left) {
    add(world, pool, -cut);
    return;
  }
  for (const [id, share = 0] of Object.entries(lossToRemains(pool, COMPOSITIONS[pool])))
    add(world, id as VariableId, share * cut);
}

function trim(world: World, { keepCover, group = 'submerged', zone, left = false }: Trim): void {
  if (group !== 'moss' && group !== 'land') {
    trimInWater(world, keepCover, group, left);
    return;
  }
  const layer = group === 'moss' ? 'moss' : 'tall';
  world.landPlants?.trim(world.values, { layer, keepCover, left, ...(zone === undefined ? {} : { zone }) });
}

/**
 * Carries out one piece of care and books what it brought and took.
 * @throws Error for a population the plan does not hold.
 * @source derived: amounts added and taken; a water change replaces the same share of everything dissolved
 */
export function applyCare(world: World, book: Book, care: SingleCare): void {
  switch (care.kind) {
    case 'feed': {
      const mass = care.mass * checkedParameters(CARE, world.draw.parameters).portionFactor;
      book.care(world, 'feeding', () => {
        if (care.onLand) {
          add(world, 'remainsCarbon', care.feed.carbon * mass);
          add(world, 'remainsNitrogen', care.feed.nitrogen * mass);
          add(world, 'remainsPhosphorus', care.feed.phosphorus * mass);
          return;
        }
        add(world, 'feedCarbon', care.feed.carbon * mass);
        world.kinds.feed.add(care.feed.carbon * mass, care.feed.pace ?? 1, care.feed.meaty);
        world.values[V.feedPace] = world.kinds.feed.pace();
        world.life.taste(world.kinds.feed.meaty());
        add(world, 'feedNitrogen', care.feed.nitrogen * mass);
        add(world, 'feedPhosphorus', care.feed.phosphorus * mass);
      });
      return;
    }
    case 'top-off':
      topOff(world, book);
      return;
    case 'water change':
      changeWater(world, book, care);
      return;
    case 'trim':
      book.care(world, 'trimming', () => trim(world, care));
      return;
    case 'add animals':
      book.care(world, 'animals added or taken', () => {
        world.life.add(care.population, care.stage, care.count, world.values);
        bringShells(world);
      });
      return;
    case 'remove animals':
      book.care(world, 'animals added or taken', () => {
        world.life.remove(care.population, care, world.values);
        bringShells(world);
      });
      return;
    case 'add carbonate':
      book.care(world, 'carbonate added', () =>
        placeCarbonate(world.values, { mineral: care.mineral ?? 'calcite', ...care }),
      );
      return;
    case 'add litter':
      book.care(world, 'litter added', () => {
        if (care.onLand) {
          add(world, 'landLitterCarbon', care.carbon + (care.leachable ?? 0));
          add(world, 'landLitterNitrogen', care.nitrogen);
          add(world, 'landLitterPhosphorus', care.phosphorus);
          return;
        }
        placeLitter(world.values, { leachable: 0, pace: 1, ...care }, world.kinds.litter);
      });
  }
}
