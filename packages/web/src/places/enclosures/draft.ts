import { forget, recall, remember } from '../../app/kept.ts';

/** A text being worked on, kept on this device until it is saved. */
export interface Draft {
  readonly text: string;
  /** Version of the file it was written from; null for a new one. */
  readonly basedOn: string | null;
}

const keyOf = (id: string) => `draft.${id}`;

export function recallDraft(id: string): Draft | undefined {
  const kept = recall(keyOf(id));
  if (kept === undefined) return undefined;
  try {
    const { text, basedOn } = JSON.parse(kept) as Partial<Draft>;
    return typeof text === 'string' ? { text, basedOn: basedOn ?? null } : undefined;
  } catch {
    return undefined;
  }
}

export function rememberDraft(id: string, draft: Draft): void {
  remember(keyOf(id), JSON.stringify(draft));
}

export function forgetDraft(id: string): void {
  forget(keyOf(id));
}
