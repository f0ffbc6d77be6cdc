import type { Zone } from '@shoreglass/engine';
import type { SectionFrame } from './frame.ts';
import type { Subject } from './subjects.ts';
import { stretches } from './water-body.ts';

/** Where a subject stands in the section; fixed by the plan alone, so that labels hold still while days pass. */
export interface Anchor {
  readonly subject: Subject;
  /** [m] */
  readonly x: number;
  readonly height: number;
  /** Whether its leader leaves through the base, or through the air above the ground. */
  readonly way: 'base' | 'air';
}

const RULER_CLEARANCE_PIXELS = 13;

export function anchorsOf(frame: SectionFrame, subjects: readonly Subject[]): Anchor[] {
  const byZone = new Map<string, Subject[]>();
  for (const subject of subjects) byZone.set(subject.zone, [...(byZone.get(subject.zone) ?? []), subject]);
  return [...byZone].flatMap(([zoneId, members]) => {
    const zone = frame.plan.zones.find((candidate) => candidate.id === zoneId) ?? frame.plan.zones[0];
    return zone ? zoneAnchors(frame, zone, members) : [];
  });
}

function zoneAnchors(frame: SectionFrame, zone: Zone, members: readonly Subject[]): Anchor[] {
  const wet = (subject: Subject) =>
    subject.group === 'bank plant'
      ? false
      : zoneIsWet(frame, zone) && !['wall', 'canopy'].includes(zone.kind);
  return [true, false].flatMap((side) => {
    const group = members.filter((subject) => wet(subject) === side);
    const [from, to] = standingRoom(frame, zone, side);
    return group.map((subject, index) => {
      const x = from + (to - from) * ((index + 0.5) / group.length);
      return side
        ? baseAnchor(frame, subject, clearOfRuler(frame, x, { from, to }))
        : airAnchor(frame, subject, { zone, x });
    });
  });
}

function zoneIsWet({ plan }: SectionFrame, zone: Zone): boolean {
  return (zone.groundStart + zone.groundEnd) / 2 < plan.water.level;
}

/** The part of the zone that lies under water, or the part that lies above it; the whole zone where there is none. */
function standingRoom({ ground, plan }: SectionFrame, zone: Zone, wet: boolean): [number, number] {
  const samples = [zone.from, ...ground.samples.filter((x) => x > zone.from && x < zone.to), zone.to];
  const sign = wet ? 1 : -1;
  const [widest] = stretches(samples, (x) => sign * (plan.water.level - ground.heightAt(x))).sort(
    (a, b) => b.to - b.from - (a.to - a.from),
  );
  const { from, to } = widest ?? zone;
  const inset = Math.min(0.02, (to - from) * 0.1);
  return [from + inset, to - inset];
}

function baseAnchor({ ground, plan }: SectionFrame, subject: Subject, x: number): Anchor {
  const floor = ground.heightAt(x);
  const depth = Math.max(0, plan.water.level - floor);
  const lift = subject.group === 'water plant' ? 0.3 * depth : Math.min(0.014, 0.4 * depth);
  return { subject, x, height: floor + lift, way: 'base' };
}

function airAnchor(
  { ground, plan }: SectionFrame,
  subject: Subject,
  spot: { zone: Zone; x: number },
): Anchor {
  const floor = ground.heightAt(spot.x);
  const lift = spot.zone.kind === 'canopy' ? 0.6 : spot.zone.kind === 'wall' ? 0.45 : 0;
  return {
    subject,
    x: spot.x,
    height: floor + Math.max(0.006, lift * (plan.box.height - floor)),
    way: 'air',
  };
}

/** Moves x off the figures of the ruler below, so that the leader passes between them. */
function clearOfRuler(frame: SectionFrame, x: number, room: { from: number; to: number }): number {
  const clearance = RULER_CLEARANCE_PIXELS / frame.pixelsPerMetre;
  const step = frame.layout.rulerStep / 100;
  const nearest = Math.round(x / step) * step;
  if (Math.abs(x - nearest) >= clearance) return x;
  const away = nearest + (x >= nearest ? clearance : -clearance);
  return away < room.from || away > room.to ? nearest + (x >= nearest ? -clearance : clearance) : away;
}
