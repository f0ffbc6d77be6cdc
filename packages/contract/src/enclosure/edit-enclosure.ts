import { isNode, parseDocument } from 'yaml';
import { LONGEST_FILE } from './read/parse-yaml.ts';
import type { KeyPath } from './read/problem.ts';

export type EditValue = string | number | boolean | readonly unknown[] | Readonly<Record<string, unknown>>;

/**
 * The text with one value changed, and comments, order and spacing of everything else kept. `undefined` removes the
 * key. Written as text with its unit, as the file has it: `editEnclosure(text, ['water', 'level'], '18 cm')`.
 * @throws Error when the text is not sound YAML or the path leads through something that is not a map or list.
 */
export function editEnclosure(text: string, path: KeyPath, value: EditValue | undefined): string {
  if (text.length > LONGEST_FILE) throw new Error('the file is too long to be edited');
  const document = parseDocument(text, { keepSourceTokens: true });
  if (document.errors.length > 0) throw new Error('the file is not sound YAML; mend it first');
  if (value === undefined) document.deleteIn(path as unknown[]);
  else {
    const old = document.getIn(path as unknown[], true);
    const node = document.createNode(value);
    if (isNode(old)) {
      node.comment = old.comment ?? null;
      node.commentBefore = old.commentBefore ?? null;
      node.spaceBefore = old.spaceBefore ?? false;
    }
    document.setIn(path as unknown[], node);
  }
  return document.toString({ lineWidth: 0, flowCollectionPadding: true });
}
