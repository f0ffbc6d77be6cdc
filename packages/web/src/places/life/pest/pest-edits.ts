import type { EditValue } from '@shoreglass/contract';
import { clockTime, type PestAnswer } from '@shoreglass/engine';
import type { SoundLife } from '../../../worker/life-orders.ts';
import type { Edit } from '../../../worker/messages.ts';
import { doseText } from '../food/feeding-edits.ts';
import { additionEdits } from '../more/addition-edits.ts';

const HALF = 0.5;
const WEEK = 7;

/** Whom it is against, where they live, from which day on, and how many a bait or traps take each week. */
export interface PestPlace {
  readonly pest: string;
  readonly zone: string;
  readonly day: number;
  readonly takes: number;
}

type Sound = Pick<SoundLife, 'animals' | 'routines' | 'actions' | 'mist'>;

/** The changes of the file by which an answer is done; none for doing nothing. */
export function pestEdits(
  sound: Sound,
  { kind, hunter, finds }: Pick<PestAnswer, 'kind' | 'hunter' | 'finds'>,
  place: PestPlace,
): Edit[] {
  switch (kind) {
    case 'nothing':
      return [];
    case 'less feed':
      return halvedFeed(sound, place.day);
    case 'drier ground':
      return halvedMist(sound);
    case 'bait':
      return takenOut(sound, place, { adults: place.takes, juveniles: place.takes, ...found(finds) });
    case 'traps':
      return takenOut(sound, place, { adults: place.takes, ...found(finds) });
    case 'hunter':
      return hunter
        ? additionEdits(sound, {
            species: hunter.id,
            adults: hunter.adults,
            zone: place.zone,
            day: place.day,
          })
        : [];
  }
}

const found = (finds?: number): Readonly<Record<string, string>> =>
  finds === undefined ? {} : { finds: `${Math.round(100 * finds)} %` };

/** From a day on half of each feeding: a routine that began before ends there, and one of half as much goes on. */
function halvedFeed({ routines, actions }: Sound, day: number): Edit[] {
  const edits: Edit[] = [];
  let added = routines.length;
  for (const [at, care] of routines.entries()) {
    const { after = 0 } = care;
    if (care.do !== 'feed' || (care.until ?? day) < day) continue;
    const amount = doseText(HALF * care.amount);
    if (after >= day) {
      edits.push({ path: ['routines', at, 'amount'], value: amount });
      continue;
    }
    const next = after + Math.ceil((day - after) / care.every) * care.every;
    edits.push({ path: ['routines', at, 'until'], value: `${day - 1} d` });
    edits.push({ path: ['routines', added], value: feedingFrom(care, next, amount) });
    added += 1;
  }
  const later = actions.flatMap((care, at) =>
    care.do === 'feed' && care.after >= day
      ? [{ path: ['actions', at, 'amount'], value: doseText(HALF * care.amount) }]
      : [],
  );
  return [...edits, ...later];
}

type Feeding = Extract<Sound['routines'][number], { do: 'feed' }>;

function feedingFrom({ feed, every, place, at, until }: Feeding, day: number, amount: string): EditValue {
  return {
    do: 'feed',
    feed,
    amount,
    every: `${every} d`,
    ...(place === undefined ? {} : { place }),
    ...(at === undefined ? {} : { at: clockTime(at) }),
    after: `${day} d`,
    ...(until === undefined ? {} : { until: `${until} d` }),
  };
}

function halvedMist({ mist }: Sound): Edit[] {
  if (mist === undefined) return [];
  const millilitres = Number((HALF * mist * 1e6).toPrecision(3));
  return [{ path: ['devices', 'mister', 'amount'], value: `${millilitres} mL` }];
}

function takenOut(
  { routines }: Sound,
  { pest, day }: PestPlace,
  stages: Readonly<Record<string, number | string>>,
): Edit[] {
  const removal: EditValue = {
    do: 'remove-animals',
    species: pest,
    ...stages,
    every: `${WEEK} d`,
    after: `${day + WEEK} d`,
  };
  return [
    routines.length === 0
      ? { path: ['routines'], value: [removal] as unknown as EditValue }
      : { path: ['routines', routines.length], value: removal },
  ];
}
