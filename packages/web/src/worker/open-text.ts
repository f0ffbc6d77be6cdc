import { openEnclosure } from '@shoreglass/contract';
import type { Rooms } from '../files/rooms.ts';

let rooms: Rooms = {};

/** From now on these series lie beside the texts that are opened. */
export function layBeside(given: Rooms): void {
  rooms = given;
}

/** Reads and checks a text with the room series that were sent along with it. */
export function openText(text: string, fileName: string): ReturnType<typeof openEnclosure> {
  return openEnclosure(text, fileName, { readBeside: (name) => rooms[name] });
}
