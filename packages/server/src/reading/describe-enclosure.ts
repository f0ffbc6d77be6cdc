import { type LocatedFinding, openEnclosure, type ReadBeside } from '@shoreglass/contract';

export interface Description {
  readonly name: string;
  readonly findings: LocatedFinding[];
}

/** What a text says its enclosure is called (its id when it does not), and what is found in it. */
export function describeEnclosure(
  { id, text }: { readonly id: string; readonly text: string },
  readBeside: ReadBeside,
): Description {
  const { document, findings } = openEnclosure(text, `${id}.yaml`, { readBeside });
  return {
    name: document?.content.name ?? id,
    findings: findings.map(({ severity, line, column, path, value, message, mend, source }) => ({
      severity,
      line,
      column,
      path,
      ...(value === undefined ? {} : { value }),
      message,
      mend,
      ...(source === undefined ? {} : { source }),
    })),
  };
}
