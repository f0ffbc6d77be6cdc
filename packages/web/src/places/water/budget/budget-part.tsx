import type { AheadDocument, Budget, BudgetId } from '@shoreglass/engine';
import { gatheredBudget } from '@shoreglass/figures';
import { useMemo, useState } from 'react';
import { useChosenDay, useRestedDay } from '../../../outlook/chosen-day.ts';
import { capital } from '../../../outlook/turning-words.ts';
import { OutlookGate } from '../../sheets/outlook-gate.tsx';
import type { SheetProps } from '../../sheets/sheet-props.ts';
import { BudgetChoice } from './budget-choice.tsx';
import styles from './budget-part.module.css';
import { BudgetPlotView } from './budget-plot-view.tsx';
import { Ledger } from './ledger.tsx';
import { ledgerOf } from './ledger-rows.ts';
import { PeriodChoice } from './period-choice.tsx';

/** Who adds and who removes what is dissolved in the water, over the run and period by period. */
export function BudgetPart(props: SheetProps) {
  return <OutlookGate {...props}>{(document) => <Budgets document={document} />}</OutlookGate>;
}

/** About a month: three blocks of the run's book. */
const PERIOD_DAYS = 30;
const NAMED_TERMS = 7;

function Budgets({ document }: { readonly document: AheadDocument }) {
  const [chosen, setChosen] = useState<BudgetId>('alkalinity');
  const budget = document.budgets.find(({ id }) => id === chosen) ?? document.budgets[0];
  if (!budget) return <p>This outlook carries no budgets.</p>;
  return (
    <div className={styles.part}>
      <BudgetChoice budgets={document.budgets} chosen={budget.id} onChoose={setChosen} />
      <OneBudget document={document} budget={budget} />
    </div>
  );
}

function OneBudget({ document, budget }: { readonly document: AheadDocument; readonly budget: Budget }) {
  const [whole, setWhole] = useState(true);
  const day = useRestedDay();
  const choose = useChosenDay((state) => state.choose);
  const gathered = useMemo(() => gatheredBudget(budget, { days: PERIOD_DAYS, most: NAMED_TERMS }), [budget]);
  const period = whole ? undefined : gathered.periods.findIndex(({ from, to }) => day >= from && day < to);
  const ledger = useMemo(
    () => ledgerOf({ document, budget, gathered, period }),
    [document, budget, gathered, period],
  );
  const pick = (wanted: number | undefined) => {
    setWhole(wanted === undefined);
    const stretch = wanted === undefined ? undefined : gathered.periods[wanted];
    if (stretch && !(day >= stretch.from && day < stretch.to))
      choose(Math.floor((stretch.from + stretch.to) / 2));
  };
  return (
    <section aria-label={capital(budget.name)} className={styles.budget}>
      <div className={styles.plot}>
        <p className={styles.about}>{budget.about}</p>
        <BudgetPlotView
          gathered={gathered}
          name={budget.name}
          startDate={document.enclosure.startDate}
          chosen={period}
          onPick={pick}
        />
        <p className={styles.note}>
          Medians of everything unknown: the expected run, not the spread of the runs.
        </p>
      </div>
      <div className={styles.side}>
        <PeriodChoice
          periods={gathered.periods}
          startDate={document.enclosure.startDate}
          chosen={period}
          onPick={pick}
        />
        <Ledger ledger={ledger} unit={budget.unit} />
      </div>
    </section>
  );
}
