import type { ShapeSheet } from '@shoreglass/engine';
import { quantityText } from '@shoreglass/figures';
import { hoursText } from './amounts.ts';
import { cautionsAt } from './cautions-at.ts';
import { Assumption, FigurePart, WideTable } from './figure-list.tsx';
import styles from './figures.module.css';

const density = (value: number) => quantityText(value, 'µmol/m²/s', value < 10 ? 1 : 0);
const daily = (value: number) => quantityText(value, 'mol/m²/day', 1);

/** Light on water, land and plants. */
export function LightFigures({ sheet }: { readonly sheet: ShapeSheet }) {
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

const VERDICT = {
  'too dark': 'too dark',
  lasts: 'lasts',
  thrives: 'thrives',
  'not known': 'its need is not known;',
} as const;
