import { type AnyDerivation, type AnyProcess, listed, listedDerivation } from '../process/contract.ts';
import { ammoniaOxidation } from './ammonia-oxidation.ts';
import { animalRelease } from './animal-release.ts';
import { attachedAlgae } from './attached-algae.ts';
import { bacterialFilm } from './bacterial-film.ts';
import { carbonateDissolution } from './carbonate-dissolution.ts';
import { carcassBreakdown } from './carcass-breakdown.ts';
import { cationExchange } from './cation-exchange.ts';
import { denitrification } from './denitrification.ts';
import { emersedPlants } from './emersed-plants.ts';
import { feedBreakdown } from './feed-breakdown.ts';
import { floatingPlants } from './floating-plants.ts';
import { gasExchange } from './gas-exchange.ts';
import { grazing } from './grazing.ts';
import { litterBreakdown } from './litter-breakdown.ts';
import { mineralisation } from './mineralisation.ts';
import { nitriteOxidation } from './nitrite-oxidation.ts';
import { organicCarbonBreakdown } from './organic-carbon-breakdown.ts';
import { phosphateSorption } from './phosphate-sorption.ts';
import { plantRemains } from './plant-remains.ts';
import { shellBuilding } from './shell-building.ts';
import { submergedPlants } from './submerged-plants.ts';
import { surfaceCover } from './surface-cover.ts';
import { suspendedAlgae } from './suspended-algae.ts';
import { underwaterLight } from './underwater-light.ts';
import { woodLeaching } from './wood-leaching.ts';

/** The processes of the cycle, in the order in which budgets list them. */
export const CYCLE_PROCESSES: readonly AnyProcess[] = [
  listed(gasExchange),
  listed(woodLeaching),
  listed(organicCarbonBreakdown),
  listed(carbonateDissolution),
  listed(cationExchange),
  listed(phosphateSorption),
  listed(shellBuilding),
  listed(mineralisation),
  listed(feedBreakdown),
  listed(carcassBreakdown),
  listed(litterBreakdown),
  listed(plantRemains),
  listed(ammoniaOxidation),
  listed(nitriteOxidation),
  listed(denitrification),
  listed(bacterialFilm),
  listed(attachedAlgae),
  listed(suspendedAlgae),
  listed(submergedPlants),
  listed(floatingPlants),
  listed(emersedPlants),
  listed(grazing),
  listed(animalRelease),
];

/** What the processes read that is not a pool and not set from outside; the water chemistry comes on top. */
export const CYCLE_DERIVATIONS: readonly AnyDerivation[] = [
  listedDerivation(underwaterLight),
  listedDerivation(surfaceCover),
];

/** What happens in real enclosures and not in this cycle, one sentence each, for the keeper. */
export const CYCLE_NOT_MODELLED: readonly string[] = [
  'Plants on dry land get nutrients of the pool only with the water that the ground draws up.',
  'A closed mat of floating plants shades the water but does not slow its exchange of gases with the air.',
  'Rooted plants take nutrients from the water only, not from the substrate, and store none but what they respired.',
  'Soil gives up no aluminium or iron in acid water, binds no colour, and keeps the phosphate it bound where oxygen runs out.',
  'Wood under water feeds no fungi: it leaches and stays.',
  'Living moss exchanges no ions with the water; peat, soil and dried moss under water do.',
  'Nothing produces hydrogen sulfide or methane where oxygen runs out.',
  'Light does not bleach coloured water.',
  'Water too warm for bacteria speeds them up further instead of harming them.',
];
