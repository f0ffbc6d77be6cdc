import { existsSync } from 'node:fs';
import { basename } from 'node:path';
import {
  checkEntry,
  isLibraryEntry,
  lifeSpreadOf,
  lifeTableOf,
  problemLine,
  usualTemperature,
} from '@shoreglass/contract';
import { readQuantity, toPlanUnit, unitsOf } from '@shoreglass/engine';
import { library, type Organism, UnknownEntry } from '@shoreglass/library';
import { BadInput } from '../exit-codes.ts';
import { lifeTableText } from '../print/life-table.ts';
import { entryTextAt, textOf } from '../run/read-enclosure.ts';

/** What `life --animal` is asked. */
export interface LifeTableOptions {
  readonly animal: string;
  readonly temperature?: string;
  readonly json: boolean;
}

/** Whether a name is meant as a path: there is such a file or folder, or it looks like one. */
const isPath = (name: string): boolean => existsSync(name) || /[\\/]|\.ya?ml$/i.test(name);

/** The animal of the library of that name, or that a file of the user's holds. @throws BadInput */
export function animalOf(name: string): Organism {
  const text = entryTextAt(name, isLibraryEntry);
  if (text !== undefined) {
    const checked = checkEntry(text, basename(name));
    if (checked.problems) throw new BadInput(checked.problems.map(problemLine).join('\n'));
    if (checked.kind === 'organisms') return checked.animal.organism;
  }
  if (isPath(name)) {
    if (existsSync(name)) textOf(name);
    const wrong = existsSync(name) ? `${name} is not a file of one animal` : `There is no file ${name}`;
    throw new BadInput(
      `${wrong}. docs/guide/library.md says how one is written; an animal of the library is named by its id, such as neocaridina-davidi.`,
    );
  }
  try {
    return library.organism(name);
  } catch (error) {
    if (error instanceof UnknownEntry) throw new BadInput(error.message);
    throw error;
  }
}

/** Reads '24', '24 °C' or '75 °F' of an option [°C]. @throws BadInput */
export function temperatureOf(written: string, option = '--temperature'): number {
  if (/^\s*-?\d+(\.\d+)?\s*$/.test(written)) return Number(written);
  const quantity = readQuantity(written);
  if ('wrong' in quantity || !unitsOf('temperature').includes(quantity.unit))
    throw new BadInput(`${option}: '${written}' cannot be read. Write it like 24 or "75 °F".`);
  return toPlanUnit(quantity.value, quantity.unit, 'temperature');
}

/** Prints the life table of one animal by itself with ample food. */
export function showLifeTable({ animal: name, temperature, json }: LifeTableOptions, width: number): void {
  const animal = animalOf(name);
  const at = temperature === undefined ? usualTemperature(animal) : temperatureOf(temperature);
  const life = lifeTableOf(animal, at);
  const spread = lifeSpreadOf(animal, at);
  process.stdout.write(
    json ? `${JSON.stringify({ ...life, spread })}\n` : `${lifeTableText(animal, { life, spread }, width)}\n`,
  );
}
