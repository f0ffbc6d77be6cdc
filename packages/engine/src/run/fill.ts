import { wetLayers } from '../geometry/wet-layers.ts';
import { LAND_BREAKDOWN } from '../life/land-breakdown.ts';
import { createWoodMould } from '../life/wood-mould.ts';
import type { HardscapePiece } from '../plan/plan.ts';
import { checkedParameters } from '../process/compose.ts';
import { COMPOSITIONS } from '../variables/compositions.ts';
import { VARIABLE_INDEX as V } from '../variables/variables.ts';
import { comesAlong } from './arrivals.ts';
import { placeCarbonate } from './carbonate-grains.ts';
import { bringShells, passDay } from './pass-day.ts';
import { exchangersOf, placeExchangers } from './place-exchangers.ts';
import { placeLitter } from './place-litter.ts';
import { phosphateBindersOf, placePhosphateBinders } from './place-phosphate.ts';
import { PLANT_POOLS, type PlantPool, plantedBiomass, type RootedInWater } from './plant-cover.ts';
import { pour } from './pour.ts';
import { wetShare } from './wet-share.ts';
import { setConstantDrivers, setWaterDrivers, type World } from './world.ts';

/** Parameters of the start that members vary: factors on what the plan states. */
const START_PARAMETERS = {
  nitrifierFactor: { unit: '1', min: 0.01, max: 100, meaning: 'nitrifiers present over those stated' },
  algaeFactor: { unit: '1', min: 0.01, max: 100, meaning: 'attached algae present over those stated' },
  leachableFactor: { unit: '1', min: 0.01, max: 100, meaning: 'leachable acid in the wood over that stated' },
  exchangerFactor: { unit: '1', min: 0.1, max: 10, meaning: 'exchange sites over those stated' },
  acidHoldFactor: { unit: '1', min: 1e-3, max: 1e3, meaning: 'hold on hydrogen ions over that stated' },
  plantFactor: { unit: '1', min: 0.1, max: 10, meaning: 'plant biomass at a given cover over that stated' },
} as const;
const START = { id: 'start', parameters: START_PARAMETERS };

/** Bacterial film on the surfaces on the first day over attached algae [mol/mol]. @source assumed: traces of either */
const FILM_PER_ALGAE = 0.2;

function addTo(world: World, id: keyof typeof V, amount: number): void {
  world.values[V[id]] = world.values[V[id]]! + amount;
}

/** What wood would give to water within weeks, mould feeds on where it is dry [mol C]. @source assumed */
const mouldySugars = ({ woodLeachable = 0 }: HardscapePiece['contents']): number => woodLeachable;

function placeHardscape(world: World): void {
  const { values, kinds } = world;
  const { leachableFactor } = checkedParameters(START, world.draw.parameters);
  const { hardscape, water } = world.setting.plan;
  for (const { kind, contents, course, grain = 0, pace = 1 } of hardscape) {
    const wet = wetShare(course, water.level);
    if (kind === 'wood') addTo(world, 'landWoodCarbon', (1 - wet) * mouldySugars(contents) * leachableFactor);
    addTo(world, 'woodLeachable', wet * (contents.woodLeachable ?? 0) * leachableFactor);
    addTo(world, 'woodLeachableSlow', wet * (contents.woodLeachableSlow ?? 0) * leachableFactor);
    if (contents.litterCarbon) {
      const {
        litterCarbon: carbon,
        litterNitrogen: nitrogen = 0,
        litterPhosphorus: phosphorus = 0,
      } = contents;
      const leachable = contents.litterLeachable ?? 0;
      placeLitter(values, { carbon, nitrogen, phosphorus, leachable, pace }, kinds.litter);
    }
    if (grain <= 0) continue;
    placeCarbonate(values, { mineral: 'calcite', amount: wet * (contents.carbonateSolid ?? 0), grain });
    placeCarbonate(values, { mineral: 'aragonite', amount: wet * (contents.aragoniteSolid ?? 0), grain });
  }
}

