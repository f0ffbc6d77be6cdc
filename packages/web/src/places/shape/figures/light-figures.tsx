import type { ShapeSheet } from '@shoreglass/engine';
import { quantityText } from '@shoreglass/figures';
import { type Amounts, hoursText } from './amounts.ts';
import { cautionsAt } from './cautions-at.ts';
import { Assumption, FigurePart, WideTable } from './figure-list.tsx';
import styles from './figures.module.css';
import { LineChart, roundTicks } from './line-chart.tsx';

const density = (value: number) => quantityText(value, 'µmol/m²/s', value < 10 ? 1 : 0);
const daily = (value: number) => quantityText(value, 'mol/m²/day', 1);

/** Light on water, land and plants. */
export function LightFigures({ sheet, amounts }: { readonly sheet: ShapeSheet; readonly amounts: Amounts }) {
  const { light } = sheet;
  return (
    <FigurePart id="light" title="Light" cautions={cautionsAt(sheet, 'lamps')}>
      <p className={styles.headline}>
        <strong>{density(light.atWater)}</strong>
        <span>
          at the water, {daily(light.daily)} in {hoursText(light.hours)}
        </span>
      </p>
      <WideTable name="Light by zone">
        <thead>
          <tr>
            <th scope="col">zone</th>
            <th scope="col">darkest</th>
            <th scope="col">mean</th>
            <th scope="col">brightest</th>
            <th scope="col">a day, mol/m²</th>
          </tr>
        </thead>
        <tbody>
          {light.zones.map((zone) => (
            <tr key={zone.zone}>
              <th scope="row">{zone.name}</th>
              <td>{zone.lowest.toFixed(0)}</td>
              <td>{zone.mean.toFixed(0)}</td>
              <td>{zone.highest.toFixed(0)}</td>
              <td>{zone.daily.toFixed(1)}</td>
            </tr>
          ))}
        </tbody>
      </WideTable>
      <DepthChart light={light} depth={amounts.axes.length} />
      {light.plants.length > 0 && (
        <>
          <h3>Does each plant get its light?</h3>
          <ul className={styles.sentences}>
            {light.plants.map((plant) => (
              <li key={plant.planting}>
                {plant.name}: {VERDICT[plant.verdict]} at {density(plant.light)}
                {plant.least !== undefined && plant.good !== undefined && (
                  <span className={styles.mend}>
                    {' '}
                    (lasts from {plant.least}, thrives from {plant.good})
                  </span>
                )}
              </li>
            ))}
          </ul>
        </>
      )}
      {light.algae.length > 0 && (
        <>
          <h3>Where algae will like it</h3>
          <ul className={styles.sentences}>
            {light.algae.map(({ zone, why }) => (
              <li key={zone}>{why}</li>
            ))}
          </ul>
        </>
      )}
      <Assumption>{light.assumption}</Assumption>
    </FigurePart>
  );
}

interface DepthChartProps {
  readonly light: ShapeSheet['light'];
  readonly depth: Amounts['axes']['length'];
}

/** Light under the surface, mean over the pool. */
function DepthChart({ light: { depths, byDepth, attenuation }, depth }: DepthChartProps) {
  const deepest = depths.at(-1) ?? 0;
  if (depths.length < 2 || deepest <= 0) return null;
  return (
    <LineChart
      label={`Light by depth, attenuation ${attenuation.toFixed(2)} per metre.`}
      lines={[
        { name: 'light', points: depths.map((at, index) => [at * depth.per, byDepth[index] ?? 0] as const) },
      ]}
      x={{ name: `depth, ${depth.unit}`, ticks: roundTicks(deepest * depth.per) }}
      y={{ name: 'µmol/m²/s', ticks: roundTicks(Math.max(...byDepth)) }}
    />
  );
}

const VERDICT = {
  'too dark': 'too dark',
  lasts: 'lasts',
  thrives: 'thrives',
  'not known': 'its need is not known;',
} as const;
