import type { EnclosureFile } from '@shoreglass/contract';
import { useEffect } from 'react';
import { rememberOpened } from '../app/last-opened.ts';
import { lookAheadOn, lookedAt, type Outlook, useOutlook } from './outlook-store.ts';
import { useRunChoice } from './run-choice.ts';

/** The outlook of an opened file, under way from the moment a place asks for it; undefined until it has begun. */
export function useFileOutlook(file: EnclosureFile): Outlook | undefined {
  const run = useRunChoice((state) => state.run);
  const of = lookedAt(file, run);
  useEffect(() => {
    rememberOpened(file.id);
    lookAheadOn(file, run);
  }, [file, run]);
  return useOutlook((state) => (state.of === of ? state.outlook : undefined));
}
