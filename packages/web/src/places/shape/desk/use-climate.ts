import type { ClimateYear, CoverAnswer, CoverGoal, Plan } from '@shoreglass/engine';
import { useEffect, useRef, useState } from 'react';
import { type EngineThread, startThread } from '../../../worker/engine-thread.ts';

/** What was computed of a plan, or why it was not. */
export interface Computed<T> {
  readonly of: Plan | undefined;
  readonly value: T | undefined;
  readonly failure: string | undefined;
  readonly busy: boolean;
}

const NOTHING = { of: undefined, value: undefined, failure: undefined, busy: false } as const;
const REST_MILLISECONDS = 500;

/** The year's climate of a plan, computed in a worker of its own once the plan rests. */
export function useClimate(plan: Plan): Computed<ClimateYear> {
  const [computed, setComputed] = useState<Computed<ClimateYear>>(NOTHING);
  useEffect(() => {
    let thread: EngineThread | undefined;
    setComputed((before) => ({ ...before, busy: true }));
    const timer = setTimeout(() => {
      thread = startThread();
      thread.ask({ do: 'climate', plan }).then(
        (value) => {
          setComputed({ of: plan, value, failure: undefined, busy: false });
          thread?.end();
        },
        (error: Error) => setComputed({ of: plan, value: undefined, failure: error.message, busy: false }),
      );
    }, REST_MILLISECONDS);
    return () => {
      clearTimeout(timer);
      thread?.end();
    };
  }, [plan]);
  return computed;
}

/** Finds an opening of the cover when asked; a new question ends the one before. */
export function useCoverAnswer(plan: Plan): readonly [Computed<CoverAnswer>, (goal: CoverGoal) => void] {
  const [computed, setComputed] = useState<Computed<CoverAnswer>>(NOTHING);
  const thread = useRef<EngineThread>(undefined);
  useEffect(() => () => thread.current?.end(), []);
  const ask = (goal: CoverGoal) => {
    thread.current?.end();
    const asked = startThread();
    thread.current = asked;
    setComputed((before) => ({ ...before, busy: true, failure: undefined }));
    asked.ask({ do: 'cover', plan, goal }).then(
      (value) => setComputed({ of: plan, value, failure: undefined, busy: false }),
      (error: Error) => setComputed({ of: plan, value: undefined, failure: error.message, busy: false }),
    );
  };
  return [computed, ask];
}
