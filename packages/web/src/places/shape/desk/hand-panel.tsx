import type { Finding } from '@shoreglass/contract';
import type { LengthUnit } from '@shoreglass/figures';
import { type RefObject, useState } from 'react';
import { capital } from '../../../outlook/turning-words.ts';
import { GROUPS } from '../handles/all-handles.ts';
import type { Handle, Measure, Saying } from '../handles/handle.ts';
import styles from './hand-panel.module.css';
import { fieldText, readTyped, stepOf, valueText } from './lengths.ts';
import { choose, say, setMeasure, stepMeasure } from './moves.ts';
import type { Command, Refusal } from './shape-desk-store.ts';

export interface PartDeed {
  readonly words: string;
  readonly command: Command;
  /** Where many such deeds stand in a list: the name of the list, and what it is called there. */
  readonly list?: string;
  readonly short?: string;
  /** Name of the handle to take in the hand when it is done. */
  readonly takesUp?: string;
}

interface HandPanelProps {
  readonly handles: readonly Handle[];
  readonly selected: Handle | undefined;
  readonly unit: LengthUnit;
  readonly refusal: Refusal | undefined;
  /** Findings by the measure they concern, as handle id and measure id. */
  readonly findingsAt: ReadonlyMap<string, readonly Pick<Finding, 'message' | 'mend'>[]>;
  readonly firstField: RefObject<HTMLInputElement | null>;
  readonly deeds: readonly PartDeed[];
  /** What is to be minded about the part. */
  readonly cautions: readonly string[];
  readonly onSelect: (id: string) => void;
  readonly onCommand: (command: Command) => void;
}

