import { type Document, isNode, parseDocument } from 'yaml';
import { LONGEST_FILE } from './read/parse-yaml.ts';
import type { KeyPath } from './read/problem.ts';
import { type EditValue, type Splice, spliced, spliceFor } from './text-splice.ts';

export type { EditValue } from './text-splice.ts';

/** One value of the file and what it becomes; without a value the key is removed. */
export interface EnclosureEdit {
  readonly path: KeyPath;
  readonly value: EditValue | undefined;
}

/**
 * The text with one value changed. A value is replaced where it stands, a key or list item added or cut out on lines of
 * its own, so that nothing else moves; what cannot be done so keeps comments and order, but may change the blanks
 * before comments. `undefined` removes the key. Written as text with its unit, as the file has it:
 * `editEnclosure(text, ['water', 'level'], '18 cm')`.
 * @throws Error when the text is not sound YAML or the path leads through something that is not a map or list.
 */
export function editEnclosure(text: string, path: KeyPath, value: EditValue | undefined): string {
  return editEnclosureAll(text, [{ path, value }]);
}

/**
 * The text with several values changed, one after the other, as by `editEnclosure`.
 * @throws Error when the text is not sound YAML or a path leads through something that is not a map or list.
 */
export function editEnclosureAll(text: string, edits: readonly EnclosureEdit[]): string {
  if (text.length > LONGEST_FILE) throw new Error('the file is too long to be edited');
  const document = parseDocument(text, { keepSourceTokens: true });
  if (document.errors.length > 0) throw new Error('the file is not sound YAML; mend it first');
  const splices = edits.map(({ path, value }) => spliceFor(text, document, path, value));
  for (const edit of edits) apply(document, edit);
  const whole = splices.every((splice) => splice !== undefined);
  const edited = whole ? spliced(text, splices as readonly Splice[]) : undefined;
  if (edited !== undefined && saysTheSame(edited, document)) return edited;
  return document.toString({ lineWidth: 0, flowCollectionPadding: true });
}

function apply(document: Document, { path, value }: EnclosureEdit): void {
  if (value === undefined) {
    document.deleteIn(path as unknown[]);
    return;
  }
  const old = document.getIn(path as unknown[], true);
  const node = document.createNode(value);
  if (isNode(old)) {
    node.comment = old.comment ?? null;
    node.commentBefore = old.commentBefore ?? null;
    node.spaceBefore = old.spaceBefore ?? false;
  }
  document.setIn(path as unknown[], node);
}

/** A splice counts only when the text then reads back as the document does after the edit. */
function saysTheSame(text: string, wanted: Document): boolean {
  const back = parseDocument(text);
  return back.errors.length === 0 && same(back.toJS(), wanted.toJS());
}

function same(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  const [first, second] = [Object.entries(a), Object.entries(b)];
  return (
    Array.isArray(a) === Array.isArray(b) &&
    first.length === second.length &&
    first.every(([key, value]) => key in b && same(value, (b as Record<string, unknown>)[key]))
  );
}
