import { type Rooms, roomNamedIn, roomsOf } from '../files/rooms.ts';
import type { Answer, Order, Results, WithRooms } from './messages.ts';

/** One engine worker, asked one thing after the other. */
export interface EngineThread {
  /** @throws Error with the engine's own sentence */
  ask<O extends Order>(order: O, moved?: Transferable[]): Promise<Results[O['do']]>;
  end(): void;
}

export function startThread(): EngineThread {
  const worker = new Worker(new URL('./engine-worker.ts', import.meta.url), { type: 'module' });
  let waiting: { resolve: (result: never) => void; reject: (error: Error) => void }[] = [];
  worker.onmessage = ({ data }: MessageEvent<Answer>) => {
    const asked = waiting.shift();
    if (!asked) return;
    if ('error' in data) asked.reject(new Error(data.error));
    else asked.resolve(data.result as never);
  };
  worker.onerror = (event) => {
    event.preventDefault();
    for (const { reject } of waiting)
      reject(new Error('The computing part of the page could not be loaded.'));
    waiting = [];
  };
  return {
    ask: async (order, moved = []) => {
      const name = 'text' in order ? roomNamedIn(order.text) : undefined;
      // Orders without a room beside their text are posted at once, so that they keep their order.
      const rooms: Rooms = name === undefined ? {} : await roomsOf(name);
      return new Promise((resolve, reject) => {
        waiting.push({ resolve, reject });
        worker.postMessage({ ...order, rooms } satisfies WithRooms<typeof order>, moved);
      });
    },
    end: () => worker.terminate(),
  };
}
