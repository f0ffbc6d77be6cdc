import { experimentOf, familyOf } from '../flora/families.ts';
import type { Check, Expected, Kind } from '../harness/check.ts';
import { Inputs, isRecord } from '../harness/inputs.ts';
import { record, text } from '../harness/read-case.ts';

type Raw = Readonly<Record<string, unknown>>;

/** What a source key stands for, put into each case so that it can be read alone. */
function withSources(checks: readonly unknown[], sources: unknown): unknown[] {
  const cited = isRecord(sources) ? sources : {};
  return checks.map((raw) => {
    if (!isRecord(raw)) return raw;
    const keys = Array.isArray(raw.src) ? raw.src : [raw.src];
    const works = keys.map((key) => {
      const work = typeof key === 'string' ? cited[key] : undefined;
      return isRecord(work) && typeof work.cite === 'string' ? work.cite : String(key);
    });
    return { ...raw, source: works.join('; ') };
  });
}

/** An accepted range as its middle and half; a statement as 1. */
function expectedOf(given: Raw): Map<string, Expected> {
  const accept = record(given.accept, "'accept'");
  const { min, max } = accept;
  const name = text(given.quantity, "'quantity'");
  if (min === null && max === null)
    return new Map([['statement holds', { value: 1, unit: '-', absolute: 0, relative: 0 }]]);
  if (typeof min !== 'number' || typeof max !== 'number' || !(max >= min))
    throw new Error("'accept' needs 'min' and 'max', both numbers or both null");
  const unit = typeof given.unit === 'string' ? given.unit : '-';
  return new Map([[name, { value: (min + max) / 2, unit, absolute: (max - min) / 2, relative: 0 }]]);
}

/** The published value and range beside the source, since the judged middle is neither. */
function sourceOf(given: Raw): string {
  const accept = record(given.accept, "'accept'");
  const range =
    typeof accept.min === 'number' ? `, accepted ${String(accept.min)} to ${String(accept.max)}` : '';
  const published = `${String(given.value)} ${typeof given.unit === 'string' ? given.unit : ''}${range}`;
  const source = typeof given.source === 'string' ? given.source : '';
  return `${published} (${String(given.prov)}) ${source}`.trim();
}

/** { checks: [{ id, topic, setup, quantity, value, accept: { min, max }, unit, src }], sources } */
export const floraExperiments: Kind = {
  name: 'flora',
  cases(document) {
    if (!isRecord(document) || !Array.isArray(document.checks)) return undefined;
    const isOurs = (raw: unknown): boolean => isRecord(raw) && 'topic' in raw && 'accept' in raw;
    return document.checks.some(isOurs) ? withSources(document.checks, document.sources) : undefined;
  },
  read(raw): Check {
    const given = record(raw, 'the check');
    const topic = text(given.topic, "'topic'");
    const quantity = text(given.quantity, "'quantity'");
    return {
      id: text(given.id, "'id'"),
      key: familyOf(topic, quantity),
      inputs: new Inputs({ topic, quantity, setup: given.setup, unit: given.unit }),
      expected: expectedOf(given),
      source: sourceOf(given),
    };
  },
  calculation: experimentOf,
  abscissae: new Set(),
  title: () => '',
};
