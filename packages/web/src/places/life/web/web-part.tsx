import type { LifeDocument } from '@shoreglass/engine';
import { dateLabel, eatenIn, type FlowUnit, flowAmountText } from '@shoreglass/figures';
import { useId, useState } from 'react';
import desk from '../../sheets/desk.module.css';
import type { SheetProps } from '../../sheets/sheet-props.ts';
import { CommunityGate } from '../community-gate.tsx';
import { FlowList } from './flow-list.tsx';
import { FlowTable } from './flow-table.tsx';
import { FoodWebView } from './food-web-view.tsx';
import styles from './web-part.module.css';
import { WeekChoice } from './week-choice.tsx';

/** Who eats what and how much of it, in any week of the run. */
export function WebPart(props: SheetProps) {
  return <CommunityGate {...props}>{({ life }) => <Web life={life} />}</CommunityGate>;
}

function Web({ life }: { readonly life: LifeDocument }) {
  const [week, setWeek] = useState<number>();
  const [unit, setUnit] = useState<FlowUnit>('carbon');
  const { startDate } = life.enclosure;
  const weeks = life.flows[0]?.weekly.length ?? 0;
  const when =
    week === undefined
      ? `a week, mean of ${life.run.days} days`
      : `in the week from ${dateLabel(startDate, 7 * week)}`;
  const sum = life.flows.reduce((total, flow) => total + eatenIn(flow, week), 0);
  if (life.flows.length === 0) return <p>Nothing is eaten in this outlook: nobody lives long enough to.</p>;
  return (
    <section aria-labelledby="web" className={styles.part}>
      <div className={styles.head}>
        <h2 id="web">Who eats what</h2>
        <p className={desk.soft}>
          In the expected run, {when}: {flowAmountText(sum, unit)} in all.
        </p>
      </div>
      <div className={styles.choices}>
        <WeekChoice weeks={weeks} week={week} startDate={startDate} onChoose={setWeek} />
        <UnitChoice unit={unit} onChoose={setUnit} />
      </div>
      <div className={styles.flows}>
        <FoodWebView life={life} week={week} unit={unit} when={when} />
        <FlowList life={life} week={week} unit={unit} />
      </div>
      <Rivals rivals={life.rivals} />
      <FlowTable life={life} week={week} unit={unit} when={when} />
    </section>
  );
}

/** Whom the run left without a food because others took it. */
function Rivals({ rivals }: Pick<LifeDocument, 'rivals'>) {
  if (rivals.length === 0) return null;
  return (
    <section aria-labelledby="rivals" className={styles.rivals}>
      <h3 id="rivals">Who takes whose food</h3>
      <ul>
        {rivals.map(({ food, loser, taker, sentence }) => (
          <li key={`${food} ${loser} ${taker}`}>{sentence}</li>
        ))}
      </ul>
    </section>
  );
}

interface UnitChoiceProps {
  readonly unit: FlowUnit;
  readonly onChoose: (unit: FlowUnit) => void;
}

const UNITS = [
  ['carbon', 'its carbon'],
  ['dry', 'dry food, about'],
] as const;

function UnitChoice({ unit, onChoose }: UnitChoiceProps) {
  const group = useId();
  return (
    <div role="radiogroup" aria-label="Counted in" className={styles.units}>
      {UNITS.map(([value, name]) => (
        <label key={value} className={desk.check}>
          <input type="radio" name={group} checked={unit === value} onChange={() => onChoose(value)} />
          {name}
        </label>
      ))}
    </div>
  );
}
