import type { FlowFigures as Flow, OperatingFigures, ShapeSheet } from '@shoreglass/engine';
import { quantityText } from '@shoreglass/figures';
import { type Amounts, percentText } from './amounts.ts';
import { cautionsAt } from './cautions-at.ts';
import { Assumption, FigureList, FigurePart, WideTable } from './figure-list.tsx';
import styles from './figures.module.css';
import { LineChart, roundTicks } from './line-chart.tsx';

interface FlowProps {
  readonly sheet: ShapeSheet;
  readonly amounts: Amounts;
}

/** What the pump really moves, and what comes back when it stops. */
export function FlowFigures({ sheet, amounts }: FlowProps) {
  const { flow } = sheet;
  if (!flow)
    return (
      <FigurePart id="flow" title="Flow">
        <p>Nothing pumps here.</p>
      </FigurePart>
    );
  const { length, smallVolume } = amounts;
  const { stop, sheet: fall } = flow;
  return (
    <FigurePart id="flow" title="Flow" cautions={cautionsAt(sheet, 'pump', 'heater')}>
      <p className={styles.headline}>
        <strong>{amounts.flow(flow.clean.flow)}</strong>
        <span>all water {flow.clean.turnover.toFixed(1)} times an hour, clean</span>
      </p>
      {flow.curve && <OperatingTable flow={flow} amounts={amounts} />}
      <PumpChart flow={flow} amounts={amounts} />
      <FigureList
        figures={[
          {
            name: 'Filtered in an hour',
            value: percentText(flow.filteredInHour),
            note: 'of the water, evenly mixed',
          },
          flow.hoseSpeed === undefined
            ? undefined
            : { name: 'Speed in the hose', value: quantityText(flow.hoseSpeed, 'm/s', 2) },
          flow.bedSpeed === undefined
            ? undefined
            : { name: 'Speed through the filter', value: quantityText(flow.bedSpeed * 1000, 'mm/s', 1) },
          fall
            ? {
                name: 'Sheet of the fall',
                value: fall.isClosed ? 'closed' : 'breaks into threads',
                note: `${length(fall.depth)} deep on the lip, ${length(fall.thickness)} where it lands, ${length(fall.reach)} from the lip`,
              }
            : undefined,
          {
            name: 'Splash',
            value: `${smallVolume(flow.splash)}/day`,
            note: 'fine drops; order of magnitude',
          },
          {
            name: 'When the pump stops',
            value: `${smallVolume(stop.drainBack)} runs back`,
            note: `the level rises ${length(stop.rise)}; ${stop.freeboardLeft >= 0 ? `${length(stop.freeboardLeft)} of freeboard left` : 'it runs over'}`,
          },
        ]}
      />
      <Assumption>{flow.assumption}</Assumption>
    </FigurePart>
  );
}

const STATES = [
  { key: 'clean', name: 'clean' },
  { key: 'halfFouled', name: 'half clogged' },
  { key: 'fouled', name: 'fouled' },
] as const;

function OperatingTable({ flow, amounts }: { readonly flow: Flow; readonly amounts: Amounts }) {
  const rows: readonly { name: string; value: (point: OperatingFigures) => string }[] = [
    { name: 'flow', value: (point) => amounts.flow(point.flow) },
    { name: 'head of the pump', value: (point) => amounts.length(point.head) },
    { name: 'lift', value: (point) => amounts.length(point.lift) },
    { name: 'lost in the hose', value: (point) => amounts.length(point.hoseLoss) },
    { name: 'lost in fittings', value: (point) => amounts.length(point.fittingLoss) },
    { name: 'lost in the filter', value: (point) => amounts.length(point.filterLoss) },
    { name: 'turnover an hour', value: (point) => point.turnover.toFixed(1) },
  ];
  return (
    <WideTable name="Operating points of the pump">
      <thead>
        <tr>
          <th scope="col">
            <span>operating point</span>
          </th>
          {STATES.map(({ key, name }) => (
            <th key={key} scope="col">
              {name}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ name, value }) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            {STATES.map(({ key }) => (
              <td key={key}>{value(flow[key])}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </WideTable>
  );
}

function PumpChart({ flow, amounts }: { readonly flow: Flow; readonly amounts: Amounts }) {
  const { curve, clean } = flow;
  if (!curve || curve.flows.length < 2) return null;
  const { axes } = amounts;
  const flows = curve.flows.map((each) => each * axes.flow.per);
  const line = (heads: readonly number[]) =>
    heads.map((head, index) => [flows[index] ?? 0, head * axes.length.per] as const);
  const highest = Math.max(...curve.pump) * axes.length.per;
  return (
    <LineChart
      label={`Head of the pump and of its way against flow; they meet at ${amounts.flow(clean.flow)} and ${amounts.length(clean.head)}.`}
      lines={[
        { name: 'pump', points: line(curve.pump) },
        { name: 'way, clean', points: line(curve.clean), dash: '7 4' },
        { name: 'way, fouled', points: line(curve.fouled), dash: '2 3' },
      ]}
      x={{ name: axes.flow.unit, ticks: roundTicks(Math.max(...flows)) }}
      y={{ name: `head, ${axes.length.unit}`, ticks: roundTicks(highest) }}
      mark={{
        x: clean.flow * axes.flow.per,
        y: clean.head * axes.length.per,
        text: amounts.flow(clean.flow),
      }}
    />
  );
}
