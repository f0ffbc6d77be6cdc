import { type Band, type Plan, seriesSpec } from '@shoreglass/engine';
import { palette, quantityText, sharedRange, sharedRangeScene } from '@shoreglass/figures';
import { useMemo } from 'react';
import { useView } from '../../../app/view.ts';
import { SceneView } from '../../../drawing/scene-view.tsx';
import { useWidth } from '../../../drawing/use-width.ts';
import { capital, ownerName } from '../../../outlook/turning-words.ts';
import styles from './shared-ranges.module.css';

interface Group {
  readonly series: Band['series'];
  readonly bands: readonly Band[];
}

interface SharedRangesProps {
  readonly plan: Plan;
}

/** Where the ranges of all who live here meet, quantity by quantity, and who narrows them. */
export function SharedRanges({ plan }: SharedRangesProps) {
  const groups = useMemo(() => groupsOf(plan.bands), [plan]);
  if (groups.length === 0) return null;
  return (
    <section aria-labelledby="shared" className={styles.part}>
      <h2 id="shared">Air and water they share</h2>
      <p className={styles.key}>
        A line for each; the hatched stretch suits all of them. A line that runs out at the side has no limit
        known.
      </p>
      <ul className={styles.list}>
        {groups.map((group) => (
          <li key={group.series}>
            <OneRange {...group} />
          </li>
        ))}
      </ul>
    </section>
  );
}

function groupsOf(bands: readonly Band[]): Group[] {
  const groups = new Map<Band['series'], Band[]>();
  for (const band of bands) {
    if (band.low === undefined && band.high === undefined) continue;
    groups.set(band.series, [...(groups.get(band.series) ?? []), band]);
  }
  return [...groups].map(([series, own]) => ({ series, bands: own }));
}

function OneRange({ series, bands }: Group) {
  const [host, width] = useWidth<HTMLDivElement>();
  const view = useView((state) => state.view);
  const { name, unit } = seriesSpec(series);
  const ranges = useMemo(
    () => bands.map(({ owner, low, high }) => ({ owner: ownerName(owner), low, high })),
    [bands],
  );
  const scene = useMemo(
    () =>
      width > 0
        ? sharedRangeScene({ name: capital(name), unit, ranges, width, palette: palette(view), id: series })
        : undefined,
    [name, unit, ranges, width, view, series],
  );
  return (
    <>
      <h3>{capital(name)}</h3>
      <p>{capital(narrowedWords(ranges, unit))}</p>
      <div ref={host}>{scene && <SceneView scene={scene} />}</div>
    </>
  );
}

function narrowedWords(ranges: Parameters<typeof sharedRange>[0], unit: string): string {
  const { low, high, lowOwner, highOwner, apart } = sharedRange(ranges);
  const text = (value: number) =>
    quantityText(value, unit, (String(Number(value.toPrecision(4))).split('.')[1] ?? '').length);
  if (low !== undefined && high !== undefined) {
    if (apart)
      return `Nothing suits all: ${lowOwner} need at least ${text(low)}, ${highOwner} bear at most ${text(high)}.`;
    if (low === high)
      return `Only ${text(low)} suits all: the least for ${lowOwner}, the most for ${highOwner}.`;
    if (lowOwner === highOwner)
      return `From ${text(low)} to ${text(high)}; ${lowOwner} narrow it at both ends.`;
    return `From ${text(low)}, for ${lowOwner}, to ${text(high)}, for ${highOwner}.`;
  }
  if (low !== undefined) return `At least ${text(low)}, for ${lowOwner}.`;
  return high === undefined ? '' : `At most ${text(high)}, for ${highOwner}.`;
}
