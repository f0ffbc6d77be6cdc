import { checkGeometry, type Plan } from '@shoreglass/engine';
import type { KeyPath } from '../read/problem.ts';
import type { EnclosureContent } from '../schema/enclosure.ts';
import type { Remark } from './finding.ts';

/** Keys of the plan that the file names otherwise. */
const KEYS: Readonly<Record<string, KeyPath>> = {
  groundStart: ['ground', 'left'],
  groundEnd: ['ground', 'right'],
  box: ['glass'],
  glassThickness: ['thickness'],
  coverOpenFraction: ['open'],
};

/** 'zones.bank.groundEnd' of the plan as a path of the file. */
function pathOf(place: string, content: EnclosureContent): KeyPath {
  const [part = '', ...rest] = place.split('.');
  const translated = (keys: readonly string[]): KeyPath => keys.flatMap((key) => KEYS[key] ?? [key]);
  const lists = { zones: content.zones, hardscape: content.hardscape ?? [] };
  if (part === 'zones' || part === 'hardscape') {
    const index = lists[part].findIndex(({ id }) => id === rest[0]);
    if (index < 0) return [part];
    return [
      part,
      index,
      ...translated(rest.slice(1)).map((key) => (/^\d+$/.test(String(key)) ? Number(key) : key)),
    ];
  }
  return translated([part, ...rest]).map((key) => (/^\d+$/.test(String(key)) ? Number(key) : key));
}

/** What cannot stand as drawn. */
export function geometryRemarks(
  content: EnclosureContent,
  drawn: Pick<Plan, 'box' | 'zones' | 'hardscape' | 'water'>,
): Remark[] {
  return checkGeometry(drawn).map(({ place, message, mend, severity = 'blocking' }) => ({
    severity,
    path: pathOf(place, content),
    message,
    mend,
  }));
}
