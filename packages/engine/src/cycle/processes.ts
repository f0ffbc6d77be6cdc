import { type AnyDerivation, type AnyProcess, listed, listedDerivation } from '../process/contract.ts';
import { ammoniaOxidation } from './ammonia-oxidation.ts';
import { animalRelease } from './animal-release.ts';
import { attachedAlgae } from './attached-algae.ts';
import { carbonateDissolution } from './carbonate-dissolution.ts';
import { feedBreakdown } from './feed-breakdown.ts';
import { gasExchange } from './gas-exchange.ts';
import { grazing } from './grazing.ts';
import { litterBreakdown } from './litter-breakdown.ts';
import { mineralisation } from './mineralisation.ts';
import { nitriteOxidation } from './nitrite-oxidation.ts';
import { organicCarbonBreakdown } from './organic-carbon-breakdown.ts';
import { submergedPlants } from './submerged-plants.ts';
import { underwaterLight } from './underwater-light.ts';
import { woodLeaching } from './wood-leaching.ts';

/** The processes of the cycle, in the order in which budgets list them. */
export const CYCLE_PROCESSES: readonly AnyProcess[] = [
  listed(gasExchange),
  listed(woodLeaching),
  listed(organicCarbonBreakdown),
  listed(carbonateDissolution),
  listed(mineralisation),
  listed(feedBreakdown),
  listed(litterBreakdown),
  listed(ammoniaOxidation),
  listed(nitriteOxidation),
  listed(attachedAlgae),
  listed(submergedPlants),
  listed(grazing),
  listed(animalRelease),
];

/** What the processes read that is not a pool and not set from outside; the water chemistry comes on top. */
export const CYCLE_DERIVATIONS: readonly AnyDerivation[] = [listedDerivation(underwaterLight)];

/** What happens in real enclosures and not in this cycle, one sentence each, for the keeper. */
export const CYCLE_NOT_MODELLED: readonly string[] = [
  'Nitrate is not lost to nitrogen gas in deep or muddy substrate, so it may rise more here than in the enclosure.',
  'Algae suspended in the water (green water) are left out; only algae on surfaces grow.',
  'Floating plants, moss and land plants take no nutrients from the water.',
  'Rooted plants take nutrients from the water only, not from the substrate, and store none for lean times.',
  'Soil, peat and moss exchange no calcium or acid with the water.',
  'Dissolved calcium carbonate never comes out of solution again as scale.',
  'Fungi and bacteria on wood and leaves are not animals’ food of their own; they are part of the litter.',
  'Bacteria hold back no nitrogen while they break down poor leaves, and acid water does not slow the breakdown.',
  'Nothing produces hydrogen sulfide or methane where oxygen runs out.',
  'Light does not bleach coloured water.',
  'Water too warm for bacteria, algae or plants speeds them up further instead of harming them.',
];
