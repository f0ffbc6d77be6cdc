import type { EditValue } from '@shoreglass/contract';
import type { SoundLife } from '../../../worker/life-orders.ts';
import type { Edit } from '../../../worker/messages.ts';
import type { AdditionWish } from './ask-addition.ts';

/** A newcomer becomes an entry of the animals; more of one who lives here, an action. */
export function additionEdits(
  { animals, actions }: Pick<SoundLife, 'animals' | 'actions'>,
  { species, adults, zone, day }: AdditionWish,
): Edit[] {
  const put = (list: string, length: number, entry: EditValue): Edit =>
    length === 0
      ? { path: [list], value: [entry] as unknown as EditValue }
      : { path: [list, length], value: entry };
  const after = `${day} d`;
  return animals.some((each) => each.species === species)
    ? [put('actions', actions.length, { do: 'add-animals', species, adults, after })]
    : [put('animals', animals.length, { species, zone, adults, ...(day > 0 ? { after } : {}) })];
}
