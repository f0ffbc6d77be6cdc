import { type Finding, problemLine } from '@shoreglass/contract';
import colours from 'picocolors';
import { type Sentence, type ToldTogether, toldOnce } from './told-once.ts';
import { terminalWidth } from './width.ts';
import { wrapped } from './wrapped.ts';

const WIDEST = 120;
const INDENT = '  ';
const DEEPER = '    ';

/** As wide as it takes where nothing tells a width, so that programs find one finding a line. */
const width = (): number => {
  const across = terminalWidth();
  return across === undefined ? Number.POSITIVE_INFINITY : Math.min(across, WIDEST);
};

const put = (text: string): string => wrapped(text, width(), DEEPER, INDENT);
const below = (text: string): string => wrapped(text, width(), DEEPER);

/** Where else the same is told. */
function alsoAt([, ...others]: readonly Finding[]): string[] {
  if (others.length === 0) return [];
  const places = others.map(({ line, column, path }) => `${line}:${column} ${path}`);
  return [below(`the same at ${places.join(', ')}`)];
}

function sentenceLines({ text, of }: Sentence<Finding>, mend: string): string[] {
  const [first] = of as [Finding, ...Finding[]];
  return [put(problemLine({ ...first, message: text, mend })), ...alsoAt(of)];
}

function togetherLines({ first: { mend, source }, sentences }: ToldTogether<Finding>): string[] {
  const isOne = sentences.length === 1;
  return [
    ...sentences.flatMap((sentence) => sentenceLines(sentence, isOne ? mend : '')),
    ...(isOne || mend === '' ? [] : [below(`for each: ${mend}`)]),
    ...(source ? [colours.dim(below(`source: ${source}`))] : []),
  ];
}

/** Findings of one weight, the same reason for several animals told once, with every place. */
export function findingLines(findings: readonly Finding[]): string[] {
  const told = findings.every(({ severity }) => severity === 'blocking')
    ? findings.map((one) => ({ first: one, sentences: [{ text: one.message, of: [one] }] }))
    : toldOnce(findings);
  return told.flatMap(togetherLines);
}
