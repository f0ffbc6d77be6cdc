import { isNode, isScalar, parseDocument } from 'yaml';
import { LONGEST_FILE } from './read/parse-yaml.ts';
import type { KeyPath } from './read/problem.ts';

export type EditValue = string | number | boolean | readonly unknown[] | Readonly<Record<string, unknown>>;

/** Signs a plain scalar may hold without quotes, in any place of the file. */
const PLAIN = /^[A-Za-z0-9][A-Za-z0-9 .%°µ²³/+-]*$/;

/** A scalar as it is written on one line. */
function written(value: string | number | boolean): string {
  if (typeof value !== 'string') return String(value);
  return PLAIN.test(value) && value.trim() === value ? value : JSON.stringify(value);
}

/** The text with one scalar replaced in place, or undefined where it does not read back as that value. */
function spliced(text: string, path: KeyPath, value: string | number | boolean): string | undefined {
  const old = parseDocument(text).getIn(path as unknown[], true);
  if (!isScalar(old) || !old.range || old.type?.startsWith('BLOCK')) return undefined;
  const [from, to] = old.range;
  const edited = text.slice(0, from) + written(value) + text.slice(to);
  const back = parseDocument(edited);
  return back.errors.length === 0 && back.getIn(path as unknown[]) === value ? edited : undefined;
}

/**
 * The text with one value changed. A single value is replaced where it stands, so that nothing else moves; adding,
 * removing or replacing a part keeps comments and order, but may change the blanks before comments. `undefined`
 * removes the key. Written as text with its unit, as the file has it:
 * `editEnclosure(text, ['water', 'level'], '18 cm')`.
 * @throws Error when the text is not sound YAML or the path leads through something that is not a map or list.
 */
export function editEnclosure(text: string, path: KeyPath, value: EditValue | undefined): string {
  if (text.length > LONGEST_FILE) throw new Error('the file is too long to be edited');
  const document = parseDocument(text, { keepSourceTokens: true });
  if (document.errors.length > 0) throw new Error('the file is not sound YAML; mend it first');
  if (typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean') {
    const edited = spliced(text, path, value);
    if (edited !== undefined) return edited;
  }
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
