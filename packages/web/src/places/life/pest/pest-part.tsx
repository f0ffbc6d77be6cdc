import type { EnclosureFile } from '@shoreglass/contract';
import type { AheadDocument, Hunter, PestAnswer, Plan, Population } from '@shoreglass/engine';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Link } from 'wouter';
import { Trouble } from '../../../app/trouble.tsx';
import { huntersOf } from '../../../engine-client.ts';
import desk from '../../sheets/desk.module.css';
import { InquiryProgress } from '../../sheets/inquiry/inquiry-progress.tsx';
import { cancelInquiry, startInquiry, useInquiry } from '../../sheets/inquiry/inquiry-store.ts';
import { OutlookGate } from '../../sheets/outlook-gate.tsx';
import type { SheetProps } from '../../sheets/sheet-props.ts';
import { useLife } from '../who/use-life.ts';
import type { PestWish } from './ask-pest.ts';
import { writtenNumber } from './hunter-choice.tsx';
import { PestAnswers } from './pest-answers.tsx';
import { PestForm, type WrittenPest } from './pest-form.tsx';
import styles from './pest-part.module.css';
import { rankWords } from './pest-words.ts';

/** What can be done against one that grows too many, and what each answer does to the others. */
export function PestPart(props: SheetProps) {
  return (
    <OutlookGate {...props}>
      {(document, plan) =>
        plan.populations.length === 0 ? (
          <p>
            No animals live here yet. <Link href={`/life/${props.file.id}/who`}>Bring somebody in</Link>
          </p>
        ) : (
          <Pest file={props.file} document={document} plan={plan} ready={props.outlook?.complete === true} />
        )
      }
    </OutlookGate>
  );
}

interface PestProps {
  readonly file: EnclosureFile;
  readonly document: AheadDocument;
  readonly plan: Plan;
  readonly ready: boolean;
}

interface Answered {
  readonly pest: string;
  readonly from: number;
  readonly takes: number;
  readonly answers: readonly PestAnswer[];
}

const MEMBERS = 16;
const USUAL_BAIT = '20';

function Pest({ file, document, plan, ready }: PestProps) {
  const { days, seed } = document.run;
  const { reading } = useLife(file);
  const [written, setWritten] = useState<WrittenPest>(() =>
    firstWritten(document, likeliestPest(document, plan)),
  );
  const { pest } = written;
  const population = plan.populations.find(({ id }) => id === pest) ?? plan.populations[0];
  const hunters = useHunters(file, plan, population);
  const key = `pest ${file.id} ${file.version}`;
  const state = useInquiry<Answered>(key);
  const wish = wishOf(written, hunters.data ?? []);
  const ask = () =>
    startInquiry<Answered>(key, plan, async () => {
      const { askPest } = await import('./ask-pest.ts');
      const inquiry = askPest(plan, wish, { days, members: MEMBERS, seed });
      return (function* () {
        return { pest, from: wish.from, takes: wish.baitTakes, answers: yield* inquiry };
      })();
    });
  const asked = plan.populations.find(({ id }) => id === state?.answer?.pest);
  return (
    <section aria-labelledby="pest" className={styles.part}>
      <h2 id="pest">Too many of one: what helps, and what it costs the others</h2>
      <PestForm
        populations={plan.populations}
        hunters={hunters.data}
        written={written}
        days={days}
        startDate={document.enclosure.startDate}
        ready={ready}
        running={state?.running === true}
        onChoose={(chosen) => setWritten({ ...firstWritten(document, chosen), bait: written.bait })}
        onWrite={setWritten}
        onAsk={ask}
      />
      {!state && (
        <p className={desk.soft}>
          Doing nothing, half the feed, a bait a week and each hunter are run through the same {MEMBERS}{' '}
          years, chance and weather alike. A hunter eats on when the pest is gone; what it does to the others
          stands beside each answer.
        </p>
      )}
      {state?.running && <InquiryProgress state={state} onCancel={() => cancelInquiry(key)} />}
      {state?.failure !== undefined && <Trouble error={new Error(state.failure)} again={ask} />}
      {state?.answer && asked && reading?.sound && (
        <>
          <p role="status">{rankWords(state.answer.answers)}</p>
          <p className={desk.soft}>
            {MEMBERS} runs of {days} days each. Upright: number of {asked.name}. Line: median; wash: four runs
            in five; dashed: nothing is done.
          </p>
          <PestAnswers
            file={file}
            sound={reading.sound}
            name={asked.name}
            place={{
              pest: asked.id,
              zone: asked.zone,
              day: state.answer.from,
              takes: state.answer.takes,
            }}
            startDate={document.enclosure.startDate}
            answers={state.answer.answers}
          />
        </>
      )}
    </section>
  );
}

function useHunters(file: PestProps['file'], plan: Plan, pest: Population | undefined) {
  const { id, zone } = pest ?? { id: '', zone: '' };
  return useQuery<readonly Hunter[]>({
    queryKey: ['hunters', file.id, file.version, id, zone],
    queryFn: () => huntersOf({ id, zone }, plan),
    staleTime: Number.POSITIVE_INFINITY,
    retry: false,
  });
}

/** Snails come along by accident more than others; else whoever is the most in the end. */
function likeliestPest({ series }: AheadDocument, { populations }: Plan): string {
  const last = (id: string) => series[`population:${id}`]?.q50.at(-1) ?? 0;
  const byNumber = [...populations].sort((a, b) => last(b.id) - last(a.id));
  return (byNumber.find(({ traits }) => traits.preyKind === 'snails') ?? byNumber[0])?.id ?? '';
}

/** Animals at which one would be noticed, and the day where that never is. */
const [NOTICED, USUAL_DAY] = [30, 60];

/** The day on which so many are there that a keeper would think of doing something. */
function noticedOn({ series, run }: AheadDocument, pest: string): number {
  const course = series[`population:${pest}`];
  const day = course?.days[course.q50.findIndex((count) => count >= NOTICED)] ?? 0;
  return day > 0 ? day : Math.min(USUAL_DAY, Math.floor(run.days / 2));
}

function firstWritten(document: AheadDocument, pest: string): WrittenPest {
  return { pest, from: String(noticedOn(document, pest)), bait: USUAL_BAIT, hunters: {} };
}

function wishOf({ pest, from, bait, hunters: numbers }: WrittenPest, hunters: readonly Hunter[]): PestWish {
  return {
    pest,
    baitTakes: Number(bait),
    from: Number(from),
    hunters: hunters.flatMap((hunter) => {
      const adults = Number(writtenNumber(numbers, hunter));
      return adults > 0 ? [{ ...hunter, adults }] : [];
    }),
  };
}
