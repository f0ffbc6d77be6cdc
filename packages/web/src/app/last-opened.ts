import { recall, remember } from './kept.ts';

/** Id of the enclosure that was looked at last on this device. */
export function lastOpened(): string | undefined {
  return recall('enclosure');
}

export function rememberOpened(id: string): void {
  remember('enclosure', id);
}
