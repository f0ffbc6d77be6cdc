import { DISSOLVED_IDS, type WaterComposition } from '../plan/water-composition.ts';
import { compose, type ParameterTable, type ReactionSystem } from '../process/compose.ts';
import { listedDerivation } from '../process/contract.ts';
import { valuesWith } from '../process/process-test-kit.ts';
import { netElement } from '../process/stoichiometry.ts';
import { createIntegrator } from '../run/integrator.ts';
import { ELEMENTS, type ElementId } from '../variables/elements.ts';
import { STATE_IDS, VARIABLE_INDEX as V, type VariableId, variableSpec } from '../variables/variables.ts';
import { equilibrateWithAir } from '../water/equilibrate-with-air.ts';
import { waterChemistry } from '../water/water-chemistry.ts';
import { CYCLE_DERIVATIONS, CYCLE_PROCESSES } from './processes.ts';

export type Entries = Readonly<Partial<Record<VariableId, number>>>;

export interface TankSetup {
  /** Medians of every process, by id and key. */
  readonly parameters: ParameterTable;
  /** Volume, areas, temperature and the like; anything left out is the forty litres of `FORTY_LITRES`. */
  readonly setting?: Entries;
  /** Dissolved at the start [mol/m3]; oxygen and inorganic carbon may be left out and are then those of aired water. */
  readonly water: Entries;
  /** In the glass at the start [mol]. */
  readonly contents?: Entries;
  /** Processes left out, such as the exchange of gases in a closed bottle. */
  readonly without?: readonly string[];
}

/** A body of water with the whole cycle in it, kept by hand: no animals, no climate. */
export interface Tank {
  readonly values: Float64Array;
  readonly system: ReactionSystem;
  /** Concentration [mol/m3]. */
  readonly holds: (id: VariableId) => number;
  /** Lets `hours` pass under a light at the surface [umol/m2/s]. */
  pass(hours: number, light?: number): void;
  /** Adds amounts [mol], or takes them away when negative; booked as care. */
  add(amounts: Entries): void;
  /** Extent of a reaction so far [its unit]. @throws Error when none has the name */
  extent(reaction: string): number;
  /** Largest relative error of closure over all elements, charge included. */
  closure(): number;
}

/** Forty litres, twenty centimetres deep, gently stirred, 24 °C, in a lived-in room, over 4 cm of sand. */
export const FORTY_LITRES: Entries = {
  waterVolume: 0.04,
  waterArea: 0.2,
  waterDepth: 0.2,
  submergedArea: 0.6,
  darkFilmSurface: 0.5,
  wetSubstrate: 0.17,
  waterTemperature: 24,
  roomCarbonDioxide: 600,
  airPressure: 101325,
  surfaceRenewal: 0.5,
  feedPace: 1,
  litterPace: 1,
  remainsPace: 1,
  carcassPace: 1,
};

/** Middling tap water of 1.6 meq/L of alkalinity [mol/m3]. */
export const TAP_WATER: Entries = {
  calcium: 0.8,
  magnesium: 0.25,
  sodium: 0.4,
  potassium: 0.05,
  chloride: 0.5,
  sulfate: 0.1,
};

/** Oxygen and inorganic carbon of a water in balance with the air of its room [mol/m3]. */
function aired(water: Entries, setting: Entries): Entries {
  const composition = Object.fromEntries(DISSOLVED_IDS.map((id) => [id, water[id] ?? 0]));
  const { oxygen, dissolvedInorganicCarbon } = equilibrateWithAir(
    composition as unknown as WaterComposition,
    setting.waterTemperature!,
    { carbonDioxide: setting.roomCarbonDioxide!, pressure: setting.airPressure! },
  );
  return { oxygen, dissolvedInorganicCarbon };
}

function total(element: ElementId, values: Float64Array, magnitude: (x: number) => number): number {
  return STATE_IDS.reduce(
    (sum, id) => sum + magnitude((variableSpec(id).content?.[element] ?? 0) * values[V[id]]!),
    0,
  );
}

/** Fills a tank. @throws Error or RangeError as `compose` does. */
export function fillTank({ parameters, setting, water, contents, without = [] }: TankSetup): Tank {
  const system = compose(
    CYCLE_PROCESSES.filter(({ id }) => !without.includes(id)),
    [listedDerivation(waterChemistry), ...CYCLE_DERIVATIONS],
    parameters,
  );
  const drivers = { ...FORTY_LITRES, ...setting };
  const values = valuesWith(drivers);
  const volume = values[V.waterVolume]!;
  for (const [id, amount] of Object.entries({ ...aired(water, drivers), ...water }))
    values[V[id as VariableId]] = amount * volume;
  for (const [id, amount] of Object.entries(contents ?? {})) values[V[id as VariableId]] = amount;
  const extents = new Float64Array(system.reactions.length);
  const integrator = createIntegrator(system, STATE_IDS.length);
  const plain = (x: number): number => x;
  const booked = new Map(ELEMENTS.map((element) => [element, total(element, values, plain)]));
  system.derive(values);
  return {
    values,
    system,
    holds: (id) => values[V[id]]! / values[V.waterVolume]!,
    pass(hours, light = 0) {
      values[V.lightAtSurface] = light;
      integrator.advance(values, hours * 3600, extents);
    },
    add(amounts) {
      for (const element of ELEMENTS) {
        let brought = 0;
        for (const [id, amount] of Object.entries(amounts))
          brought += (variableSpec(id as VariableId).content?.[element] ?? 0) * amount;
        booked.set(element, booked.get(element)! + brought);
      }
      for (const [id, amount] of Object.entries(amounts))
        values[V[id as VariableId]] = values[V[id as VariableId]]! + amount;
      system.derive(values);
    },
    extent(reaction) {
      const at = system.reactions.findIndex(({ name }) => name === reaction);
      if (at < 0) throw new Error(`no reaction is named ${reaction}`);
      return extents[at]!;
    },
    closure() {
      const errors = ELEMENTS.map((element) => {
        let crossed = 0;
        for (const [r, reaction] of system.reactions.entries())
          crossed += extents[r]! * netElement(reaction.stoichiometry, element);
        const error = total(element, values, plain) - booked.get(element)! - crossed;
        const size = total(element, values, Math.abs) + Math.abs(crossed);
        return size > 0 ? Math.abs(error) / size : 0;
      });
      return Math.max(...errors);
    },
  };
}

/** A day of `lit` hours of light [umol/m2/s] in the middle of darkness; calls `each` after every hour. */
export function passDay(tank: Tank, light: number, lit: number, each?: (hour: number) => void): void {
  const dawn = 12 - lit / 2;
  const dusk = 12 + lit / 2;
  for (let hour = 0; hour < 24; hour += 1) {
    const shining = Math.max(0, Math.min(dusk, hour + 1) - Math.max(dawn, hour));
    tank.pass(1, light * shining);
    each?.(hour + 1);
  }
}
