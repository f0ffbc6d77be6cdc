import type { EnclosureFile } from '@shoreglass/contract';
import { useEffect, useState } from 'react';
import { shelfOfText } from '../../engine-client.ts';
import type { Shelf } from '../../worker/messages.ts';

/** The shelf of a file, looked through in the worker; or why that failed. */
export function useShelf(file: EnclosureFile): { readonly shelf?: Shelf; readonly failure?: string } {
  const [found, setFound] = useState<{ readonly shelf?: Shelf; readonly failure?: string }>({});
  useEffect(() => {
    let current = true;
    shelfOfText(file.text, `${file.id}.yaml`).then(
      (shelf) => current && setFound({ shelf }),
      (error: Error) => current && setFound({ failure: error.message }),
    );
    return () => {
      current = false;
    };
  }, [file]);
  return found;
}
