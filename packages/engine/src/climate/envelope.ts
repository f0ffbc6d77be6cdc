import type { Geometry } from '../geometry/geometry.ts';
import type { Plan } from '../plan/plan.ts';
import type { ClimateParameters } from './climate-parameters.ts';
import { gapResistance } from './gap-resistance.ts';
import { GLASS_CONDUCTIVITY, paneTransmittance, radiationCoefficient } from './panes.ts';

/** Heat capacities by volume of water and of moist ground without its pore water [J/(m3 K)] (memory). */
const WATER_HEAT = 4.181e6 * 0.998;
const GROUND_HEAT = 1.5e6;
/** Glass, 2500 kg/m3 times 840 J/(kg K) (memory). */
const GLASS_HEAT = 2.1e6;
/** Smallest heat capacity of a store [J/K], so that a plan without ground or glass above water stays soluble. */
const LEAST_HEAT = 10;
/** Film coefficient where water touches glass, and of ground 10 cm deep behind it [W/(m2 K)] (memory; assumed). */
const WATER_SIDE = 200;
const GROUND_SIDE = 8;
/** Exchange between grey surfaces of emissivity 0.96 (water, ground) and 0.86 (glass): 1/(1/0.96 + 1/0.86 - 1). */
const RADIATION = radiationCoefficient(0.831, 24);

/** Areas are kept while the volume of water moves by less than this part, a few tenths of a millimetre of level. */
const SAME_VOLUME = 1e-3;

/** Areas, capacities and conductances at one water level, refreshed in place. */
export interface Envelope {
  /** Plan areas [m2] and the part of the base that is open water [0..1]. */
  openArea: number;
  landArea: number;
  openShare: number;
  /** Water above ground [m3], air [m3], glass touching air with the closed part of the cover [m2]. */
  openVolume: number;
  airVolume: number;
  glassArea: number;
  /** Heat capacities [J/K]. */
  waterHeat: number;
  groundHeat: number;
  glassHeat: number;
  /** Heat conductances [W/K]: to the room, water to ground, radiated to glass and through the open cover. */
  waterToRoom: number;
  groundToRoom: number;
  glassToRoom: number;
  waterToGround: number;
  waterToGlass: number;
  groundToGlass: number;
  /** Air to glass by convection. */
  airToGlass: number;
}

/**
 * Returns a function that refreshes the envelope for a volume of water [m3], and the envelope itself.
 * @param box glass and cover
 * @param geometry of the plan
 * @param parameters film coefficients, base and ground
 * @source derived; en-673 for panes
 */
export function createEnvelope(
  box: Plan['box'],
  geometry: Geometry,
  parameters: ClimateParameters,
): { readonly envelope: Envelope; refresh(volume: number): void } {
  const { outerFilmCoefficient: outside, innerFilmCoefficient, baseConductance, groundCoupling } = parameters;
  const { baseArea, groundVolume } = geometry;
  const glass = { thickness: box.glassThickness, conductivity: GLASS_CONDUCTIVITY, outside };
  const waterPane = paneTransmittance({ ...glass, inside: WATER_SIDE });
  const groundPane = paneTransmittance({ ...glass, inside: GROUND_SIDE });
  const glassOutwards = 1 / (glass.thickness / glass.conductivity + 1 / outside);
  const { secondPane } = box;
  // What a second pane keeps in on the dry part of the front, per area.
  const keptByFront = secondPane
    ? glassOutwards -
      1 / (1 / glassOutwards + gapResistance(secondPane.gap) + secondPane.thickness / glass.conductivity)
    : 0;
  const coverArea = baseArea * (1 - box.coverOpenFraction);
  const openCover = baseArea * box.coverOpenFraction;
  const allPanes = 2 * (box.length + box.width) * box.height;
  const envelope: Envelope = {
    openArea: 0,
    landArea: 0,
    openShare: 0,
    openVolume: 0,
    airVolume: 0,
    glassArea: 0,
    waterHeat: 0,
    groundHeat: GROUND_HEAT * groundVolume + LEAST_HEAT,
    glassHeat: 0,
    waterToRoom: 0,
    groundToRoom: 0,
    glassToRoom: 0,
    waterToGround: groundCoupling * baseArea,
    waterToGlass: 0,
    groundToGlass: 0,
    airToGlass: 0,
  };
  let refreshedFor = Number.NEGATIVE_INFINITY;
  return {
    envelope,
    refresh(volume) {
      if (Math.abs(volume - refreshedFor) <= SAME_VOLUME * refreshedFor) return;
      refreshedFor = volume;
      const level = geometry.levelAt(volume);
      const waterPanes = geometry.waterPaneAreaAt(level);
      const airPanes = geometry.airPaneAreaAt(level);
      const glassArea = airPanes + coverArea;
      const throughCover = openCover / (openCover + glassArea + 1e-12);
      envelope.openArea = geometry.openAreaAt(level);
      envelope.landArea = Math.max(0, geometry.landAreaAt(level));
      envelope.openShare = 1 - envelope.landArea / baseArea;
      envelope.openVolume = geometry.openVolumeAt(level);
      envelope.airVolume = Math.max(1e-6, geometry.airVolumeAt(level));
      envelope.glassArea = glassArea;
      envelope.waterHeat = WATER_HEAT * volume + LEAST_HEAT;
      envelope.glassHeat = GLASS_HEAT * glassArea * box.glassThickness + LEAST_HEAT;
      const fromWater = RADIATION * envelope.openArea;
      const fromGround = RADIATION * envelope.landArea;
      const waterBase = baseConductance * baseArea * envelope.openShare;
      const groundBase = baseConductance * baseArea - waterBase;
      const groundPanes = Math.max(0, allPanes - waterPanes - airPanes);
      envelope.waterToRoom = waterPane * waterPanes + waterBase + fromWater * throughCover;
      envelope.groundToRoom = groundPane * groundPanes + groundBase + fromGround * throughCover;
      const dryFront = secondPane ? box.length * Math.max(0, box.height - level) : 0;
      envelope.glassToRoom = glassOutwards * glassArea - keptByFront * Math.min(dryFront, glassArea);
      envelope.waterToGlass = fromWater * (1 - throughCover);
      envelope.groundToGlass = fromGround * (1 - throughCover);
      envelope.airToGlass = innerFilmCoefficient * glassArea;
    },
  };
}
