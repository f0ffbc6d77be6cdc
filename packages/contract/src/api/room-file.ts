import { z } from 'zod';

/** Largest room series that is read from the data folder [bytes]; a year of hours is about 250 kB. */
export const MAX_ROOM_BYTES = 4 * 1024 * 1024;
const LONGEST_NAME = 80;
/** A name of a CSV file in the data folder itself, never a path. */
const ROOM_FILE = /^[A-Za-z0-9][A-Za-z0-9_-]*(?:\.[A-Za-z0-9_-]+)*\.csv$/i;

export function isRoomFile(name: string): boolean {
  return name.length <= LONGEST_NAME && ROOM_FILE.test(name);
}

export const roomFileName = z
  .string()
  .max(LONGEST_NAME)
  .regex(ROOM_FILE)
  .describe('Name of a CSV file in the data folder.');

/** The measured room of a CSV file beside the enclosure files. */
export const roomFile = z.object({ name: roomFileName, text: z.string() });

export type RoomFile = z.infer<typeof roomFile>;
