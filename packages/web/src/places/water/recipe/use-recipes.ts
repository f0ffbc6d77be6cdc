import type { RecipeChoice, RecipeRequest, RequestProblem } from '@shoreglass/engine';
import { useEffect, useRef, useState } from 'react';
import { recipesFor } from '../../../engine-client.ts';

export interface RecipeAnswer {
  readonly problems: readonly RequestProblem[];
  readonly choices: readonly RecipeChoice[];
  /** The other recipes are in as well. */
  readonly compared: boolean;
  /** The request has changed since. */
  readonly stale: boolean;
  readonly failure?: string;
}

type Found = Omit<RecipeAnswer, 'stale'> & { readonly of?: string };

const NOTHING: Found = { problems: [], choices: [], compared: false };
/** After this pause in typing the other recipes are worked out too. */
const PAUSE_MILLISECONDS = 250;

/** The recipe for a request, worked out in the worker as one types; the last request wins. */
export function useRecipes(request: RecipeRequest | undefined): RecipeAnswer {
  const [answer, setAnswer] = useState<Found>(NOTHING);
  const latest = useRef(0);
  const asked = JSON.stringify(request);
  useEffect(() => {
    latest.current += 1;
    const turn = latest.current;
    if (asked === undefined) return setAnswer(NOTHING);
    const parsed = JSON.parse(asked) as RecipeRequest;
    const tell = (compared: boolean) => (found: Pick<RecipeAnswer, 'problems' | 'choices'>) => {
      if (turn === latest.current) setAnswer({ ...found, compared, of: asked });
    };
    const fail = (error: Error) => {
      if (turn === latest.current) setAnswer({ ...NOTHING, failure: error.message, of: asked });
    };
    recipesFor(parsed, false).then(tell(false), fail);
    const timer = setTimeout(() => recipesFor(parsed, true).then(tell(true), fail), PAUSE_MILLISECONDS);
    return () => clearTimeout(timer);
  }, [asked]);
  const { of, ...found } = answer;
  return { ...found, stale: of !== asked };
}
