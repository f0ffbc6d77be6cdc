import type { AheadDocument, LifeDocument, Plan, PopulationOutlook, SeriesId } from '@shoreglass/engine';
import { dateLabel, palette, stageScene } from '@shoreglass/figures';
import { useMemo } from 'react';
import { useView } from '../../../app/view.ts';
import { SceneView } from '../../../drawing/scene-view.tsx';
import { useWidth } from '../../../drawing/use-width.ts';
import { useRestedDay } from '../../../outlook/chosen-day.ts';
import { capital, percent } from '../../../outlook/turning-words.ts';
import { useToday } from '../../../outlook/use-today.ts';
import { QuantityChart } from '../../ahead/quantity-chart.tsx';
import desk from '../../sheets/desk.module.css';
import type { SheetProps } from '../../sheets/sheet-props.ts';
import { CommunityGate } from '../community-gate.tsx';
import { DeathList } from './death-list.tsx';
import styles from './numbers-part.module.css';
import { Overview } from './overview.tsx';
import { PlantCovers } from './plant-covers.tsx';

/** How many there will be of each, by stage; when the first young come, and what they die of. */
export function NumbersPart(props: SheetProps) {
  return (
    <CommunityGate {...props}>
      {({ document, plan, life }) => <Numbers document={document} plan={plan} life={life} />}
    </CommunityGate>
  );
}

/** So many populations stand unfolded. */
const MOST_UNFOLDED = 6;

interface NumbersProps {
  readonly document: AheadDocument;
  readonly plan: Plan;
  readonly life: LifeDocument;
}

function Numbers({ document, plan, life }: NumbersProps) {
  const today = useToday(document);
  return (
    <div className={styles.part}>
      {life.populations.length > 1 && <Overview document={document} populations={life.populations} />}
      {life.populations.map((population) => (
        <Population
          key={population.id}
          document={document}
          population={population}
          today={today}
          days={life.run.days}
          folded={life.populations.length > MOST_UNFOLDED}
        />
      ))}
      <PlantCovers document={document} plan={plan} plants={life.plants} today={today} />
    </div>
  );
}

interface PopulationProps extends StagesProps {
  readonly today: number | undefined;
  readonly days: number;
  readonly folded: boolean;
}

/** One of them; where there are many, folded until it is asked for. */
function Population({ document, population, today, days, folded }: PopulationProps) {
  const { id, name, species } = population;
  return (
    <details className={styles.population} id={`of-${id}`} open={!folded}>
      <summary>
        <h2>
          {capital(name)} <i>{species}</i>
        </h2>
      </summary>
      <p className={styles.lead}>{milestones(document, id)}</p>
      <div className={desk.columns}>
        <QuantityChart document={document} id={`population:${id}`} today={today} />
        <Stages document={document} population={population} />
      </div>
      <DeathList population={population} days={days} />
    </details>
  );
}

/** First young and dying out, each with its date and in how many runs; or that neither comes. */
function milestones(document: AheadDocument, id: string): string {
  const subject = `population:${id}`;
  const date = (day: number) => dateLabel(document.enclosure.startDate, Math.round(day));
  const sentence = (kind: 'first young' | 'dies out', what: string, none: string): string => {
    const point = document.turningPoints.find((each) => each.subject === subject && each.kind === kind);
    if (!point) return none;
    const { early, median, late } = point.window;
    const between =
      Math.round(early) === Math.round(late)
        ? ''
        : `, four times in five from ${date(early)} to ${date(late)}`;
    const share = document.run.members > 1 ? `, in ${percent(point.probability)} of the runs` : '';
    return `${what} about ${date(median)}${between}${share}.`;
  };
  const young = sentence('first young', 'First young', 'No young within this outlook.');
  const end = sentence('dies out', 'They die out', 'They do not die out within it.');
  return `${young} ${end}`;
}

interface StagesProps {
  readonly document: AheadDocument;
  readonly population: PopulationOutlook;
}

const HEIGHT = 270;
const STAGE_NAMES = { adult: 'adults', juvenile: 'young', brooded: 'eggs and brooded young' } as const;

function Stages({ document, population }: StagesProps) {
  const [host, width] = useWidth<HTMLDivElement>();
  const view = useView((state) => state.view);
  const day = useRestedDay();
  const scene = useMemo(() => {
    const stages = (['adult', 'juvenile', 'brooded'] as const).flatMap((stage) => {
      const series = document.series[`population:${population.id}:${stage}` as SeriesId];
      return series ? [{ name: STAGE_NAMES[stage], values: series.q50 }] : [];
    });
    if (width === 0 || stages.length === 0) return undefined;
    return stageScene({
      stages,
      startDate: document.enclosure.startDate,
      day,
      width,
      height: HEIGHT,
      palette: palette(view),
      id: population.id,
      of: document.run.members > 1 ? 'medians of the runs' : 'expected run',
    });
  }, [document, population.id, day, width, view]);
  return <div ref={host}>{scene && <SceneView scene={scene} />}</div>;
}