/** What is in the hand: its measures to type and to step, what was found about it, and what can be done with it. */
export function HandPanel(props: HandPanelProps) {
  const { handles, selected, refusal, cautions } = props;
  return (
    <section aria-label="In the hand" className={styles.panel}>
      <label className={styles.part}>
        <span>In the hand</span>
        <select value={selected?.id ?? ''} onChange={(event) => props.onSelect(event.target.value)}>
          <option value="">nothing yet</option>
          {GROUPS.map(({ group, name }) => {
            const members = handles.filter((handle) => handle.group === group);
            if (members.length === 0) return null;
            return (
              <optgroup key={group} label={name}>
                {members.map((handle) => (
                  <option key={handle.id} value={handle.id}>
                    {handle.name}
                  </option>
                ))}
              </optgroup>
            );
          })}
        </select>
      </label>
      {!selected && (
        <p className={styles.hint}>
          Take hold of a mark in a drawing, or choose a part here and type its measures.
        </p>
      )}
      {selected?.measures.map((measure, index) => (
        <MeasureField
          key={`${selected.id} ${measure.id}`}
          {...props}
          handle={selected}
          measure={measure}
          {...(index === 0 ? { field: props.firstField } : {})}
        />
      ))}
      {selected?.choices?.map((choice) => (
        <label key={`${selected.id} ${choice.id}`} className={styles.choice}>
          <span>{choice.name}</span>
          <select
            value={choice.value}
            onChange={(event) => props.onCommand(choose(selected, choice, event.target.value))}
          >
            {choice.options.map(({ value, name }) => (
              <option key={value} value={value}>
                {name}
              </option>
            ))}
          </select>
        </label>
      ))}
      {selected?.sayings?.map((saying) => (
        <SayingField key={`${selected.id} ${saying.id}`} {...props} handle={selected} saying={saying} />
      ))}
      <div role="alert" className={styles.refusal}>
        {refusal?.findings.map(({ message, mend }) => (
          <p key={message}>
            <strong>Not done: {message}.</strong> {mend}
          </p>
        ))}
      </div>
      <Deeds {...props} />
      {cautions.length > 0 && (
        <ul className={styles.cautions} aria-label="To mind about it">
          {cautions.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      )}
    </section>
  );
}

/** Buttons, and lists for what there is much of. */
function Deeds({ deeds, onCommand, onSelect }: HandPanelProps) {
  const lists = [...new Set(deeds.flatMap(({ list }) => list ?? []))];
  const plain = deeds.filter(({ list }) => list === undefined);
  const carryOut = (deed: PartDeed | undefined) => {
    if (!deed) return;
    onCommand(deed.command);
    if (deed.takesUp !== undefined) onSelect(deed.takesUp);
  };
  return (
    <>
      {lists.map((list) => (
        <label key={list} className={styles.choice}>
          <span>{list}</span>
          <select
            value=""
            onChange={({ target }) => carryOut(deeds.find(({ words }) => words === target.value))}
          >
            <option value="">choose …</option>
            {deeds
              .filter((deed) => deed.list === list)
              .map(({ words, short }) => (
                <option key={words} value={words}>
                  {short ?? words}
                </option>
              ))}
          </select>
        </label>
      ))}
      {plain.length > 0 && (
        <div className={styles.deeds}>
          {plain.map((deed) => (
            <button key={deed.words} type="button" onClick={() => carryOut(deed)}>
              {deed.words}
            </button>
          ))}
        </div>
      )}
    </>
  );
}

interface SayingFieldProps extends HandPanelProps {
  readonly handle: Handle;
  readonly saying: Saying;
}

/** A name, a time of day: what is not right is refused with its reason, and leaves what was. */
function SayingField({ handle, saying, onCommand }: SayingFieldProps) {
  const [typed, setTyped] = useState<string>();
  const id = `saying-${saying.id}`;
  const take = () => {
    setTyped(undefined);
    if (typed !== undefined && typed.trim() !== saying.value) onCommand(say(handle, saying, typed));
  };
  return (
    <label className={styles.saying} htmlFor={id}>
      <span>{saying.name}</span>
      <input
        id={id}
        value={typed ?? saying.value}
        autoComplete="off"
        spellCheck={false}
        {...(saying.hint === '' ? {} : { 'aria-description': saying.hint, title: saying.hint })}
        onChange={(event) => setTyped(event.target.value)}
        onBlur={take}
        onKeyDown={(event) => {
          if (event.key === 'Enter') take();
          if (event.key === 'Escape') setTyped(undefined);
        }}
      />
    </label>
  );
}

interface MeasureFieldProps extends HandPanelProps {
  readonly handle: Handle;
  readonly measure: Measure;
  readonly field?: RefObject<HTMLInputElement | null>;
}

function MeasureField({ handle, measure, unit, findingsAt, field, onCommand }: MeasureFieldProps) {
  const [typed, setTyped] = useState<string>();
  const [wrong, setWrong] = useState<string>();
  const { number, unit: own } = fieldText(measure.value, measure.dimension, unit);
  const id = `measure-${measure.id}`;
  const found = findingsAt.get(`${handle.id} ${measure.id}`) ?? [];

  const size = stepOf(measure, unit);
  const take = () => {
    if (typed === undefined || typed.trim() === number) return setTyped(undefined);
    const value = readTyped(typed, measure.dimension, unit);
    const trouble = typeof value === 'number' ? outside(value, measure, unit) : value.wrong;
    setWrong(trouble);
    if (trouble !== undefined || typeof value !== 'number') return;
    setTyped(undefined);
    onCommand(setMeasure(handle, measure, value, { unit }));
  };
  const step = (by: number) => {
    setTyped(undefined);
    setWrong(undefined);
    onCommand(stepMeasure(handle, measure, by, unit));
  };
  return (
    <div className={styles.measure} data-wrong={wrong !== undefined}>
      <label htmlFor={id}>{measure.name}</label>
      <button
        type="button"
        className={styles.step}
        aria-label={`${measure.name} less`}
        onClick={() => step(-size)}
      >
        −
      </button>
      <span className={styles.entry}>
        <input
          id={id}
          ref={field}
          value={typed ?? number}
          inputMode="decimal"
          autoComplete="off"
          aria-describedby={`${id}-about`}
          aria-invalid={wrong !== undefined}
          onChange={(event) => setTyped(event.target.value)}
          onFocus={(event) => event.target.select()}
          onBlur={take}
          onKeyDown={(event) => {
            if (event.key === 'Enter') take();
            if (event.key === 'ArrowUp' || event.key === 'ArrowDown') {
              event.preventDefault();
              step(event.key === 'ArrowUp' ? size : -size);
            }
            if (event.key === 'Escape') {
              setTyped(undefined);
              setWrong(undefined);
            }
          }}
        />
        <span>{own}</span>
      </span>
      <button
        type="button"
        className={styles.step}
        aria-label={`${measure.name} more`}
        onClick={() => step(size)}
      >
        +
      </button>
      <div id={`${id}-about`} className={styles.about}>
        {wrong !== undefined && <p className={styles.wrong}>{wrong}</p>}
        {found.map(({ message, mend }) => (
          <p key={message}>
            {capital(message)}. {mend}
          </p>
        ))}
      </div>
    </div>
  );
}

function outside(value: number, measure: Measure, unit: LengthUnit): string | undefined {
  const tolerance = 1e-9 + 1e-6 * Math.abs(measure.high);
  if (value >= measure.low - tolerance && value <= measure.high + tolerance) return undefined;
  const text = (limit: number) => valueText(limit, measure.dimension, unit);
  return `Between ${text(measure.low)} and ${text(measure.high)} it fits; ${text(value)} does not.`;
}
