import { type Document, isAlias, isMap, isNode, isScalar, LineCounter, parseDocument, visit } from 'yaml';
import { type Place, positionOf } from './places.ts';
import type { KeyPath, Problem } from './problem.ts';

/** Longest text that is read [UTF-16 code units]. */
export const LONGEST_FILE = 256 * 1024;
/** Most lines that are read. */
const MOST_LINES = 10_000;
/** Deepest nesting that is read; the format itself needs eight. */
const DEEPEST = 40;
const MOST_PROBLEMS = 50;
const MOST_ODDITIES = 5;

export interface ParsedYaml {
  readonly document: Document;
  readonly lines: LineCounter;
  readonly value: unknown;
}

const whole = (file: string, message: string, mend: string): Problem => ({
  file,
  line: 1,
  column: 1,
  path: '',
  message,
  mend,
});

/** Bounds that hold before the parser sees the text. */
function textProblem(text: string, file: string): Problem | undefined {
  if (text.length > LONGEST_FILE)
    return whole(
      file,
      `is longer than ${LONGEST_FILE / 1024} kB`,
      'An enclosure needs a few kB; check that this is the right file.',
    );
  if (text.split('\n', MOST_LINES + 1).length > MOST_LINES)
    return whole(file, `has more than ${MOST_LINES} lines`, 'An enclosure needs a few hundred.');
  if (text.trim() === '') return whole(file, 'is empty', 'Start from one of the examples.');
  const bad = Array.from(text).findIndex((sign) => {
    const code = sign.codePointAt(0) ?? 0;
    return code === 0xfffd || (code < 32 && code !== 9 && code !== 10 && code !== 13);
  });
  if (bad >= 0) {
    const before = text.slice(0, bad).split('\n');
    return {
      ...whole(file, 'holds signs that are not text', 'Save it as plain text in UTF-8.'),
      line: before.length,
      column: (before[before.length - 1]?.length ?? 0) + 1,
    };
  }
  const nested = deepestBrackets(text);
  if (nested > DEEPEST) return whole(file, `nests brackets ${nested} deep`, `Nest at most ${DEEPEST}.`);
  return undefined;
}

/** Most brackets open at once, quotes not considered: a bound for the parser's recursion. */
function deepestBrackets(text: string): number {
  let open = 0;
  let deepest = 0;
  for (const sign of text) {
    if (sign === '[' || sign === '{') deepest = Math.max(deepest, ++open);
    else if (sign === ']' || sign === '}') open = Math.max(0, open - 1);
  }
  return deepest;
}

/** Longest indentation that opens a level, and runs of '- - -' or '? ? ?' on one line, bound block nesting. */
function blockTooDeep(text: string): boolean {
  return /(?:[-?:] ){41}/.test(text) || text.split('\n').some((line) => /^ {400}/.test(line));
}

interface Found {
  readonly place: Place;
  readonly path: KeyPath;
  readonly message: string;
  readonly mend: string;
}

/** Repeated keys, aliases, anchors and tags: odd input that a person does not write here. */
function oddities(document: Document, lines: LineCounter): Found[] {
  const found: Found[] = [];
  const add = (node: { range?: readonly number[] | null | undefined }, message: string, mend: string) =>
    found.push({ place: positionOf(lines, node.range?.[0] ?? 0), path: [], message, mend });
  visit(document, {
    Node(_, node) {
      if (isAlias(node)) add(node, 'refers to another part of the file (*)', 'Write the value out.');
      if (isMap(node)) {
        const seen = new Set<string>();
        for (const { key } of node.items) {
          if (found.length >= MOST_ODDITIES) return visit.BREAK;
          if (!isScalar(key)) {
            if (isNode(key)) add(key, 'uses a map or list as a key', 'Write keys as plain words.');
            continue;
          }
          const name = String(key.value);
          if (seen.has(name))
            add(key, `the key '${name.slice(0, 60)}' stands twice in the same map`, 'Keep one of them.');
          seen.add(name);
        }
      }
      if (found.length >= MOST_ODDITIES) return visit.BREAK;
      return undefined;
    },
  });
  return found;
}

/** First sentence of the parser's message, without its excerpt of the text. */
function plainMessage(message: string): string {
  if (message.startsWith('Source contains multiple documents')) return 'a second document begins here (---)';
  return (message.split('\n')[0] ?? message).replace(/ at line \d+, column \d+:?$/, '').replace(/\.$/, '');
}

/** What the parser could not read: the first trouble of each line, since one mistake causes several. */
function brokenLines(document: Document, lines: LineCounter, file: string): Problem[] {
  const problems: Problem[] = [];
  for (const { message, pos } of [...document.errors, ...document.warnings]) {
    const place = positionOf(lines, pos[0]);
    if (problems.length >= MOST_PROBLEMS || problems.some(({ line }) => line === place.line)) continue;
    const told = message.startsWith('Source contains multiple documents')
      ? { message: 'a second document begins here (---)', mend: 'Keep one to a file.' }
      : {
          message: `is not sound YAML: ${plainMessage(message)}`,
          mend: 'Check indentation (spaces only), colons and quotes on this line and the one before.',
        };
    problems.push({ file, ...place, path: '', ...told });
  }
  return problems;
}

/** Parses YAML 1.2 within bounds; never throws and does not follow references. */
export function parseYaml(
  text: string,
  file: string,
): ParsedYaml | { readonly problems: readonly Problem[] } {
  const first = textProblem(text, file);
  if (first) return { problems: [first] };
  if (blockTooDeep(text))
    return { problems: [whole(file, 'is nested too deeply', `Nest at most ${DEEPEST} levels.`)] };
  const lines = new LineCounter();
  try {
    const document = parseDocument(text, {
      lineCounter: lines,
      uniqueKeys: false,
      // Anything quieter would drop a second document without a word.
      logLevel: 'error',
      prettyErrors: false,
    });
    const broken = brokenLines(document, lines, file);
    if (broken.length > 0) return { problems: broken };
    const odd = oddities(document, lines);
    if (odd.length > 0)
      return {
        problems: odd.map(({ place, message, mend }) => ({ file, ...place, path: '', message, mend })),
      };
    return { document, lines, value: document.toJS({ maxAliasCount: 0 }) };
  } catch (error) {
    const message = error instanceof RangeError ? 'is nested too deeply' : 'cannot be read as YAML';
    return { problems: [whole(file, message, 'Start again from one of the examples.')] };
  }
}
