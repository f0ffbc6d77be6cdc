import type { ShapeSheet } from '@shoreglass/engine';
import { quantityText } from '@shoreglass/figures';
import type { Amounts } from './amounts.ts';
import styles from './key-figures.module.css';

interface KeyFiguresProps {
  readonly sheet: ShapeSheet;
  readonly amounts: Amounts;
}

/** The few figures one watches while shaping. */
export function KeyFigures({ sheet, amounts }: KeyFiguresProps) {
  const { geometry, masses, structure, flow, light } = sheet;
  const factors = structure.panes.flatMap(({ planned }) => (planned ? [planned.factor] : []));
  const figures = [
    { name: 'water', value: amounts.volume(geometry.waterVolume) },
    { name: 'open', value: amounts.volume(geometry.openVolume) },
    { name: 'in pores', value: amounts.volume(geometry.poreVolume) },
    { name: 'whole weight', value: amounts.mass(masses.total) },
    { name: 'freeboard', value: amounts.length(geometry.freeboard) },
    ...(factors.length > 0 ? [{ name: 'pane factor', value: Math.min(...factors).toFixed(1) }] : []),
    ...(flow ? [{ name: 'pump', value: amounts.flow(flow.clean.flow) }] : []),
    { name: 'light on water', value: quantityText(light.atWater, 'µmol/m²/s') },
  ];
  return (
    <dl className={styles.key} aria-label="Figures while shaping">
      {figures.map(({ name, value }) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd data-key={name}>{value}</dd>
        </div>
      ))}
    </dl>
  );
}
