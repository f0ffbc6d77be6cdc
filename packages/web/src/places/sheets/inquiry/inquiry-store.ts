import type { Inquiry, Plan } from '@shoreglass/engine';
import { create } from 'zustand';
import { inquire } from '../../../engine-client.ts';

/** How far a question that needs runs has come. */
export interface InquiryState<Answer> {
  readonly done: number;
  readonly expected: number;
  readonly running: boolean;
  readonly answer?: Answer;
  readonly failure?: string;
}

interface Inquiries {
  readonly byKey: Readonly<Record<string, InquiryState<unknown>>>;
}

const useStore = create<Inquiries>(() => ({ byKey: {} }));
const stops = new Map<string, () => void>();

/** The state of a question, kept while the page is open: going to another sheet and back asks nothing twice. */
export function useInquiry<Answer>(key: string): InquiryState<Answer> | undefined {
  return useStore((state) => state.byKey[key]) as InquiryState<Answer> | undefined;
}

/** Asks a question anew; `ask` makes the inquiry once the module that holds it is loaded. */
export function startInquiry<Answer>(
  key: string,
  plan: Plan,
  ask: () => Promise<Inquiry<Answer>> | Inquiry<Answer>,
): void {
  cancelInquiry(key);
  let stopped = false;
  let stop: () => void = () => undefined;
  stops.set(key, () => {
    stopped = true;
    stop();
  });
  put(key, { done: 0, expected: 0, running: true });
  Promise.resolve()
    .then(ask)
    .then((inquiry) => {
      if (stopped) return;
      stop = inquire(plan, inquiry, (event) => {
        if (event.kind === 'progress')
          put(key, { done: event.done, expected: event.expected, running: true });
        else if (event.kind === 'answer') put(key, { ...ENDED, answer: event.answer });
        else put(key, { ...ENDED, failure: event.message });
      });
    })
    .catch((error: Error) => {
      if (!stopped) put(key, { ...ENDED, failure: error.message });
    });
}

const ENDED = { done: 0, expected: 0, running: false } as const;

/** Stops a question under way; what it had found is dropped. */
export function cancelInquiry(key: string): void {
  stops.get(key)?.();
  stops.delete(key);
  const { [key]: _, ...others } = useStore.getState().byKey;
  useStore.setState({ byKey: others });
}

function put(key: string, state: InquiryState<unknown>): void {
  useStore.setState(({ byKey }) => ({ byKey: { ...byKey, [key]: state } }));
}
