import { randomBytes } from 'node:crypto';
import { open, rename, rm } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';

/**
 * Replaces a file's whole text so that a kill at any moment leaves either the old or the new one: the text goes to a
 * temporary file beside it, reaches the disk, and takes the name in one step.
 */
export async function writeAtomically(path: string, text: string): Promise<void> {
  const folder = dirname(path);
  const temporary = join(folder, `.${basename(path)}.${randomBytes(6).toString('hex')}.tmp`);
  try {
    await writeThrough(temporary, text);
    await rename(temporary, path);
  } catch (error) {
    await rm(temporary, { force: true });
    throw error;
  }
  await syncFolder(folder);
}

async function writeThrough(path: string, text: string): Promise<void> {
  const file = await open(path, 'wx');
  try {
    await file.writeFile(text, 'utf8');
    await file.sync();
  } finally {
    await file.close();
  }
}

/** Puts the new name itself on the disk; systems that cannot open a folder do so on their own. */
async function syncFolder(folder: string): Promise<void> {
  try {
    const handle = await open(folder, 'r');
    try {
      await handle.sync();
    } finally {
      await handle.close();
    }
  } catch (error) {
    if (
      !['EISDIR', 'EPERM', 'EACCES', 'EINVAL', 'ENOTSUP'].includes(
        (error as NodeJS.ErrnoException).code ?? '',
      )
    )
      throw error;
  }
}
