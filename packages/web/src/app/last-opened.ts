import { useSyncExternalStore } from 'react';
import { recall, remember } from './kept.ts';

const KEY = 'enclosure';
const listeners = new Set<() => void>();

/** Id of the enclosure that was looked at last on this device. */
export function lastOpened(): string | undefined {
  return recall(KEY);
}

export function rememberOpened(id: string): void {
  if (recall(KEY) === id) return;
  remember(KEY, id);
  for (const told of listeners) told();
}

/** The same, kept up to date: its places stand in the row as soon as one is opened. */
export function useLastOpened(): string | undefined {
  return useSyncExternalStore(subscribe, lastOpened);
}

function subscribe(told: () => void): () => void {
  listeners.add(told);
  return () => listeners.delete(told);
}
