import type { Zone } from '../plan/plan.ts';

/** A layer that holds water in its pores, as heights above the base [m]. */
export interface Stratum {
  readonly bottom: number;
  readonly top: number;
  readonly porosity: number;
  readonly filmSurface: number;
}

/** The section of one zone, answering by height [m above the base]. */
export interface ZoneSection {
  readonly length: number;
  readonly low: number;
  readonly high: number;
  /** Heights at which a layer ends below the ground. */
  readonly layerTops: readonly number[];
  /** Part of the zone's length whose ground lies below `height` [0..1]. */
  openShare(height: number): number;
  /** Porosity of the build-up met at `height`, where there is ground [0..1]. */
  porosityAt(height: number): number;
  /** Film surface per bulk volume of the build-up met at `height` [m2/m3]. */
  filmSurfaceAt(height: number): number;
}

/**
 * Returns the layers of a zone with their heights, from the base upwards; the topmost reaches the ground.
 * @source derived
 */
export function strataOf(zone: Pick<Zone, 'layers'>): Stratum[] {
  let bottom = 0;
  return zone.layers.map((layer, i) => {
    const isTopmost = i === zone.layers.length - 1;
    const top = isTopmost ? Number.POSITIVE_INFINITY : bottom + layer.thickness;
    const stratum = { bottom, top, porosity: layer.porosity, filmSurface: layer.filmSurface };
    bottom = top;
    return stratum;
  });
}

/**
 * Returns the section of a zone: its ground is straight from `groundStart` to `groundEnd`, its layers lie level from
 * the base, and the topmost reaches the ground. A zone without layers is solid below its ground.
 * @source derived
 */
export function zoneSection(zone: Zone): ZoneSection {
  const strata = strataOf(zone);
  const low = Math.min(zone.groundStart, zone.groundEnd);
  const high = Math.max(zone.groundStart, zone.groundEnd);
  const stratumAt = (height: number) => strata.find((stratum) => height <= stratum.top);
  return {
    length: zone.to - zone.from,
    low,
    high,
    layerTops: strata.slice(0, -1).map((stratum) => stratum.top),
    openShare(height) {
      if (height <= low) return 0;
      return height >= high ? 1 : (height - low) / (high - low);
    },
    porosityAt: (height) => stratumAt(height)?.porosity ?? 0,
    filmSurfaceAt: (height) => stratumAt(height)?.filmSurface ?? 0,
  };
}
