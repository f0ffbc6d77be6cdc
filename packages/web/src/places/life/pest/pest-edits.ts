import type { EditValue } from '@shoreglass/contract';
import type { PestAnswer } from '@shoreglass/engine';
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
  { kind, hunter }: Pick<PestAnswer, 'kind' | 'hunter'>,
  place: PestPlace,
): Edit[] {
  switch (kind) {
    case 'nothing':
      return [];
    case 'less feed':
      return halvedFeed(sound);
    case 'drier ground':
      return halvedMist(sound);
    case 'bait':
      return takenOut(sound, place, { adults: place.takes, juveniles: place.takes });
    case 'traps':
      return takenOut(sound, place, { adults: place.takes });
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

function halvedFeed(sound: Sound): Edit[] {
  return (['routines', 'actions'] as const).flatMap((list) =>
    sound[list].flatMap((care, at) =>
      care.do === 'feed' ? [{ path: [list, at, 'amount'], value: doseText(HALF * care.amount) }] : [],
    ),
  );
}

function halvedMist({ mist }: Sound): Edit[] {
  if (mist === undefined) return [];
  const millilitres = Number((HALF * mist * 1e6).toPrecision(3));
  return [{ path: ['devices', 'mister', 'amount'], value: `${millilitres} mL` }];
}

function takenOut(
  { routines }: Sound,
  { pest, day }: PestPlace,
  stages: Readonly<Record<string, number>>,
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
