import type { Severity } from '../check/finding.ts';
import { waterRemarks } from '../check/water-remarks.ts';
import { toldApart } from '../schema/say.ts';
import { ownWaterSchema } from '../schema/water.ts';
import { ownSource, type ShelfWater } from './shelf.ts';

/** Something a written analysis says that needs a look; `key` is the line it stands in. */
export interface AnalysisFinding {
  readonly severity: Severity;
  readonly key: string | undefined;
  readonly message: string;
  readonly mend: string;
}

export interface WrittenAnalysis {
  /** There unless something blocks it. */
  readonly water?: ShelfWater;
  readonly findings: readonly AnalysisFinding[];
}

/**
 * A water report as typed, key by key as in the file's `waters` (`calcium: '98 mg/L'`): the water it makes, what was
 * inferred, and whether its charges add up.
 */
export function analyseWater(written: Readonly<Record<string, string>>): WrittenAnalysis {
  const read = ownWaterSchema.safeParse(written);
  if (!read.success)
    return {
      findings: read.error.issues.map(({ path, message }) => ({
        severity: 'blocking',
        key: path[0] === undefined ? undefined : String(path[0]),
        ...toldApart(message),
      })),
    };
  const own = read.data;
  // Only its waters are looked at; the blends of a file have no part in an analysis.
  const content = { waters: [own], water: { level: 1, fill: own.id, 'top-off': own.id } };
  const findings = waterRemarks(content).map(
    ({ severity, path, message, mend }): AnalysisFinding => ({
      severity,
      // Keys of the remark from the top: waters, its place, the line of the analysis.
      key: path[2] === undefined ? undefined : String(path[2]),
      message,
      mend,
    }),
  );
  if (findings.some(({ severity }) => severity === 'blocking')) return { findings };
  return { water: ownSource(own), findings };
}
