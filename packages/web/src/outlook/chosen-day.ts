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
