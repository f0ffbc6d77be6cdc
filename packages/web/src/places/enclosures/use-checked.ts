import type { Finding } from '@shoreglass/contract';
import { useEffect, useState } from 'react';
import { checkText } from '../../engine-client.ts';

export interface Checked {
  readonly name?: string | undefined;
  readonly findings: readonly Finding[];
}

const PAUSE_MILLISECONDS = 250;

/** What is found in a text, looked for in the worker whenever typing pauses. */
export function useChecked(text: string, fileName: string): Checked {
  const [checked, setChecked] = useState<Checked>({ findings: [] });
  useEffect(() => {
    let current = true;
    const timer = setTimeout(async () => {
      const result = await checkText(text, fileName);
      if (current) setChecked(result);
    }, PAUSE_MILLISECONDS);
    return () => {
      current = false;
      clearTimeout(timer);
    };
  }, [text, fileName]);
  return checked;
}
