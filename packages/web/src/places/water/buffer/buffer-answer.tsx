import type { EnclosureFile } from '@shoreglass/contract';
import type { BufferAnswer, BufferOption } from '@shoreglass/engine';
import { quantityText } from '@shoreglass/figures';
import { ownerName, percent } from '../../../outlook/turning-words.ts';
import type { Shelf } from '../../../worker/messages.ts';
import desk from '../../sheets/desk.module.css';
import { useFileChange } from '../../sheets/file/use-file-change.ts';
import { bufferEdits } from './buffer-edits.ts';
import styles from './buffer-part.module.css';
import { grainText } from './carbonate-choice.tsx';

interface BufferAnswerViewProps {
  readonly file: EnclosureFile;
  readonly shelf: Shelf;
  readonly answer: BufferAnswer;
}

/** The answer: grams, grain and how sure; or that none is needed, or that none can, and why. */
export function BufferAnswerView({ file, shelf, answer }: BufferAnswerViewProps) {
  const best = answer.best === undefined ? undefined : answer.options[answer.best];
  return (
    <div className={styles.answer}>
      <p className={styles.verdict}>
        {answer.verdict === 'not needed' && 'None is needed'}
        {answer.verdict === 'cannot' && 'No buffer holds this'}
        {best && (
          <>
            {massText(best.mass)} <span className={styles.of}>{best.name}</span>
          </>
        )}
      </p>
      {answer.sentences.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {best && <PutIn file={file} shelf={shelf} option={best} />}
      {answer.options.length > 0 && <Options options={answer.options} said={answer.sentences} />}
      {answer.options.length > 1 && (
        <p className={desk.soft}>
          {best
            ? 'The share of the mass proposed is counted in fresh runs, the others'
            : 'Shares are counted'}{' '}
          in those that chose, which flatter.
        </p>
      )}
      <p className={desk.soft}>
        Held: {answer.limits.map(limitWords).join('; ') || 'nothing'}. From {answer.runs} runs.
      </p>
    </div>
  );
}

function limitWords({ series, side, value, owner }: BufferAnswer['limits'][number]): string {
  const unit = series === 'KH' ? '\u00a0°dKH' : '';
  return `${series} ${side === 'low' ? 'at least' : 'at most'} ${Number(value.toPrecision(3))}${unit} for ${ownerName(owner)}`;
}

interface OptionsProps {
  readonly options: readonly BufferOption[];
  /** Sentences that stand above already. */
  readonly said: readonly string[];
}

function Options({ options, said }: OptionsProps) {
  return (
    <table className={styles.options}>
      <caption>What was tried</caption>
      <thead>
        <tr>
          <th scope="col">Carbonate and grain</th>
          <th scope="col">Mass</th>
          <th scope="col">Runs in band</th>
          <th scope="col">Left at the end</th>
        </tr>
      </thead>
      <tbody>
        {options.map(({ material, name, grain, mass, inBand, left, verdict, sentence }) => (
          <tr key={`${material} ${grain}`}>
            <th scope="row">
              {name}, {grainText(grain)}
              {!said.includes(sentence) && <span className={styles.why}>{sentence}</span>}
            </th>
            <td>
              {verdict === 'found' ? '' : 'nearest: '}
              {massText(mass)}
            </td>
            <td>
              {percent(inBand.share)}
              <span className={styles.why}>
                {percent(inBand.low)} to {percent(inBand.high)}
              </span>
            </td>
            <td>{percent(left)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

interface PutInProps {
  readonly file: EnclosureFile;
  readonly shelf: Shelf;
  readonly option: BufferOption;
}

/** The work it takes, split over days where one day would be too fast, and the way into the file. */
function PutIn({ file, shelf, option }: PutInProps) {
  const { make, busy, trouble } = useFileChange(file);
  const { portions, gentle } = option;
  const each = portions[0]?.mass ?? option.mass;
  const words =
    portions.length === 1
      ? 'It may go in whole: no day’s change is too fast for those who live here.'
      : `Put in ${portions.length} portions of ${massText(each)}, one a day, so that no day changes too fast for those who live here.`;
  const done = `${massText(option.mass)} of ${option.name} are in the plan.`;
  return (
    <>
      <p>{gentle ? words : `${words} Even so the first days change faster than they should have it.`}</p>
      <p className={desk.soft}>
        Rinse it, lay it where the water flows, and measure KH each week. Before animals live there it can go
        in at once.
      </p>
      <div className={desk.bar}>
        <button
          type="button"
          className={desk.primary}
          disabled={busy}
          onClick={() => void make(bufferEdits(option, shelf), done)}
        >
          Put it into the file
        </button>
        {file.origin === 'example' && <p className={desk.soft}>A copy under your own name is changed.</p>}
      </div>
      {trouble !== undefined && <p role="alert">{trouble}</p>}
    </>
  );
}

function massText(mass: number): string {
  const grams = mass * 1000;
  return grams >= 1000 ? quantityText(mass, 'kg', 2) : quantityText(grams, 'g', grams < 20 ? 1 : 0);
}
