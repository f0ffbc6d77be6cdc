import type { EnclosureFile } from '@shoreglass/contract';
import type { PestAnswer } from '@shoreglass/engine';
import { answerCourseScene, hunterWords, palette } from '@shoreglass/figures';
import { useMemo } from 'react';
import { Link } from 'wouter';
import { useView } from '../../../app/view.ts';
import { SceneView } from '../../../drawing/scene-view.tsx';
import { useWidth } from '../../../drawing/use-width.ts';
import { capital } from '../../../outlook/turning-words.ts';
import type { SoundLife } from '../../../worker/life-orders.ts';
import desk from '../../sheets/desk.module.css';
import { useFileChange } from '../../sheets/file/use-file-change.ts';
import { FreshConflicts } from '../more/fresh-conflicts.tsx';
import { type PestPlace, pestEdits } from './pest-edits.ts';
import styles from './pest-part.module.css';
import { changedOthers, endWords, gainWords, otherWords } from './pest-words.ts';

interface PestAnswersProps {
  readonly file: EnclosureFile;
  readonly sound: SoundLife;
  /** Name of the pest. */
  readonly name: string;
  readonly place: PestPlace;
  readonly startDate: string;
  readonly answers: readonly PestAnswer[];
}

/** The answers one under the other, on one scale, doing nothing first. */
export function PestAnswers({ answers, ...rest }: PestAnswersProps) {
  const [nothing] = answers;
  if (!nothing) return null;
  const most = Math.max(...answers.flatMap(({ courseHigh }) => courseHigh));
  return (
    <ol className={styles.answers}>
      {answers.map((answer) => (
        <Answer key={answer.name} answer={answer} nothing={nothing} most={most} {...rest} />
      ))}
    </ol>
  );
}

/** How it is done, where that is work of the keeper's hands. */
const HOW: Partial<Record<PestAnswer['kind'], string>> = {
  bait: 'A slice of cucumber or a pellet under an upturned lid in the evening; lift it out with those on it before the light comes on. It is counted as if it always found that many, so the last ones go more easily here than they will with you.',
  traps:
    'Yellow sticky cards just above the ground, out of reach of frogs, geckos and other small animals, which stick to them too. They are counted as if they always caught that many.',
};

type AnswerProps = Omit<PestAnswersProps, 'answers'> & {
  readonly answer: PestAnswer;
  readonly nothing: PestAnswer;
  readonly most: number;
};

function Answer({ answer, nothing, most, file, sound, name, place, startDate }: AnswerProps) {
  const { make, busy, trouble } = useFileChange(file);
  const edits = pestEdits(sound, answer, place);
  const others = answer === nothing ? [] : changedOthers(answer, nothing);
  const after = hunterWords(answer);
  return (
    <li className={styles.answer}>
      <div className={styles.told}>
        <h3>
          {answer.hunter ? (
            <Link href={`/library/organisms/${answer.hunter.id}`}>{capital(answer.name)}</Link>
          ) : (
            capital(answer.name)
          )}
        </h3>
        <p>
          {endWords(answer)} {answer !== nothing && gainWords(answer, nothing)}
        </p>
        {after !== undefined && <p>{after}</p>}
        {others.length > 0 && (
          <p>
            The others: <span>{others.map(otherWords).join('; ')}.</span>
          </p>
        )}
        {answer !== nothing && others.length === 0 && <p>The others hardly notice.</p>}
        {answer.kind in HOW && <p className={desk.soft}>{HOW[answer.kind]}</p>}
        {answer.kind === 'hunter' && <FreshConflicts file={file} saved={sound} edits={edits} folded />}
        {edits.length > 0 && (
          <p>
            <button
              type="button"
              className={desk.second}
              disabled={busy}
              aria-label={`Put into the file: ${answer.name}`}
              onClick={() => void make(edits, `${capital(answer.name)} against ${name}.`)}
            >
              Put into the file
            </button>
          </p>
        )}
        {trouble !== undefined && <p role="status">{trouble}</p>}
      </div>
      <Course answer={answer} nothing={nothing} most={most} name={name} startDate={startDate} />
    </li>
  );
}

const HEIGHT = 168;

function Course({
  answer,
  nothing,
  most,
  name,
  startDate,
}: Pick<AnswerProps, 'answer' | 'nothing' | 'most' | 'name' | 'startDate'>) {
  const [host, width] = useWidth<HTMLDivElement>();
  const view = useView((state) => state.view);
  const scene = useMemo(
    () =>
      width === 0
        ? undefined
        : answerCourseScene({
            name: capital(name),
            low: answer.courseLow,
            middle: answer.course,
            high: answer.courseHigh,
            ...(answer === nothing ? {} : { beside: nothing.course }),
            most,
            startDate,
            width,
            height: HEIGHT,
            palette: palette(view),
          }),
    [answer, nothing, most, name, startDate, width, view],
  );
  return (
    <div ref={host} className={styles.course}>
      {scene && <SceneView scene={scene} />}
    </div>
  );
}
