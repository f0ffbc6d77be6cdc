import { z } from 'zod';
import type { Finding } from '../enclosure/check/finding.ts';
import { located } from '../enclosure/check/finding.ts';
import { waterRemarks } from '../enclosure/check/water-remarks.ts';
import { ownSource, type ShelfWater } from '../enclosure/plan/shelf.ts';
import { parseYaml } from '../enclosure/read/parse-yaml.ts';
import { placeOf } from '../enclosure/read/places.ts';
import type { KeyPath } from '../enclosure/read/problem.ts';
import { idOf, problemsOf } from '../enclosure/read/read-enclosure.ts';
import { list } from '../enclosure/schema/strict.ts';
import { ownWaterSchema } from '../enclosure/schema/water.ts';

/** A file of waters: those that can be used, and everything that needs a look, with its place. */
export interface ReadWaters {
  readonly waters: readonly ShelfWater[];
  readonly findings: readonly Finding[];
}

const file = z.strictObject({ waters: list(ownWaterSchema, 'Waters by their analysis.', 20) });

const isMap = (value: unknown): value is Record<string, unknown> =>
  value !== null && typeof value === 'object' && !Array.isArray(value);

/**
 * Reads waters by their analysis from a text of its own: the keys of one water, a list of them, or a map with
 * `waters` as in the enclosure file. A single water needs no `id`: it is then named after the file. Never throws.
 */
export function readWaters(text: string, fileName: string): ReadWaters {
  const parsed = parseYaml(text, fileName);
  if ('problems' in parsed)
    return { waters: [], findings: parsed.problems.map((problem) => ({ ...problem, severity: 'blocking' })) };
  const { value } = parsed;
  const wrapped = isMap(value) && 'waters' in value;
  const single = isMap(value) && !wrapped;
  const waters = wrapped ? value.waters : single ? [{ id: idOf(fileName), ...value }] : value;
  const result = file.safeParse({ waters });
  // Paths of the schema start with waters and a place; the text of a list or of one water starts further down.
  const own = (path: KeyPath) => path.slice(wrapped ? 0 : single ? 2 : 1);
  if (!result.success) {
    const issues = result.error.issues.map((issue) => ({ ...issue, path: [...own(issue.path as KeyPath)] }));
    const problems = problemsOf(new z.ZodError(issues), parsed, fileName);
    return { waters: [], findings: problems.map((problem) => ({ ...problem, severity: 'blocking' })) };
  }
  const read = result.data.waters;
  const [first] = read;
  if (!first) return { waters: [], findings: [] };
  const document = {
    fileName,
    placeOf: (path: KeyPath) => placeOf(parsed.document, parsed.lines, path),
  };
  const findings = waterRemarks({
    waters: read,
    water: { level: 1, fill: first.id, 'top-off': first.id },
  }).map((remark) => located({ ...remark, path: own(remark.path) }, document));
  const blocked = findings.some(({ severity }) => severity === 'blocking');
  return { waters: blocked ? [] : read.map(ownSource), findings };
}
