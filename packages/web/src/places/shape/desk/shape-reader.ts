import type { EnclosureEdit } from '@shoreglass/contract';
import { type EngineThread, startThread } from '../../../worker/engine-thread.ts';
import type { ShapeReading } from '../../../worker/shape-orders.ts';

interface Asked {
  readonly text: string;
  readonly edits: readonly EnclosureEdit[];
}

/** Reads texts for the desk in a worker of its own. */
export interface ShapeReader {
  /** Every call is answered, in order. */
  read(asked: Asked): Promise<ShapeReading>;
  /** Only the newest of the calls that wait is answered; the others get nothing. */
  glance(asked: Asked): Promise<ShapeReading | undefined>;
  end(): void;
}

export function shapeReader(fileName: string): ShapeReader {
  let thread: EngineThread | undefined;
  let busy = false;
  let waiting: { asked: Asked; answer: (reading: ShapeReading | undefined) => void } | undefined;
  const read = ({ text, edits }: Asked) => {
    thread ??= startThread();
    return thread.ask({ do: 'shape', text, fileName, edits }).catch((error: Error) => {
      // The next question gets a fresh worker.
      thread?.end();
      thread = undefined;
      throw error;
    });
  };
  const serve = async (): Promise<void> => {
    busy = true;
    while (waiting) {
      const { asked, answer } = waiting;
      waiting = undefined;
      answer(await read(asked).catch(() => undefined));
    }
    busy = false;
  };
  return {
    read,
    glance: (asked) =>
      new Promise((answer) => {
        waiting?.answer(undefined);
        waiting = { asked, answer };
        if (!busy) void serve();
      }),
    end: () => {
      thread?.end();
      thread = undefined;
    },
  };
}
