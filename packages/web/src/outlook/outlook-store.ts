import type { EnclosureFile, Finding } from '@shoreglass/contract';
import type { AheadDocument, Plan } from '@shoreglass/engine';
import { create } from 'zustand';
import { lookAhead, type OutlookEvent } from '../engine-client.ts';
import { type RunChoice, useRunChoice } from './run-choice.ts';

/** How far an outlook has come. The expected run is there long before the spread around it. */
export interface Outlook {
  readonly plan?: Plan;
  readonly document?: AheadDocument;
  readonly runs: { readonly done: number; readonly of: number };
  readonly complete: boolean;
  readonly failure?: { readonly message: string; readonly findings: readonly Finding[] };
}

interface OutlookState {
  /** The text that the outlook is of, and how it is run; as `lookedAt` says it. */
  readonly of: string;
  readonly outlook: Outlook;
}

const nothingYet = ({ members }: RunChoice): Outlook => ({ runs: { done: 0, of: members }, complete: false });

export const useOutlook = create<OutlookState>(() => ({
  of: '',
  outlook: nothingYet(useRunChoice.getState().run),
}));

/** Names a text and the way it is run. */
export function lookedAt(
  { id, version }: Pick<EnclosureFile, 'id' | 'version'>,
  { days, members, seed }: RunChoice,
): string {
  return [id, version, days, members, seed].join(' ');
}

let cancel: () => void = () => undefined;

/** Starts looking ahead on a text; one already looked at, or being looked at, is left alone. */
export function lookAheadOn(file: EnclosureFile, run: RunChoice): void {
  if (useOutlook.getState().of !== lookedAt(file, run)) startOn(file, run);
}

/** Starts from the beginning, after a failure. */
export function lookAheadAgain(file: EnclosureFile): void {
  startOn(file, useRunChoice.getState().run);
}

function startOn(file: EnclosureFile, run: RunChoice): void {
  const of = lookedAt(file, run);
  cancel();
  useOutlook.setState({ of, outlook: nothingYet(run) });
  cancel = lookAhead({ fileName: `${file.id}.yaml`, text: file.text, ...run }, (event) =>
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
