import type { ShapeSheet } from '@shoreglass/engine';
import type { Amounts } from './amounts.ts';
import { FigureList, FigurePart, WideTable } from './figure-list.tsx';
import styles from './figures.module.css';
import { LineChart, roundTicks } from './line-chart.tsx';

interface PartProps {
  readonly sheet: ShapeSheet;
  readonly amounts: Amounts;
}

/** How much water there is, and where. */
export function WaterFigures({ sheet: { geometry }, amounts }: PartProps) {
  const { volume, area, length } = amounts;
  return (
    <FigurePart id="water" title="Water">
      <p className={styles.headline} data-figure="water-volume">
        <strong>{volume(geometry.waterVolume)}</strong>
        <span>
          {volume(geometry.openVolume)} open, {volume(geometry.poreVolume)} in the pores of the ground
        </span>
      </p>
      <FigureList
        figures={[
          { name: 'Level', value: length(geometry.level) },
          {
            name: 'Freeboard',
            value: length(geometry.freeboard),
            note: `up to ${geometry.lowestOpening.name} at ${length(geometry.lowestOpening.height)}, where it holds ${volume(geometry.capacity)}`,
          },
          { name: 'Water surface', value: area(geometry.surfaceArea) },
          {
            name: 'Surfaces under water',
            value: area(geometry.submergedArea),
            note: `${area(geometry.filmArea)} with the pores of soaked layers`,
          },
          { name: 'Displaced by wood and stone', value: volume(geometry.displaced) },
          { name: 'Air', value: volume(geometry.airVolume) },
        ]}
      />
      <LevelChart geometry={geometry} amounts={amounts} />
    </FigurePart>
  );
}

/** How much water each level means, the planned one marked. */
function LevelChart({
  geometry,
  amounts,
}: {
  readonly geometry: ShapeSheet['geometry'];
  readonly amounts: Amounts;
}) {
  const { curve, level, waterVolume, capacity } = geometry;
  const { length, volume, axes } = amounts;
  const points = curve.levels.map(
    (at, index) => [at * axes.length.per, (curve.volumes[index] ?? 0) * axes.volume.per] as const,
  );
  return (
    <LineChart
      label={`Water against level; ${volume(waterVolume)} at ${length(level)}, ${volume(capacity)} at the lowest opening.`}
      lines={[{ name: 'water', points }]}
      x={{
        name: `level, ${axes.length.unit}`,
        ticks: roundTicks((curve.levels.at(-1) ?? level) * axes.length.per, 6),
      }}
      y={{ name: axes.volume.unit, ticks: roundTicks(capacity * axes.volume.per) }}
      mark={{ x: level * axes.length.per, y: waterVolume * axes.volume.per, text: volume(waterVolume) }}
    />
  );
}

const DRAINAGE = {
  'under water': 'under water',
  soggy: 'stays soggy',
  moist: 'stays moist',
  drains: 'drains',
} as const;

/** What each zone holds, and whether its soil stays wet. */
export function ZoneFigures({ sheet: { zones, geometry }, amounts }: PartProps) {
  const { volume, area, length } = amounts;
  return (
    <FigurePart id="zones" title="Zones">
      <WideTable name="Zone by zone">
        <thead>
          <tr>
            <th scope="col">zone</th>
            <th scope="col">area</th>
            <th scope="col">of it wet</th>
            <th scope="col">deepest</th>
            <th scope="col">steepest</th>
            <th scope="col">soil</th>
            <th scope="col">its ground</th>
          </tr>
        </thead>
        <tbody>
          {zones.map((zone) => (
            <tr key={zone.id}>
              <th scope="row">{zone.name}</th>
              <td>{area(zone.area)}</td>
              <td>{area(zone.waterArea)}</td>
              <td>{zone.greatestDepth > 0 ? length(zone.greatestDepth) : '–'}</td>
              <td>{slopeText(zone.steepest)}</td>
              <td>{zone.soilVolume > 0 ? volume(zone.soilVolume) : '–'}</td>
              <td>{DRAINAGE[zone.drainage]}</td>
            </tr>
          ))}
        </tbody>
      </WideTable>
      <FigureList
        figures={[
          {
            name: 'Land',
            value: area(geometry.landArea),
            note: `margin, from just under to just over the water, ${area(geometry.marginArea)}`,
          },
          geometry.wallArea > 0 ? { name: 'Walls', value: area(geometry.wallArea) } : undefined,
          { name: 'Topsoil', value: volume(geometry.soilVolume) },
        ]}
      />
    </FigurePart>
  );
}

function slopeText(slope: number): string {
  return `${Math.round((Math.atan(slope) * 180) / Math.PI)}°`;
}

/** Ways out of the water, and ways out of the glass. */
export function WayFigures({ sheet: { geometry }, amounts }: PartProps) {
  const { escapes, gaps } = geometry;
  const { length } = amounts;
  return (
    <FigurePart id="ways" title="Ways out">
      <p>
        {escapes.hasWayOut
          ? `Of ${length(escapes.shoreline)} of shore, ${length(escapes.climbable)} can be climbed (45° at most).`
          : 'Nothing leads out of the water: an animal that does not swim for long would drown.'}
        {escapes.pieces.length > 0 && ` Through the surface stand: ${escapes.pieces.join(', ')}.`}
      </p>
      {gaps.length > 0 && (
        <>
          <h3>Gaps animals may leave by</h3>
          <ul className={styles.sentences}>
            {gaps.map(({ place, name, width }) => (
              <li key={place}>
                {name}: bodies up to {length(width)} wide
              </li>
            ))}
          </ul>
        </>
      )}
    </FigurePart>
  );
}
