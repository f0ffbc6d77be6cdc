import type { Zone } from '@shoreglass/engine';

/** Half the width over which a step in the ground slumps to a slope [m]. */
const SLUMP = 0.014;

/** Heights kept for the next drawing of the same plan. */
const MOST_KNOWN = 4000;

/** Height of the ground surface along the section [m], steps between zones slumped as loose ground does. */
export interface Ground {
  heightAt(x: number): number;
  /** Evenly spaced x from one pane to the other [m]. */
  readonly samples: readonly number[];
  highest(from: number, to: number): number;
}

export function groundOf(zones: readonly Zone[], length: number, spacing: number): Ground {
  const ordered = [...zones].sort((a, b) => a.from - b.from);
  const count = Math.max(2, Math.ceil(length / spacing));
  const samples = Array.from({ length: count + 1 }, (_, index) => (length * index) / count);
  const known = new Map<number, number>();
  const heightAt = (x: number) => {
    const height = known.get(x) ?? slumped(ordered, Math.min(length, Math.max(0, x)), length);
    if (known.size < MOST_KNOWN) known.set(x, height);
    return height;
  };
  return {
    samples,
    heightAt,
    highest: (from, to) =>
      samples.reduce((top, x) => (x >= from && x <= to ? Math.max(top, heightAt(x)) : top), heightAt(from)),
  };
}

/** The zone at x, or the nearest one where x falls between two or past the last. */
function zoneAt(zones: readonly Zone[], x: number): Zone | undefined {
  const distance = (zone: Zone) => Math.max(zone.from - x, x - zone.to, 0);
  return zones.reduce<Zone | undefined>(
    (nearest, zone) => (nearest === undefined || distance(zone) < distance(nearest) ? zone : nearest),
    undefined,
  );
}

/** Mean of the planned height over a small window, cut off at the panes. */
function slumped(zones: readonly Zone[], x: number, length: number): number {
  const reach = Math.min(SLUMP, Math.max(x, 1e-9), Math.max(length - x, 1e-9));
  const steps = 8;
  let sum = 0;
  for (let step = 0; step <= steps; step++) {
    const weight = step === 0 || step === steps ? 0.5 : 1;
    sum += weight * plannedHeight(zones, x - reach + (2 * reach * step) / steps);
  }
  return sum / steps;
}

function plannedHeight(zones: readonly Zone[], x: number): number {
  const zone = zoneAt(zones, x);
  if (!zone) return 0;
  const share = zone.to > zone.from ? Math.min(1, Math.max(0, (x - zone.from) / (zone.to - zone.from))) : 0;
  return zone.groundStart + (zone.groundEnd - zone.groundStart) * share;
}
