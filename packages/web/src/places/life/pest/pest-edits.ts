import type { PestAnswer } from '@shoreglass/engine';
import type { SoundLife } from '../../../worker/life-orders.ts';
import type { Edit } from '../../../worker/messages.ts';
import { doseText } from '../food/feeding-edits.ts';
import { additionEdits } from '../more/addition-edits.ts';

const HALF = 0.5;

/** The changes of the file by which an answer is done; none where it is work that a file cannot hold. */
export function pestEdits(
  sound: Pick<SoundLife, 'animals' | 'routines' | 'actions' | 'mist'>,
  { kind, hunter }: Pick<PestAnswer, 'kind' | 'hunter'>,
  place: { readonly zone: string; readonly day: number },
): Edit[] {
  if (kind === 'less feed')
    return (['routines', 'actions'] as const).flatMap((list) =>
      sound[list].flatMap((care, at) =>
        care.do === 'feed' ? [{ path: [list, at, 'amount'], value: doseText(HALF * care.amount) }] : [],
      ),
    );
  if (kind === 'drier ground' && sound.mist !== undefined)
    return [
      {
        path: ['devices', 'mister', 'amount'],
        value: `${Number((HALF * sound.mist * 1e6).toPrecision(3))} mL`,
      },
    ];
  if (!hunter) return [];
  return additionEdits(sound, { species: hunter.id, adults: hunter.adults, ...place });
}
