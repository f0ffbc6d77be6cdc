import type { EnclosureFile, LibraryListing } from '@shoreglass/contract';
import { type AdditionEffect, type Plan, type SeriesId, seriesSpec } from '@shoreglass/engine';
import { dateLabel } from '@shoreglass/figures';
import { capital } from '../../../outlook/turning-words.ts';
import desk from '../../sheets/desk.module.css';
import { useFileChange } from '../../sheets/file/use-file-change.ts';
import { useLife } from '../who/use-life.ts';
import { additionEdits } from './addition-edits.ts';
import type { AdditionWish } from './ask-addition.ts';
import { EffectList } from './effect-list.tsx';
import styles from './more-part.module.css';

/** What was asked and what came of it, so that changing the form leaves the answer as it is. */
export interface Answered {
  readonly wish: AdditionWish;
  readonly effects: readonly AdditionEffect[];
}

interface AnswerViewProps {
  readonly file: EnclosureFile;
  readonly plan: Plan;
  readonly library: LibraryListing;
  readonly answer: Answered;
  readonly startDate: string;
}

/** What the addition changes, and the way to put it into the file. */
export function AnswerView({ file, plan, library, answer, startDate }: AnswerViewProps) {
  const { reading } = useLife(file);
  const { make, busy, trouble } = useFileChange(file);
  const { wish, effects } = answer;
  const nameOfSpecies = (id: string) =>
    plan.populations.find((each) => each.id === id)?.name ??
    library.animals.find((each) => each.id === id)?.name ??
    id;
  const nameOf = (series: string) =>
    series.startsWith('population:')
      ? nameOfSpecies(series.split(':')[1] ?? '')
      : seriesSpec(series as SeriesId).name;
  const name = nameOfSpecies(wish.species);
  const words = `${wish.adults} ${name}`;
  return (
    <div className={styles.answer}>
      <h3>
        {capital(words)} added on {dateLabel(startDate, wish.day)}: with them, less without
      </h3>
      <EffectList effects={effects} nameOf={nameOf} startDate={startDate} />
      {reading?.sound && (
        <p>
          <button
            type="button"
            className={desk.second}
            disabled={busy}
            onClick={() =>
              void make(
                additionEdits(reading.sound ?? { animals: [], actions: [] }, wish),
                `${capital(words)} come on day ${wish.day}.`,
              )
            }
          >
            Put them into the file
          </button>
        </p>
      )}
      {trouble !== undefined && <p>{trouble}</p>}
    </div>
  );
}
