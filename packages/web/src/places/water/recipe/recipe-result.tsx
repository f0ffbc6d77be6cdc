import type { EnclosureFile, ShelfWater } from '@shoreglass/contract';
import type { Plan, RecipeChoice } from '@shoreglass/engine';
import { type RefObject, useEffect, useRef, useState } from 'react';
import type { Shelf } from '../../../worker/messages.ts';
import desk from '../../sheets/desk.module.css';
import { ChangingOver } from './changing-over.tsx';
import type { PoolNow, Stays } from './pool-now.tsx';
import styles from './recipe-result.module.css';
import { BecomesTable, TakeTable } from './recipe-tables.tsx';
import { RecipeTools } from './recipe-tools.tsx';
import { litresText, recipeInShort } from './recipe-words.ts';
import type { RecipeAnswer } from './use-recipes.ts';

interface RecipeResultProps {
  readonly file: EnclosureFile;
  readonly plan: Plan | undefined;
  readonly pools: readonly PoolNow[];
  /** The part of the pool that stays, where the recipe is for the rest. */
  readonly stays: Stays | undefined;
  readonly shelf: Shelf;
  readonly waters: readonly ShelfWater[];
  readonly answer: RecipeAnswer;
  /** What is missing before anything can be worked out. */
  readonly waits: string | undefined;
}

/** The recipe itself: what to take, what it becomes, what cannot be reached, how to mix it, what to mind. */
export function RecipeResult(props: RecipeResultProps) {
  const { file, plan, pools, stays, shelf, waters, answer, waits } = props;
  const [chosen, setChosen] = useState<RecipeChoice['id']>('closest');
  // Kept here, since between two requests there may be no recipe for a moment.
  const [changingOver, setChangingOver] = useState(false);
  const sheet = useRef<HTMLElement>(null);
  const choice = answer.choices.find(({ id }) => id === chosen) ?? answer.choices[0];
  const short = waits ?? answer.problems[0]?.message ?? (choice && recipeInShort(choice.recipe)) ?? '';
  return (
    <>
      <section
        ref={sheet}
        tabIndex={-1}
        className={styles.result}
        aria-labelledby="recipe"
        aria-busy={answer.stale}
      >
        <h2 id="recipe">
          {choice ? (
            <>
              For <span className={styles.volume}>{litresText(choice.recipe.volume)}</span>
              {stays && `, of which ${litresText(stays.volume)} stay`}
            </>
          ) : (
            'The recipe'
          )}
        </h2>
        {waits !== undefined && <p>{waits}</p>}
        {answer.failure !== undefined && <p role="alert">{answer.failure}</p>}
        {answer.problems.map(({ message, mend }) => (
          <p key={message}>
            <strong>{sentence(message)}</strong> {mend}
          </p>
        ))}
        {choice && (
          <>
            <Ways answer={answer} chosen={choice.id} onChoose={setChosen} />
            <TakeTable recipe={choice.recipe} />
            <Unreached choice={choice} />
            <Remarks choice={choice} />
            <Steps choice={choice} />
            <BecomesTable recipe={choice.recipe} />
            {plan && (
              <ChangingOver
                plan={plan}
                recipe={choice.recipe}
                pools={pools}
                stays={stays}
                open={changingOver}
                onFold={() => setChangingOver(!changingOver)}
              />
            )}
            <RecipeTools
              file={file}
              shelf={shelf}
              waters={waters}
              choice={choice}
              stale={answer.stale}
              stays={stays}
            />
          </>
        )}
      </section>
      <Thumb words={short} sheet={sheet} />
      <p role="status" className={desk.unseen}>
        {short}
      </p>
    </>
  );
}

interface ThumbProps {
  readonly words: string;
  readonly sheet: RefObject<HTMLElement | null>;
}

/** On a phone, what the typing comes to, above the places; gone while the recipe itself is on the screen. */
function Thumb({ words, sheet }: ThumbProps) {
  const [seen, setSeen] = useState(false);
  useEffect(() => {
    if (!sheet.current) return;
    const observer = new IntersectionObserver(([entry]) => setSeen(entry?.isIntersecting === true));
    observer.observe(sheet.current);
    return () => observer.disconnect();
  }, [sheet]);
  const show = () => {
    sheet.current?.scrollIntoView();
    sheet.current?.focus({ preventScroll: true });
  };
  return (
    <button type="button" className={styles.thumb} data-hidden={seen} onClick={show}>
      <span>{words}</span>
      <span>All of it</span>
    </button>
  );
}

interface WaysProps {
  readonly answer: RecipeAnswer;
  readonly chosen: RecipeChoice['id'];
  readonly onChoose: (id: RecipeChoice['id']) => void;
}

function Ways({ answer, chosen, onChoose }: WaysProps) {
  if (!answer.compared) return <p className={styles.ways}>Looking for other ways …</p>;
  if (answer.choices.length === 1)
    return <p className={styles.ways}>With these waters and salts every way comes out the same.</p>;
  return (
    <fieldset className={styles.choices}>
      <legend>Ways to make it</legend>
      {answer.choices.map(({ id, name, about, recipe }) => (
        <label key={id} className={desk.check}>
          <input type="radio" name="way" checked={id === chosen} onChange={() => onChoose(id)} />
          <span>
            <strong>{capitalised(name)}</strong>: {recipeInShort(recipe)}
            <small>{about}</small>
          </span>
        </label>
      ))}
    </fieldset>
  );
}

function Unreached({ choice }: { readonly choice: RecipeChoice }) {
  const why = choice.recipe.targets.flatMap((target) => target.why);
  if (why.length === 0) return null;
  return (
    <div className={styles.unreached}>
      <h3>Cannot be reached</h3>
      <ul>
        {why.map((each) => (
          <li key={each}>{sentence(each)}</li>
        ))}
      </ul>
    </div>
  );
}

function Steps({ choice }: { readonly choice: RecipeChoice }) {
  return (
    <div>
      <h3>How</h3>
      <ol className={styles.steps}>
        {choice.recipe.steps.map(({ text, why }) => (
          <li key={text}>
            {text} <span className={desk.soft}>{why}</span>
          </li>
        ))}
      </ol>
    </div>
  );
}

const WORDS = { caution: 'Caution', warning: 'Mind', note: 'Note' } as const;

function Remarks({ choice }: { readonly choice: RecipeChoice }) {
  if (choice.recipe.remarks.length === 0) return null;
  return (
    <div>
      <h3>Before you mix</h3>
      <ul className={styles.remarks}>
        {choice.recipe.remarks.map(({ severity, text }) => (
          <li key={text}>
            <strong data-severity={severity}>{WORDS[severity]}.</strong> {text}
          </li>
        ))}
      </ul>
    </div>
  );
}

function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function sentence(text: string): string {
  const begun = /^(pH|mg)\b/.test(text) ? text : capitalised(text);
  return /[.!?]$/.test(begun) ? begun : `${begun}.`;
}
