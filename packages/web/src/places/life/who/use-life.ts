import type { EnclosureFile } from '@shoreglass/contract';
import { useEffect, useState } from 'react';
import { lifeOfText } from '../../../engine-client.ts';
import type { LifeReading } from '../../../worker/life-orders.ts';
import type { Edit } from '../../../worker/messages.ts';

export interface LifeRead {
  readonly reading?: LifeReading;
  /** The reading is of an earlier state of the sheet. */
  readonly stale: boolean;
  readonly failure?: string;
}

const PAUSE_MILLISECONDS = 150;
const NO_EDITS: readonly Edit[] = [];

/** Who lives in a file after edits, and what does not go together. The last answer stays until a newer one is there. */
export function useLife(file: EnclosureFile, edits: readonly Edit[] = NO_EDITS): LifeRead {
  const [found, setFound] = useState<{ reading?: LifeReading; of?: unknown; failure?: string }>({});
  const asked = JSON.stringify([file.id, file.version, edits]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: `asked` says all that file and edits say
  useEffect(() => {
    let current = true;
    const ask = () =>
      lifeOfText(file.text, `${file.id}.yaml`, edits).then(
        (reading) => current && setFound({ reading, of: asked }),
        (error: Error) => current && setFound({ failure: error.message, of: asked }),
      );
    const timer = setTimeout(ask, edits.length > 0 ? PAUSE_MILLISECONDS : 0);
    return () => {
      current = false;
      clearTimeout(timer);
    };
  }, [asked]);
  const { reading, failure } = found;
  return {
    ...(reading ? { reading } : {}),
    ...(failure === undefined ? {} : { failure }),
    stale: found.of !== asked,
  };
}
