import type { Plan } from '@shoreglass/engine';
import { library as bundled, type Library } from '@shoreglass/library';
import { drawnOf } from '../plan/drawn-of.ts';
import { planOf } from '../plan/plan-of.ts';
import { type EnclosureDocument, readEnclosure } from '../read/read-enclosure.ts';
import { cautionRemarks } from './cautions.ts';
import { deviceRemarks } from './device-remarks.ts';
import { byWeight, type Finding, located, type Remark } from './finding.ts';
import { geometryRemarks } from './geometry-remarks.ts';
import { groundRemarks } from './ground-remarks.ts';
import { inhabitantRemarks } from './inhabitant-remarks.ts';
import { careRemarks, referenceRemarks, repeatedRemarks } from './references.ts';
import { type ReadBeside, seriesOf } from './series-of.ts';
import { unusedRemarks } from './unused.ts';
import { topOffRemarks, waterRemarks } from './water-remarks.ts';

export interface CheckOptions {
  readonly library?: Library;
  /** Reads a text file by its path from the enclosure file's folder; without it there are none. */
  readonly readBeside?: ReadBeside;
}

export interface Checked {
  /** There unless something blocks it. */
  readonly plan?: Plan;
  /** Worst first. */
  readonly findings: readonly Finding[];
}

const isBlocked = (findings: readonly Finding[]) => findings.some(({ severity }) => severity === 'blocking');

/** Everything about an enclosure that needs a look, and its plan when nothing blocks it. */
export function checkEnclosure(document: EnclosureDocument, options: CheckOptions = {}): Checked {
  const { library = bundled, readBeside = () => undefined } = options;
  const { content } = document;
  const place = (remarks: readonly Remark[]) => remarks.map((remark) => located(remark, document));
  const { series, findings: room } = seriesOf(document, library, readBeside);
  const findings: Finding[] = [
    ...place([
      ...referenceRemarks(content, library),
      ...repeatedRemarks(content),
      ...careRemarks(content),
      ...waterRemarks(content),
    ]),
    ...room,
  ];
  const done = (plan?: Plan): Checked => ({ ...(plan ? { plan } : {}), findings: findings.sort(byWeight) });
  if (isBlocked(findings)) return done();
  findings.push(...place(geometryRemarks(content, drawnOf(content, library))));
  if (isBlocked(findings)) return done();
  const plan = planOf(document, library, series);
  findings.push(
    ...place([
      ...unusedRemarks(content, library),
      ...topOffRemarks(content, library),
      ...groundRemarks(plan),
      ...inhabitantRemarks(content, plan, library),
      ...deviceRemarks(content, plan),
      ...cautionRemarks(content, plan, library),
    ]),
  );
  return done(plan);
}

export interface Opened extends Checked {
  /** There unless the text cannot be read as an enclosure file. */
  readonly document?: EnclosureDocument;
}

/** Reads and checks in one go: problems of the text are blocking findings. */
export function openEnclosure(text: string, fileName: string, options: CheckOptions = {}): Opened {
  const { document, problems } = readEnclosure(text, fileName);
  if (!document) return { findings: problems.map((problem) => ({ ...problem, severity: 'blocking' })) };
  return { document, ...checkEnclosure(document, options) };
}
