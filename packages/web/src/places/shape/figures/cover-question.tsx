import type { CoverAnswer, CoverGoal, CoverOption } from '@shoreglass/engine';
import { type FormEvent, useState } from 'react';
import { type Amounts, hoursText, percentText } from './amounts.ts';
import { topOffText } from './climate-figures.tsx';
import { FigurePart, WideTable } from './figure-list.tsx';
import styles from './figures.module.css';
import { LineChart, roundTicks } from './line-chart.tsx';

interface CoverQuestionProps {
  readonly answer: CoverAnswer | undefined;
  readonly busy: boolean;
  readonly failure: string | undefined;
  /** The answer was for another shape. */
  readonly stale: boolean;
  readonly amounts: Amounts;
  readonly onAsk: (goal: CoverGoal) => void;
  /** Takes an opening into the file. */
  readonly onTake: (open: number) => void;
}

/** How far open the cover has to be for humid air and a clear pane, and what else would help where it cannot be. */
export function CoverQuestion({ answer, busy, failure, stale, amounts, onAsk, onTake }: CoverQuestionProps) {
  const [humidity, setHumidity] = useState('80');
  const [fog, setFog] = useState('4');
  const goal = { humidity: Number(humidity) / 100, fog: Number(fog) };
  const wrong = whatIsWrong(goal);
  const ask = (event: FormEvent) => {
    event.preventDefault();
    if (wrong === undefined) onAsk(goal);
  };
  return (
    <FigurePart id="cover" title="How far open must the cover be?">
      <form className={styles.question} onSubmit={ask} noValidate>
        <label>
          Humidity of the day at least
          <span className={styles.entry}>
            <input
              value={humidity}
              inputMode="decimal"
              onChange={(event) => setHumidity(event.target.value)}
            />{' '}
            %
          </span>
        </label>
        <label>
          Fog on the front pane at most
          <span className={styles.entry}>
            <input value={fog} inputMode="decimal" onChange={(event) => setFog(event.target.value)} /> h a day
          </span>
        </label>
        <button type="submit" className={styles.ask} disabled={busy || wrong !== undefined}>
          {busy ? 'Trying openings …' : 'Find the opening'}
        </button>
      </form>
      <p className={styles.mend}>Both on nineteen days of twenty, over the whole year.</p>
      {wrong !== undefined && <p role="alert">{wrong}</p>}
      {failure !== undefined && <p role="alert">{failure}</p>}
      <div role="status">
        {answer && <p className={styles.verdict}>{answer.sentence}</p>}
        {answer && stale && <p className={styles.mend}>The shape has changed since; ask again.</p>}
      </div>
      {answer && <Answer answer={answer} amounts={amounts} onTake={onTake} />}
    </FigurePart>
  );
}

function whatIsWrong({ humidity, fog }: CoverGoal): string | undefined {
  if (!(humidity >= 0.2 && humidity <= 0.999)) return 'Ask for a humidity between 20 and 99.9 %.';
  if (!(fog >= 0 && fog <= 24)) return 'Ask for 0 to 24 hours of fog a day.';
  return undefined;
}

interface AnswerProps {
  readonly answer: CoverAnswer;
  readonly amounts: Amounts;
  readonly onTake: (open: number) => void;
}

function Answer({ answer, amounts, onTake }: AnswerProps) {
  const { curve, asDrawn, alternatives } = answer;
  // Covers are opened by a few per cent; the rest of the way tells little.
  const widest = Math.min(1, Math.max(0.1, 3 * asDrawn.open, 1.5 * (asDrawn.range?.to ?? 0))) * 100;
  const line = (values: readonly number[], scale: number) =>
    values
      .map((value, index) => [(curve.open[index] ?? 0) * 100, value * scale] as const)
      .filter(([open], index, all) => open <= widest || (all[index - 1]?.[0] ?? 0) < widest);
  return (
    <>
      <LineChart
        label={`Humidity and fog against the opening of the cover. ${answer.sentence}`}
        lines={[
          { name: 'humidity, %', points: line(curve.humidity, 100) },
          { name: 'fog, % of day', points: line(curve.fog, 100 / 24), dash: '2 3' },
        ]}
        x={{ name: 'open, %', ticks: roundTicks(widest, 5) }}
        y={{ name: '%', ticks: [0, 25, 50, 75, 100].map((at) => ({ at, text: `${at}` })) }}
        {...(asDrawn.range ? { wanted: { from: asDrawn.range.from * 100, to: asDrawn.range.to * 100 } } : {})}
      />
      <WideTable name="Openings compared">
        <thead>
          <tr>
            <th scope="col">what if</th>
            <th scope="col">open</th>
            <th scope="col">humidity</th>
            <th scope="col">fog a day</th>
            <th scope="col">top-off a day</th>
            <th scope="col">both held</th>
          </tr>
        </thead>
        <tbody>
          {[asDrawn, ...alternatives].map((option) => (
            <OptionRow key={option.name} option={option} amounts={amounts} />
          ))}
        </tbody>
      </WideTable>
      <button type="button" className={styles.ask} onClick={() => onTake(asDrawn.open)}>
        Open it {percentText(asDrawn.open, 1)}
      </button>
    </>
  );
}

function OptionRow({ option, amounts }: { readonly option: CoverOption; readonly amounts: Amounts }) {
  const { name, range, open, humidity, fog, topOff } = option;
  const opening = range
    ? `${percentText(range.from, 1)} to ${percentText(range.to, 1)}`
    : percentText(open, 1);
  return (
    <tr>
      <th scope="row">{name}</th>
      <td>{opening}</td>
      <td>{percentText(humidity)}</td>
      <td>{hoursText(fog)}</td>
      <td>{topOffText(topOff, amounts)}</td>
      <td>{range ? 'yes' : 'no'}</td>
    </tr>
  );
}
