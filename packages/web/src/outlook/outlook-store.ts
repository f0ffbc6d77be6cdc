import type { EnclosureFile, Finding } from '@shoreglass/contract';
import type { AheadDocument, Plan } from '@shoreglass/engine';
import { create } from 'zustand';
import { lookAhead, type OutlookEvent } from '../engine-client.ts';

/** Length, number of runs and seed of every outlook in the app. */
export const OUTLOOK = { days: 300, members: 200, seed: 1 } as const;

/** How far an outlook has come. The expected run is there long before the spread around it. */
export interface Outlook {
  readonly plan?: Plan;
  readonly document?: AheadDocument;
  readonly runs: { readonly done: number; readonly of: number };
  readonly complete: boolean;
  readonly failure?: { readonly message: string; readonly findings: readonly Finding[] };
}

interface OutlookState {
  /** Id and version of the text that the outlook is of. */
  readonly of: string;
  readonly outlook: Outlook;
}

const NOTHING_YET: Outlook = { runs: { done: 0, of: OUTLOOK.members }, complete: false };

export const useOutlook = create<OutlookState>(() => ({ of: '', outlook: NOTHING_YET }));

let cancel: () => void = () => undefined;

/** Starts looking ahead on a text; one already looked at, or being looked at, is left alone. */
export function lookAheadOn(file: EnclosureFile): void {
  const of = `${file.id} ${file.version}`;
  if (useOutlook.getState().of === of) return;
  startOn(file, of);
}

/** Starts from the beginning, after a failure. */
export function lookAheadAgain(file: EnclosureFile): void {
  startOn(file, `${file.id} ${file.version}`);
}

function startOn({ id, text }: EnclosureFile, of: string): void {
  cancel();
  useOutlook.setState({ of, outlook: NOTHING_YET });
  cancel = lookAhead({ fileName: `${id}.yaml`, text, ...OUTLOOK }, (event) =>
    useOutlook.setState((state) => (state.of === of ? { outlook: after(state.outlook, event) } : state)),
  );
}

function after(outlook: Outlook, event: OutlookEvent): Outlook {
  switch (event.kind) {
    case 'plan':
      return { ...outlook, plan: event.plan };
    case 'expected':
      return { ...outlook, document: event.document };
    case 'progress':
      return { ...outlook, runs: { done: event.done, of: event.of } };
    case 'complete':
      return { ...outlook, document: event.document, complete: true };
    case 'failed':
      return { ...outlook, failure: { message: event.message, findings: event.findings } };
  }
}