function placeGround(world: World): void {
  const { plan } = world.setting;
  const factors = checkedParameters(START, world.draw.parameters);
  for (const { layer, volume } of wetLayers(plan, plan.water.level)) {
    addTo(world, 'woodLeachable', (layer.leachable?.quick ?? 0) * volume * factors.leachableFactor);
    addTo(world, 'woodLeachableSlow', (layer.leachable?.slow ?? 0) * volume * factors.leachableFactor);
  }
  placeExchangers(world.values, exchangersOf(plan), {
    sites: factors.exchangerFactor,
    acidStrength: factors.acidHoldFactor,
  });
  const { draw, values } = world;
  placePhosphateBinders(values, phosphateBindersOf(plan), draw.parameters, factors.exchangerFactor);
}

function placeLiving(world: World): void {
  const { plan } = world.setting;
  const factors = checkedParameters(START, world.draw.parameters);
  addTo(world, 'ammoniaOxidisers', plan.start.ammoniaOxidisers * factors.nitrifierFactor);
  addTo(world, 'nitriteOxidisers', plan.start.nitriteOxidisers * factors.nitrifierFactor);
  addTo(world, 'attachedAlgae', plan.start.attachedAlgae * factors.algaeFactor);
  addTo(world, 'biofilm', plan.start.attachedAlgae * FILM_PER_ALGAE * factors.algaeFactor);
  const { nitrogenPerCarbon, phosphorusPerCarbon } = COMPOSITIONS.algae;
  addTo(world, 'detritusCarbon', plan.start.detritusCarbon);
  addTo(world, 'detritusNitrogen', plan.start.detritusCarbon * nitrogenPerCarbon);
  addTo(world, 'detritusPhosphorus', plan.start.detritusCarbon * phosphorusPerCarbon);
  const there = {
    ...plan,
    plants: plan.plants.filter(({ id, chance }) => comesAlong(world.draw.demography, id, chance)),
  };
  for (const [group, pool] of Object.entries(PLANT_POOLS) as [RootedInWater, PlantPool][]) {
    addTo(world, pool, plantedBiomass(there, group) * factors.plantFactor);
  }
  world.landPlants?.plant(world.values, factors.plantFactor);
}

/** Fungi on litter of the land on the first day over its carbon, and mineral nutrients over the soil's. @source assumed */
const FUNGI_PER_LITTER = 0.01;
const MINERAL_PART = 0.02;

function placeLand(world: World): void {
  const { land } = world.setting.plan;
  if (!land) return;
  addTo(world, 'landLitterCarbon', land.litterCarbon);
  addTo(world, 'landLitterNitrogen', land.litterNitrogen);
  addTo(world, 'landLitterPhosphorus', land.litterPhosphorus);
  addTo(world, 'landFungi', FUNGI_PER_LITTER * land.litterCarbon);
  world.values[V.fungiInLeaves] = checkedParameters(LAND_BREAKDOWN, world.draw.parameters).fungiInLeaves;
  addTo(world, 'soilCarbon', land.soilCarbon);
  addTo(world, 'soilNitrogen', land.soilNitrogen);
  addTo(world, 'soilPhosphorus', land.soilPhosphorus);
  addTo(world, 'soilMineralNitrogen', MINERAL_PART * land.soilNitrogen);
  addTo(world, 'soilMineralPhosphorus', MINERAL_PART * land.soilPhosphorus);
}

/** Fills an empty world as the plan says: water, hardscape, living start, plants and founders. `derived`. */
export function fill(world: World): void {
  const { plan } = world.setting;
  const temperature = world.climate.state.waterTemperature;
  setConstantDrivers(world);
  setWaterDrivers(world, temperature);
  pour(world, plan.water.fill, world.volume, temperature);
  placeHardscape(world);
  if (world.values[V.landWoodCarbon]! > 0) {
    const parameters = checkedParameters(LAND_BREAKDOWN, world.draw.parameters);
    world.woodMould = createWoodMould(parameters, world.values[V.landWoodCarbon]!);
  }
  placeGround(world);
  placeLiving(world);
  placeLand(world);
  world.life.found(world.values);
  bringShells(world);
  passDay(world);
}
