import type { Conflict, PlaceFacts } from './inhabitant.ts';

/**
 * What bought water plants bring along when the plan names no guests: of 40 mail orders of water plants 90 % held plants
 * nobody had ordered, half of them duckweed, and 80 % animals.
 * @source maki-galatowitsch-2004: 40 orders from 34 sellers in the United States, 2001
 */
export function guestConflicts(place: PlaceFacts | undefined): Conflict[] {
  if (!place?.guests?.waterPlants || place.guests.areListed) return [];
  return [
    {
      kind: 'guests',
      who: [],
      severity: 'note',
      sentence:
        'Bought water plants bring guests: of 40 orders 80 % held animals nobody had asked for and half held duckweed. The plan names none.',
      source: 'Maki and Galatowitsch 2004, Biological Conservation 118: 389-396, and their poster',
      mend: 'Keep new plants apart for some weeks and rinse them, or plants grown in gel; to see what guests would do, list pond snails or duckweed with a chance, such as 50 %.',
    },
  ];
}
