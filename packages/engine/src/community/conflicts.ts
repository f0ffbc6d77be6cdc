import { eatingConflicts } from './eating-conflicts.ts';
import { feedingConflicts } from './feeding-conflicts.ts';
import { guestConflicts } from './guest-conflicts.ts';
import { harmConflicts } from './harm-conflicts.ts';
import { CONFLICT_KINDS, type Conflict, type Inhabitant, type PlaceFacts } from './inhabitant.ts';
import { placeConflicts } from './place-conflicts.ts';
import { placeRangeConflicts } from './place-range-conflicts.ts';
import { rangeConflicts } from './range-conflicts.ts';

/**
 * Everything that does not go together among inhabitants, and between them and a place: each a sentence with reason,
 * source, severity and what would resolve it; warnings first, then by kind.
 * @param place left out when only species are compared
 * @source derived: comparisons of what the species files state; see docs/science/life.md
 */
export function conflictsOf(inhabitants: readonly Inhabitant[], place?: PlaceFacts): Conflict[] {
  const all = [
    ...rangeConflicts(inhabitants),
    ...placeRangeConflicts(inhabitants, place),
    ...eatingConflicts(inhabitants, place),
    ...feedingConflicts(inhabitants, place),
    ...placeConflicts(inhabitants, place),
    ...harmConflicts(inhabitants, place),
    ...guestConflicts(place),
  ];
  return byWeight(all);
}

const weight = ({ severity, kind }: Conflict): number =>
  (severity === 'warning' ? 0 : 100) + CONFLICT_KINDS.indexOf(kind);

/** The same conflicts, warnings first, then by kind. `derived`. */
export function byWeight(conflicts: readonly Conflict[]): Conflict[] {
  return [...conflicts].sort((a, b) => weight(a) - weight(b));
}
