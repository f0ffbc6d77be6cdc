import type { FedAdults, FoodCapacity } from '@shoreglass/engine';
import { quantityText } from '@shoreglass/figures';
import type { ReactNode } from 'react';
import { capital } from '../../../outlook/turning-words.ts';
import desk from '../../sheets/desk.module.css';
import type { SheetProps } from '../../sheets/sheet-props.ts';
import { type Community, CommunityGate } from '../community-gate.tsx';
import { FeedingDesk } from './feeding-desk.tsx';
import { Feedings } from './feedings.tsx';
import styles from './food-part.module.css';

/** What each food carries, and how to feed for the numbers wanted. */
export function FoodPart(props: SheetProps) {
  return (
    <CommunityGate {...props}>
      {(community) => (
        <div className={desk.columns}>
          <Capacity {...community} />
          <div>
            <Feedings file={props.file} />
            <FeedingDesk file={props.file} plan={community.plan} />
          </div>
        </div>
      )}
    </CommunityGate>
  );
}

/** Fewer than this of an adult are not worth a line [1]. */
const LEAST_ADULTS = 0.05;
/** So many eaters of a food stand unfolded. */
const FEW_EATERS = 4;

function Capacity({ life, document }: Community) {
  return (
    <section aria-labelledby="carries" className={desk.block}>
      <h2 id="carries">What the food carries</h2>
      <ul className={styles.sentences}>
        {life.populations.map(({ id, name }) => (
          <li key={id}>{carried(life.capacity, id, name, mostOf(document, id))}</li>
        ))}
      </ul>
      {someAreTooFew(life.capacity) && (
        <p className={desk.soft}>
          <span aria-hidden="true">{TOO_LITTLE_MARK} </span>
          Too little to breed on alone: where they have nothing else, this food is too thin for young: they
          breed only if they eat other food too.
        </p>
      )}
      <table className={styles.table}>
        <caption>Each food by itself</caption>
        <thead>
          <tr>
            <th scope="col">Food</th>
            <th scope="col" className={styles.wide}>
              Arises a day
            </th>
            <th scope="col">Keeps so many full-grown adults alive, or carries a population</th>
          </tr>
        </thead>
        <tbody>
          {life.capacity.map(({ food, foodName, production, eaters }) => (
            <tr key={food}>
              <th scope="row">
                {capital(foodName)}
                <span className={styles.narrow}>
                  {quantityText(production, 'mg C', digitsOf(production))} a day
                </span>
              </th>
              <td className={`${styles.number} ${styles.wide}`}>
                {quantityText(production, 'mg C', digitsOf(production))}
              </td>
              <td>
                <Eaters eaters={eaters} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className={desk.soft}>
        A long-run mean, each species as if alone: shared food carries fewer of each. In brackets: a
        population that holds its number on it. Where food is short its adults are small, so they are many;
        numbers swing about this mean.
      </p>
    </section>
  );
}

/** Who would live on a food, those it carries most of first; a long list folds. */
function Eaters({ eaters }: Pick<FoodCapacity, 'eaters'>) {
  const worth = eaters.filter(({ adults }) => adults >= LEAST_ADULTS).sort((a, b) => b.adults - a.adults);
  if (worth.length === 0) return <>hardly anybody</>;
  const line = (eater: FoodCapacity['eaters'][number]) => (
    <li key={eater.population}>
      {adultsText(eater.adults)} {eater.name} <span className={styles.steady}>({populationText(eater)})</span>
      <TooLittle eater={eater} />
    </li>
  );
  const [shown, folded] = [worth.slice(0, FEW_EATERS), worth.slice(FEW_EATERS)];
  return (
    <>
      <ul className={styles.eaters}>{shown.map(line)}</ul>
      {folded.length > 0 && (
        <details>
          <summary className={desk.fold}>{folded.length} more</summary>
          <ul className={styles.eaters}>{folded.map(line)}</ul>
        </details>
      )}
    </>
  );
}

type Steady = Pick<FedAdults, 'withYoung' | 'young' | 'breeds'>;

/** Stands behind a population that does not breed on that food alone; told once beside the table. */
const TOO_LITTLE_MARK = '✻';

const isTooLittle = ({ withYoung, young, breeds }: Steady) => withYoung + young > 0 && !breeds;

const someAreTooFew = (capacity: readonly FoodCapacity[]) =>
  capacity.some(({ eaters }) => eaters.some((eater) => eater.adults >= LEAST_ADULTS && isTooLittle(eater)));

function TooLittle({ eater }: { readonly eater: Steady }) {
  if (!isTooLittle(eater)) return null;
  return (
    <>
      <span aria-hidden="true"> {TOO_LITTLE_MARK}</span>
      <span className={desk.unseen}> (too little to breed on alone)</span>
    </>
  );
}

/** "110 adults, 230 young"; that there are no young where they never come. */
function populationText({ withYoung, young }: Steady): string {
  if (withYoung + young <= 0) return 'never any young';
  return `${adultsText(withYoung)} adults, ${young < 1 ? 'hardly any' : adultsText(young)} young`;
}

/** "Scuds live on detritus first: it keeps about 40 full-grown adults alive, or carries 110 adults, 80 young." */
function carried(
  capacity: readonly FoodCapacity[],
  id: string,
  name: string,
  most: number | undefined,
): ReactNode {
  const foods = capacity
    .flatMap(({ foodName, eaters }) =>
      eaters.filter(({ population }) => population === id).map((eater) => ({ foodName, ...eater })),
    )
    .sort((a, b) => b.adults - a.adults);
  const [first, second] = foods;
  if (!first || first.adults < LEAST_ADULTS)
    return `${capital(name)}: nothing that grows or is given here carries them; they need other food or other animals.`;
  const then =
    second && second.adults >= 0.2 * first.adults
      ? ` Next comes ${second.foodName}, for ${adultsText(second.adults)}.`
      : '';
  const reach = most === undefined ? '' : ` The outlook has at most ${adultsText(most)} adults at a time.`;
  const holds =
    first.withYoung + first.young > 0
      ? `, or a population of ${populationText(first)}`
      : '; they never have young here';
  return (
    <>
      {capital(name)} live on {first.foodName} first: it keeps about {adultsText(first.adults)} full-grown
      adults alive{holds}
      <TooLittle eater={first} />.{then}
      {reach}
    </>
  );
}

function mostOf(document: Community['document'], id: string): number | undefined {
  const adults = document.series[`population:${id}:adult`];
  return adults ? Math.max(...adults.q50) : undefined;
}

const digitsOf = (amount: number): number => (amount >= 10 ? 0 : amount >= 1 ? 1 : 2);

function adultsText(adults: number): string {
  if (adults >= 100) return quantityText(Number(adults.toPrecision(2)), '');
  const told = Number(adults.toFixed(1));
  return quantityText(told, '', told >= 3 || Number.isInteger(told) ? 0 : 1);
}
