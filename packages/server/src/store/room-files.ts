import { lstatSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { isRoomFile, MAX_ROOM_BYTES, type ReadBeside } from '@shoreglass/contract';

/** Reads room series beside the enclosure files: plain files of the folder itself, no links, no paths. */
export function roomFiles(folder: string): ReadBeside {
  return (name) => {
    if (!isRoomFile(name)) return undefined;
    const path = join(folder, name);
    try {
      const facts = lstatSync(path);
      return facts.isFile() && facts.size <= MAX_ROOM_BYTES ? readFileSync(path, 'utf8') : undefined;
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code === 'ENOENT') return undefined;
      throw error;
    }
  };
}
