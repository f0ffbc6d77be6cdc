import type { EnclosureFile } from '@shoreglass/contract';
import type { AheadDocument, BufferAnswer, Plan } from '@shoreglass/engine';
import { type FormEvent, useState } from 'react';
import { Trouble } from '../../../app/trouble.tsx';
import type { Shelf } from '../../../worker/messages.ts';
import desk from '../../sheets/desk.module.css';
import { InquiryProgress } from '../../sheets/inquiry/inquiry-progress.tsx';
import { cancelInquiry, startInquiry, useInquiry } from '../../sheets/inquiry/inquiry-store.ts';
import { OutlookGate } from '../../sheets/outlook-gate.tsx';
import type { SheetProps } from '../../sheets/sheet-props.ts';
import { AmountField } from '../amount/amount-field.tsx';
import { useShelf } from '../use-shelf.ts';
import { BufferAnswerView } from './buffer-answer.tsx';
import { type BufferDesk, bufferQuestion, firstBufferDesk, SURE } from './buffer-desk.ts';
import styles from './buffer-part.module.css';
import { CarbonateChoice } from './carbonate-choice.tsx';

/** How much of which carbonate holds pH and KH, for how long and how surely; or why none can. */
export function BufferPart(props: SheetProps) {
  const { shelf, failure } = useShelf(props.file);
  if (failure !== undefined) return <p role="alert">{failure}</p>;
  return (
    <OutlookGate {...props}>
      {(document, plan) =>
        shelf ? (
          <Buffer file={props.file} document={document} plan={plan} shelf={shelf} />
        ) : (
          <p role="status">Looking through the shelf …</p>
        )
      }
    </OutlookGate>
  );
}

interface BufferProps {
  readonly file: EnclosureFile;
  readonly document: AheadDocument;
  readonly plan: Plan;
  readonly shelf: Shelf;
}

function Buffer({ file, document, plan, shelf }: BufferProps) {
  const [laid, setLaid] = useState(() => firstBufferDesk(shelf, document.run.days));
  const key = `buffer ${file.id} ${file.version}`;
  const state = useInquiry<BufferAnswer>(key);
  const question = bufferQuestion({ desk: laid, shelf, plan });
  const change = (part: Partial<BufferDesk>) => setLaid({ ...laid, ...part });
  const ask = () => {
    if (!('waits' in question))
      startInquiry(key, plan, async () => (await import('./ask-buffer.ts')).askBuffer(plan, question));
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    ask();
  };
  return (
    <div className={desk.columns}>
      <form className={styles.form} onSubmit={submit} noValidate>
        <CarbonateChoice laid={laid} shelf={shelf} onChange={change} />
        <Wanted laid={laid} onChange={change} />
        <div className={`${desk.bar} ${desk.stay}`}>
          <button
            type="submit"
            className={desk.primary}
            disabled={'waits' in question || state?.running === true}
          >
            Work it out
          </button>
          {'waits' in question && <p>{question.waits}</p>}
        </div>
      </form>
      <section aria-labelledby="answer" className={desk.block}>
        <h2 id="answer">What it takes</h2>
        {!state && (
          <p className={desk.soft}>
            The year is run with more and less of it until the smallest amount is found that holds, and that
            one is run again in other years. It takes some hundreds of runs: about half a minute.
          </p>
        )}
        {state?.running && <InquiryProgress state={state} onCancel={() => cancelInquiry(key)} />}
        {state?.failure !== undefined && <Trouble error={new Error(state.failure)} again={ask} />}
        {state?.answer && <BufferAnswerView file={file} shelf={shelf} answer={state.answer} />}
      </section>
    </div>
  );
}

interface WantedProps {
  readonly laid: BufferDesk;
  readonly onChange: (part: Partial<BufferDesk>) => void;
}

function Wanted({ laid, onChange }: WantedProps) {
  return (
    <section aria-labelledby="hold" className={desk.block}>
      <h2 id="hold">What it is to do</h2>
      <AmountField id="days" label="Hold for" written={laid.days} onWrite={(days) => onChange({ days })} />
      <label className={styles.sure}>
        <span>In how many of the runs</span>
        <select
          className={desk.select}
          value={laid.probability}
          onChange={({ target }) => onChange({ probability: Number(target.value) })}
        >
          {SURE.map((share) => (
            <option key={share} value={share}>
              {share * 100} of 100
            </option>
          ))}
        </select>
      </label>
      <p className={desk.soft}>
        What is held are the limits of those who live here. To hold others instead, write them:
      </p>
      <AmountField
        id="KH"
        label="KH at least"
        written={laid.leastKH}
        onWrite={(leastKH) => onChange({ leastKH })}
        placeholder="theirs"
      />
      <AmountField
        id="pH"
        label="pH at least"
        written={laid.leastPH}
        onWrite={(leastPH) => onChange({ leastPH })}
        placeholder="theirs"
      />
      <AmountField
        id="pH"
        label="pH at most"
        written={laid.mostPH}
        onWrite={(mostPH) => onChange({ mostPH })}
        placeholder="theirs"
      />
    </section>
  );
}
