import { useEffect, useState } from 'react';
import { create } from 'zustand';

interface ChosenDay {
  /** Id of the enclosure the day belongs to. */
  readonly of: string;
  /** Day of the run that everything on the screen shows; between two days while it is dragged. */
  readonly day: number;
  choose(day: number): void;
  startOn(of: string, day: number): void;
}

export const useChosenDay = create<ChosenDay>((set) => ({
  of: '',
  day: 0,
  choose: (day) => set({ day }),
  startOn: (of, day) => set({ of, day }),
}));

const PAUSE_MILLISECONDS = 120;

/** The chosen day once it has come to rest, for what need not follow every step of a drag. */
export function useRestedDay(): number {
  const [rested, setRested] = useState(() => Math.round(useChosenDay.getState().day));
  useEffect(() => {
    let timer: ReturnType<typeof setTimeout>;
    // A neighbour may have chosen the day between the drawing of this one and now.
    setRested(Math.round(useChosenDay.getState().day));
    const stop = useChosenDay.subscribe(({ day }) => {
      clearTimeout(timer);
      timer = setTimeout(() => setRested(Math.round(day)), PAUSE_MILLISECONDS);
    });
    return () => {
      clearTimeout(timer);
      stop();
    };
  }, []);
  return rested;
}
