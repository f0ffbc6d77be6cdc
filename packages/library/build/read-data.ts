import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseDocument } from 'yaml';
import { ENTRY_SCHEMAS, type EntryKind, type LibraryData } from '../src/schema/entries.ts';

/** Names without ending of the files of a folder, in an order that does not depend on the machine. */
function filesOf(folder: string, ending: string): string[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith(ending))
    .map((name) => name.slice(0, -ending.length))
    .sort();
}

function parsed(path: string): unknown {
  const document = parseDocument(readFileSync(path, 'utf8'), { uniqueKeys: true });
  const [first] = document.errors;
  if (first) throw new Error(`${path}: ${first.message}`);
  return document.toJS({ maxAliasCount: 0 });
}

function readEntries(data: string, kind: EntryKind, problems: string[]): Record<string, unknown> {
  const entries: Record<string, unknown> = {};
  for (const id of filesOf(join(data, kind), '.yaml')) {
    const place = `${kind}/${id}.yaml`;
    const result = ENTRY_SCHEMAS[kind].safeParse(parsed(join(data, kind, `${id}.yaml`)));
    if (!result.success) {
      for (const { path, message } of result.error.issues)
        problems.push(`${place}: ${path.join('.')}: ${message}`);
      continue;
    }
    const named = 'id' in result.data ? result.data.id : result.data.process;
    if (named !== id) problems.push(`${place}: names itself '${named}', not '${id}' as its file`);
    entries[id] = result.data;
  }
  return entries;
}

/** Every file of the data folder, checked. @throws Error listing all problems of all files. */
export function readData(data: string): LibraryData {
  const problems: string[] = [];
  const entries = Object.fromEntries(
    (Object.keys(ENTRY_SCHEMAS) as EntryKind[]).map((kind) => [kind, readEntries(data, kind, problems)]),
  );
  if (problems.length > 0)
    throw new Error(`${problems.length} problems in the library:\n${problems.join('\n')}`);
  const texts = (folder: string, ending: string) =>
    Object.fromEntries(
      filesOf(join(data, folder), ending).map((id) => [
        id,
        readFileSync(join(data, folder, id + ending), 'utf8').replaceAll('\r\n', '\n'),
      ]),
    );
  return {
    ...entries,
    enclosures: texts('enclosures', '.yaml'),
    series: texts('series', '.csv'),
  } as LibraryData;
}
