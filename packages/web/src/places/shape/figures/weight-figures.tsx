import type { PaneCase, ShapeSheet } from '@shoreglass/engine';
import { quantityText } from '@shoreglass/figures';
import { type Amounts, daysText } from './amounts.ts';
import { cautionsAt } from './cautions-at.ts';
import { Assumption, FigureList, FigurePart, WideTable } from './figure-list.tsx';
import styles from './figures.module.css';

interface PartProps {
  readonly sheet: ShapeSheet;
  readonly amounts: Amounts;
}

/** What it weighs, part by part, and what the floor carries. */
export function WeightFigures({ sheet, amounts }: PartProps) {
  const { masses } = sheet;
  const { mass, pressure, force } = amounts;
  return (
    <FigurePart id="weight" title="Weight" cautions={cautionsAt(sheet, 'ground', 'hardscape')}>
      <p className={styles.headline}>
        <strong>{mass(masses.total)}</strong>
        <span>{mass(masses.drained)} drained</span>
      </p>
      <FigureList
        figures={[
          ...masses.parts.map(({ name, mass: part }) => ({ name, value: mass(part) })),
          {
            name: 'Load on the floor',
            value: pressure(masses.floorPressure),
            note: 'spread evenly over its footprint',
          },
          {
            name: 'Load on a stand',
            value: `${force(masses.standLineLoad)}/m`,
            note: 'on each of its two long sides',
          },
          ...masses.uplift.map(({ name, force: up }) => ({
            name: `Uplift of ${name}`,
            value: force(Math.abs(up)),
            note: up > 0 ? 'it floats unless it is held down' : 'it stays down by its own weight',
          })),
        ]}
      />
      <Assumption>{masses.assumption}</Assumption>
    </FigurePart>
  );
}

/** Stress and bending of the panes, and what that leaves. */
export function GlassFigures({ sheet, amounts }: PartProps) {
  const { structure } = sheet;
  const { length, deflection, smallVolume, area } = amounts;
  const { silicone, foam } = structure;
  return (
    <FigurePart id="glass" title="Glass and joints" cautions={cautionsAt(sheet, 'glass', 'building')}>
      <p>
        {length(structure.thickness)} panes, upper edge {structure.topEdge}. Factor: strength of annealed
        glass taken as {quantityText(structure.allowedStress / 1e6, 'MPa', 1)} of working stress, over the
        stress.
      </p>
      <WideTable name="Stress and bending of the panes">
        <thead>
          <tr>
            <th scope="col">pane</th>
            <th scope="col">case</th>
            <th scope="col">stress</th>
            <th scope="col">bends</th>
            <th scope="col">factor</th>
          </tr>
        </thead>
        <tbody>
          {structure.panes.flatMap((pane) => {
            const cases = [
              { name: 'at this level', figures: pane.planned },
              { name: 'full to the rim', figures: pane.full },
              {
                name: structure.topEdge === 'free' ? 'full, edge braced' : 'full, edge free',
                figures: pane.otherEdge,
              },
            ];
            return cases.map(({ name, figures }) => (
              <tr key={`${pane.pane} ${name}`}>
                <th scope="row">{pane.pane}</th>
                <td>{name}</td>
                <CaseCells figures={figures} deflection={deflection} outside={pane.outside} />
              </tr>
            ));
          })}
        </tbody>
      </WideTable>
      <ul className={styles.sentences}>
        {structure.advice.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      <h3>Silicone{foam ? ' and foam' : ''}</h3>
      <FigureList
        figures={[
          {
            name: 'Joints',
            value: length(silicone.jointLength),
            note: `${area(silicone.area)} bonded, ${smallVolume(silicone.volume)} with waste: ${Math.ceil(silicone.cartridges)} cartridge${Math.ceil(silicone.cartridges) === 1 ? '' : 's'} of 310 mL`,
          },
          {
            name: 'Before filling',
            value: daysText(silicone.beforeFilling),
            note: `the bead cures through in ${daysText(silicone.throughCure)}`,
          },
          foam
            ? {
                name: 'Foam',
                value: smallVolume(foam.volume),
                note: `${Math.ceil(foam.cans)} can${Math.ceil(foam.cans) === 1 ? '' : 's'} of 750 mL; leave it ${daysText(foam.cure)}`,
              }
            : undefined,
        ]}
      />
    </FigurePart>
  );
}

interface CaseCellsProps {
  readonly figures: PaneCase | undefined;
  readonly deflection: (metres: number) => string;
  readonly outside: string | undefined;
}

function CaseCells({ figures, deflection, outside }: CaseCellsProps) {
  if (!figures) return <td colSpan={3}>{outside ?? 'no figure'}</td>;
  return (
    <>
      <td>{quantityText(figures.stress / 1e6, 'MPa', 1)}</td>
      <td>{deflection(figures.deflection)}</td>
      <td className={figures.factor < 1 ? styles.alarm : undefined}>{figures.factor.toFixed(1)}</td>
    </>
  );
}
