import type { EnclosureFile } from '@shoreglass/contract';
import type { AheadDocument, Plan } from '@shoreglass/engine';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Trouble } from '../../../app/trouble.tsx';
import { readingOfCounts } from '../../../engine-client.ts';
import { capital } from '../../../outlook/turning-words.ts';
import type { CountsReading } from '../../../worker/counts-orders.ts';
import desk from '../../sheets/desk.module.css';
import { OutlookGate } from '../../sheets/outlook-gate.tsx';
import type { SheetProps } from '../../sheets/sheet-props.ts';
import { CountsAnswerView } from './counts-answer-view.tsx';
import { CountsForm } from './counts-form.tsx';
import styles from './counts-part.module.css';
import { type KeptCounts, recallCounts, rememberCounts } from './counts-store.ts';

/** Counts typed or pasted, and what they tell: growth, limit, risk; beside the species and the outlook. */
export function CountsPart(props: SheetProps) {
  return (
    <OutlookGate {...props}>
      {(document, plan) => (
        <Counts
          file={props.file}
          document={document}
          plan={plan}
          complete={props.outlook?.complete === true}
        />
      )}
    </OutlookGate>
  );
}

interface CountsProps {
  readonly file: EnclosureFile;
  readonly document: AheadDocument;
  readonly plan: Plan;
  /** Whether all runs of the outlook are there. */
  readonly complete: boolean;
}

function Counts({ file, document, plan, complete }: CountsProps) {
  const [species, setSpecies] = useState(() => firstCounted(file.id, plan));
  const [written, setWritten] = useState<KeptCounts>(() => recallCounts(file.id, species));
  const [asked, setAsked] = useState<KeptCounts>(written);
  const choose = (chosen: string) => {
    const kept = recallCounts(file.id, chosen);
    setSpecies(chosen);
    setWritten(kept);
    setAsked(kept);
  };
  const ask = () => {
    rememberCounts(file.id, species, written);
    setAsked(written);
  };
  const reading = useReading({ file, document, species, asked, complete });
  const name = plan.populations.find(({ id }) => id === species)?.name ?? 'animals';
  const problems = reading.data?.problems;
  const answer = reading.data?.answer;
  const firstDay = reading.data?.answer ? (reading.data.firstDay ?? 0) : 0;
  return (
    <div className={desk.columns}>
      <CountsForm
        populations={plan.populations}
        species={species}
        written={written}
        problems={problems ?? []}
        stale={asked.text !== written.text}
        onChoose={choose}
        onWrite={setWritten}
        onAsk={ask}
      />
      <section
        aria-labelledby="told"
        className={`${desk.block} ${styles.part}`}
        aria-busy={reading.isFetching}
      >
        <h2 id="told">What they tell</h2>
        {reading.error && <Trouble error={reading.error} again={() => void reading.refetch()} />}
        {answer ? (
          <CountsAnswerView
            answer={answer}
            name={capital(name)}
            firstDay={firstDay}
            document={document}
            series={complete ? document.series[`population:${species}`] : undefined}
          />
        ) : (
          <p className={desk.soft}>{nothingYet(reading.isFetching, problems !== undefined)}</p>
        )}
      </section>
    </div>
  );
}

function nothingYet(isReading: boolean, isWrong: boolean): string {
  if (isReading) return 'Reading the counts …';
  if (isWrong) return 'Nothing yet: some lines have to be mended first.';
  return 'Nothing was counted yet. Two counts tell a growth rate, six whether there is a limit, ten or more how sure that is.';
}

/** The first population of which counts were kept, or the first that lives here. */
function firstCounted(enclosure: string, { populations }: Plan): string {
  const counted = populations.find(({ id }) => recallCounts(enclosure, id).text !== '');
  return (counted ?? populations[0])?.id ?? '';
}

interface ReadingProps extends Omit<CountsProps, 'plan'> {
  readonly species: string;
  readonly asked: KeptCounts;
}

function useReading({ file, document, species, asked, complete }: ReadingProps) {
  const { text, below, within } = asked;
  const { enclosure, run } = document;
  const series = complete ? document.series[`population:${species}`] : undefined;
  return useQuery<CountsReading>({
    queryKey: ['counts', file.id, file.version, species, text, below, within, complete, run.seed, run.days],
    queryFn: () =>
      readingOfCounts({
        text,
        species,
        below: Number(below),
        ...(within.trim() === '' ? {} : { within: Number(within) }),
        ...(series
          ? { computed: { enclosure: enclosure.name, startDate: enclosure.startDate, numbers: series } }
          : {}),
      }),
    enabled: text.trim() !== '',
    staleTime: Number.POSITIVE_INFINITY,
    retry: false,
  });
}
