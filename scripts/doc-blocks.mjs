// npm run doc-blocks: every exported function of the engine says what it returns and where its equation is from.
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import ts from 'typescript';
import { ROOT } from './install.mjs';

const ENGINE = join(ROOT, 'packages/engine/src');
const references = JSON.parse(readFileSync(join(ROOT, 'docs/references.json'), 'utf8'));
// In these folders a function that returns a number is an equation or a rule, and must say whose.
const SCIENCE = /[\\/](water|climate|light|geometry|cycle|life)[\\/]/;
const ORIGIN = /@source|derived|assumed|memory|definition/;

function* sourceFiles(folder) {
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) yield* sourceFiles(path);
    else if (path.endsWith('.ts') && !path.includes('.test.') && entry.name !== 'index.ts') yield path;
  }
}

const isExported = (node) =>
  node.modifiers?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword) ?? false;

function docBlock(node, text) {
  const comments = ts.getLeadingCommentRanges(text, node.getFullStart()) ?? [];
  const last = comments.at(-1);
  return last ? text.slice(last.pos, last.end) : '';
}

const problems = [];
let functions = 0;
for (const path of sourceFiles(ENGINE)) {
  const text = readFileSync(path, 'utf8');
  const file = ts.createSourceFile(path, text, ts.ScriptTarget.ES2022, true);
  const where = (node) =>
    `${relative(ROOT, path)}:${file.getLineAndCharacterOfPosition(node.getStart(file)).line + 1}`;
  for (const node of file.statements) {
    if (!ts.isFunctionDeclaration(node) || !isExported(node)) continue;
    functions += 1;
    const doc = docBlock(node, text);
    if (!doc.startsWith('/**')) problems.push(`${where(node)} ${node.name?.text} has no doc block`);
    else if (SCIENCE.test(path) && node.type?.getText(file) === 'number' && !ORIGIN.test(doc))
      problems.push(`${where(node)} ${node.name?.text} does not say its source`);
  }
  for (const [, key] of text.matchAll(/@source ([a-z][a-z-]*-\d{4}[\w-]*)/g)) {
    if (!(key in references))
      problems.push(`${relative(ROOT, path)} cites ${key}, which docs/references.json lacks`);
  }
}
for (const problem of problems) console.error(problem);
console.log(`${functions} exported functions, ${problems.length} problems`);
process.exit(problems.length > 0 ? 1 : 0);
