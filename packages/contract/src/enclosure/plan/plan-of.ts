import type { Plan } from '@shoreglass/engine';
import type { Library } from '@shoreglass/library';
import type { EnclosureDocument } from '../read/read-enclosure.ts';
import { bandsOf } from './bands-of.ts';
import { actionsOf, routinesOf } from './care-of.ts';
import { changeLimitsOf } from './change-limits-of.ts';
import { devicesOf } from './devices-of.ts';
import { drawnOf } from './drawn-of.ts';
import { plantingOf, populationOf } from './inhabitants.ts';
import { landOf } from './land-of.ts';
import { notModelledOf } from './not-modelled.ts';
import { type DatedSeries, roomOf } from './room-of.ts';
import { startOf } from './start-of.ts';
import { blendOf, waterFinder } from './water-of.ts';

/**
 * The plan of an enclosure: every name resolved by the library, all in the plan's units.
 * @param series the measured room, when the file names one; see `checkEnclosure` for reading it
 * @throws UnknownEntry for a name the library does not hold, Error or RangeError for what cannot be planned:
 *   `checkEnclosure` finds all of these first, with their places.
 */
export function planOf({ id, content }: EnclosureDocument, library: Library, series?: DatedSeries): Plan {
  const find = waterFinder(content, library);
  const sources = { library, waterNamed: (name: string) => find(name).composition };
  const priors = library.parameterPriors();
  const drawn = drawnOf(content, library);
  const populations = (content.animals ?? []).map((animals) =>
    populationOf(animals, library.organism(animals.species)),
  );
  return {
    id,
    name: content.name,
    startDate: content.start,
    ...drawn,
    start: startOf(content, drawn, priors),
    room: roomOf(content, series),
    devices: devicesOf(content.devices ?? {}, content.water.level, (blend) => blendOf(blend, find)),
    plants: (content.plants ?? []).map((planting, index) => plantingOf(planting, index, library)),
    populations,
    land: landOf(drawn, library),
    routines: (content.routines ?? []).flatMap((routine) => routinesOf(routine, sources)),
    actions: actionsOf(content, sources),
    bands: bandsOf(content, library),
    changeLimits: changeLimitsOf(content, library),
    priors,
    notModelled: notModelledOf(content, library),
  };
}
