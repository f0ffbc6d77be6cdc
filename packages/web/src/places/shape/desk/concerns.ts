import { type Finding, pathText } from '@shoreglass/contract';
import type { SoundShape } from '../../../worker/shape-orders.ts';
import type { Handle, Measure, ShapeContent } from '../handles/handle.ts';

/** Something that speaks against the shape as it is, and the handle it is about. */
export interface Concern {
  readonly severity: Finding['severity'];
  readonly message: string;
  readonly mend: string;
  readonly handle: Handle | undefined;
  readonly measure: Measure | undefined;
}

type About = Pick<Finding, 'severity' | 'message' | 'mend'> & { readonly path: string };

/** Parts of the file that are shaped here; what is found elsewhere is told with the text. */
const SHAPED = /^(glass|cover|zones|water\.level|hardscape|devices)\b/;

/** Warnings of the check and all remarks of the sheet, each once, with the handle whose measure lies nearest. */
export function concernsOf(
  { content, sheet }: SoundShape,
  findings: readonly Finding[],
  handles: readonly Handle[],
): Concern[] {
  const abouts: About[] = [
    ...findings.filter(({ severity, path }) => severity !== 'note' && SHAPED.test(path)),
    ...sheet.remarks.map((remark) => ({ ...remark, path: filePath(remark.place, content) })),
  ];
  const once = abouts.filter(
    ({ message }, index) => abouts.findIndex((other) => other.message === message) === index,
  );
  return once
    .map(({ severity, message, mend, path }) => ({ severity, message, mend, ...nearestTo(path, handles) }))
    .sort((a, b) => ORDER[a.severity] - ORDER[b.severity]);
}

const ORDER = { blocking: 0, warning: 1, note: 2 } as const;

/** Keys of the plan that the file names otherwise. */
const NAMES: Readonly<Record<string, string>> = {
  'box.glassThickness': 'glass.thickness',
  'box.coverOpenFraction': 'cover.open',
  'box.coverGap': 'cover.gap',
  groundStart: 'ground.left',
  groundEnd: 'ground.right',
};

/** A place of the plan, such as `zones.bank.groundEnd`, as a path of the file: `zones[2].ground.right`. */
export function filePath(place: string, { zones, hardscape = [] }: ShapeContent): string {
  const whole = NAMES[place];
  if (whole !== undefined) return whole;
  const [part = '', id = '', ...rest] = place.split('.');
  const list = part === 'zones' ? zones : part === 'hardscape' ? hardscape : undefined;
  if (!list) return place.replace(/^box\b/, 'glass').replaceAll(/\.(\d+)(?=\.|$)/g, '[$1]');
  const index = list.findIndex((each) => each.id === id);
  const keys = rest
    .map((key) => NAMES[key] ?? key)
    .map((key) => (/^\d+$/.test(key) ? `[${key}]` : `.${key}`));
  return index < 0 ? part : `${part}[${index}]${keys.join('')}`;
}

/** The measure that stands at a path or inside it, else the one whose path shares the longest beginning; of several the one with the shortest path. */
function nearestTo(path: string, handles: readonly Handle[]): Pick<Concern, 'handle' | 'measure'> {
  let best: { handle: Handle; measure: Measure; shared: number } | undefined;
  for (const handle of handles)
    for (const measure of handle.measures) {
      const shared = sharedKeys(pathText(measure.path), path);
      const isNearer = shared === best?.shared && measure.path.length < best.measure.path.length;
      if (shared > (best?.shared ?? 0) || isNearer) best = { handle, measure, shared };
    }
  const needed = keysOf(path)[0] === 'devices' || /\[/.test(path) ? 2 : 1;
  return best && best.shared >= needed
    ? { handle: best.handle, measure: best.measure }
    : { handle: undefined, measure: undefined };
}

function sharedKeys(a: string, b: string): number {
  const [first, second] = [keysOf(a), keysOf(b)];
  let count = 0;
  while (count < first.length && first[count] === second[count]) count++;
  return count;
}

const keysOf = (path: string) => path.split(/[.[\]]+/).filter((key) => key !== '');
