import { useSyncExternalStore } from 'react';

/** Height of the window [px]. */
export function useScreenHeight(): number {
  return useSyncExternalStore(onResize, () => window.innerHeight);
}

function onResize(changed: () => void): () => void {
  addEventListener('resize', changed);
  return () => removeEventListener('resize', changed);
}
