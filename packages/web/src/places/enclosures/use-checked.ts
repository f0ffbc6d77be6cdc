import type { LocatedFinding } from '@shoreglass/contract';
import { useEffect, useState } from 'react';
import { checkText } from '../../engine-client.ts';

export interface Checked {
  readonly name?: string;
  readonly findings: readonly LocatedFinding[];
}

const PAUSE_MILLISECONDS = 250;

/** What is found in a text, looked for in the worker whenever typing pauses. */
export function useChecked(text: string): Checked {
  const [checked, setChecked] = useState<Checked>({ findings: [] });
  useEffect(() => {
    let current = true;
    const timer = setTimeout(async () => {
      const result = await checkText(text);
      if (current) setChecked(result);
    }, PAUSE_MILLISECONDS);
    return () => {
      current = false;
      clearTimeout(timer);
    };
  }, [text]);
  return checked;
}
