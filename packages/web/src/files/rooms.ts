import { isRoomFile } from '@shoreglass/contract';
import { fetchRoom } from './server.ts';

/** Texts of room series by the name under which an enclosure file refers to them. */
export type Rooms = Readonly<Record<string, string>>;

const SERIES = /\bseries:\s*["']?([^\s"'#,}]+\.csv)\b/i;
const kept = new Map<string, Promise<Rooms>>();

/** The CSV file that a text names as its room; nothing where it names none that could lie beside it. */
export function roomNamedIn(text: string): string | undefined {
  const name = SERIES.exec(text)?.[1];
  return name !== undefined && isRoomFile(name) ? name : undefined;
}

/** The series of that name, fetched once while the page is open; none where it cannot be had, which the check then says. */
export function roomsOf(name: string): Promise<Rooms> {
  const before = kept.get(name);
  if (before) return before;
  const fetched = fetchRoom(name).then(
    ({ text }) => ({ [name]: text }),
    () => {
      kept.delete(name);
      return {};
    },
  );
  kept.set(name, fetched);
  return fetched;
}
