import { existsSync, realpathSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';

/**
 * Writes a file whole or not at all: a full disk leaves what stood there before. What is no plain file, such as a pipe, is
 * written to directly.
 */
export function writeWhole(path: string, text: string): void {
  if (existsSync(path) && !statSync(path).isFile()) {
    writeFileSync(path, text);
    return;
  }
  const target = existsSync(path) ? realpathSync(path) : path;
  const part = `${target}.${process.pid}.part`;
  try {
    writeFileSync(part, text);
    renameSync(part, target);
  } catch (error) {
    rmSync(part, { force: true });
    throw error;
  }
}
