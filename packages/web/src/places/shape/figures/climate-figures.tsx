import type { ClimateYear, ShapeSheet } from '@shoreglass/engine';
import { useState } from 'react';
import { type Amounts, hoursText, percentText } from './amounts.ts';
import { cautionsAt } from './cautions-at.ts';
import { FigureList, FigurePart, WideTable } from './figure-list.tsx';
import styles from './figures.module.css';
import { LineChart } from './line-chart.tsx';

export const MONTHS = [
  'Jan',
  'Feb',
  'Mar',
  'Apr',
  'May',
  'Jun',
  'Jul',
  'Aug',
  'Sep',
  'Oct',
  'Nov',
  'Dec',
] as const;

interface ClimateProps {
  readonly sheet: ShapeSheet;
  readonly climate: ClimateYear | undefined;
  /** The figures belong to a shape that has changed since. */
  readonly stale: boolean;
  readonly failure: string | undefined;
  readonly amounts: Amounts;
}

/** A year of air, water and fog, month by month. */
export function ClimateFigures({ sheet, climate, stale, failure, amounts }: ClimateProps) {
  const cautions = cautionsAt(sheet, 'cover', 'mister', 'fogger', 'fans', 'mats');
  return (
    <FigurePart id="climate" title="Climate" cautions={cautions}>
      {failure !== undefined && <p role="alert">{failure}</p>}
      {!climate && failure === undefined && <p role="status">Computing a year of air and water …</p>}
      {climate && (
        <div aria-busy={stale}>
          <p role="status" className={styles.stale}>
            {stale && 'Of the shape as it was; the changed one is being computed …'}
          </p>
          <Year climate={climate} amounts={amounts} />
          <MonthTable climate={climate} amounts={amounts} />
          <DayChart climate={climate} />
        </div>
      )}
    </FigurePart>
  );
}

function Year({ climate: { year }, amounts }: { readonly climate: ClimateYear; readonly amounts: Amounts }) {
  return (
    <>
      <p className={styles.headline}>
        <strong>{percentText(year.humidity.mean)}</strong>
        <span>humidity, {hoursText(year.fog)} of fog a day on the front pane, over the year</span>
      </p>
      <FigureList
        figures={[
          { name: 'Dry day, one in twenty', value: percentText(year.dryDay) },
          { name: 'Foggy day, one in twenty', value: hoursText(year.foggyDay) },
          {
            name: 'Evaporated',
            value: `${amounts.smallVolume(year.evaporated)}/day`,
            note:
              year.topOff < 0
                ? 'mist and fog bring more than that'
                : `top-off ${amounts.smallVolume(year.topOff)}/day, ${amounts.volume(year.topOff * 7)} a week`,
          },
          {
            name: 'Wetness of land and moss',
            value: percentText(year.landWetness),
            note: `dry in ${percentText(year.dryHours)} of the hours`,
          },
        ]}
      />
      {year.topOff < 0 && (
        <p>
          Mist and fog bring more water than the box gives off: the pool rises by{' '}
          {amounts.smallVolume(-year.topOff)} a day. Take it out, spray less, open the cover further, or drill
          an overflow.
        </p>
      )}
    </>
  );
}

/** Water that tops the pool off in a day, or what it gains where mist and fog bring more than evaporates. */
export function topOffText(perDay: number, amounts: Amounts): string {
  return perDay < 0 ? `none, gains ${amounts.smallVolume(-perDay)}` : amounts.smallVolume(perDay);
}

function MonthTable({ climate, amounts }: { readonly climate: ClimateYear; readonly amounts: Amounts }) {
  return (
    <WideTable name="Climate by month">
      <thead>
        <tr>
          <th scope="col">month</th>
          <th scope="col">humidity</th>
          <th scope="col">fog a day</th>
          <th scope="col">top-off a day</th>
          <th scope="col">air</th>
          <th scope="col">water</th>
          <th scope="col">front glass</th>
          <th scope="col">dew point</th>
        </tr>
      </thead>
      <tbody>
        {climate.months.map((month) => (
          <tr key={month.month}>
            <th scope="row">{MONTHS[month.month - 1]}</th>
            <td>{percentText(month.humidity.mean)}</td>
            <td>{hoursText(month.fog)}</td>
            <td>{topOffText(month.topOff, amounts)}</td>
            <td>{amounts.temperature(month.air.mean)}</td>
            <td>{amounts.temperature(month.water.mean)}</td>
            <td>{amounts.temperature(month.frontGlass.mean)}</td>
            <td>{amounts.temperature(month.dewPoint.mean)}</td>
          </tr>
        ))}
      </tbody>
    </WideTable>
  );
}

const HOUR_TICKS = [0, 6, 12, 18, 24].map((at) => ({ at, text: `${at}` }));
const SHARE_TICKS = [0, 25, 50, 75, 100].map((at) => ({ at, text: `${at}` }));

/** Humidity and fog through a mean day of the chosen month. */
function DayChart({ climate }: { readonly climate: ClimateYear }) {
  const [chosen, setChosen] = useState(1);
  const day = climate.days.find(({ month }) => month === chosen) ?? climate.days[0];
  if (!day) return null;
  const line = (values: readonly number[]) => values.map((value, hour) => [hour + 0.5, value * 100] as const);
  const name = MONTHS[day.month - 1] ?? '';
  return (
    <div>
      <label className={styles.pick}>
        A mean day in{' '}
        <select value={day.month} onChange={(event) => setChosen(Number(event.target.value))}>
          {climate.days.map(({ month }) => (
            <option key={month} value={month}>
              {MONTHS[month - 1]}
            </option>
          ))}
        </select>
      </label>
      <LineChart
        label={`Humidity and fog on the front pane through a mean day in ${name}.`}
        lines={[
          { name: 'humidity', points: line(day.humidity) },
          { name: 'hour fogged', points: line(day.fogged), dash: '2 3' },
        ]}
        x={{ name: 'hour of the day', ticks: HOUR_TICKS }}
        y={{ name: '%', ticks: SHARE_TICKS }}
      />
    </div>
  );
}
