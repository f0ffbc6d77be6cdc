import { ELEMENTS, type ElementId } from '../variables/elements.ts';
import { VARIABLE_IDS, type VariableId, variableSpec } from '../variables/variables.ts';

export type Stoichiometry = Readonly<Partial<Record<VariableId, number>>>;

/** Net amount of an element a reaction brings in (+) or takes out (-) per unit of extent. */
export function netElement(stoichiometry: Stoichiometry, element: ElementId): number {
  let net = 0;
  for (const [id, coefficient] of Object.entries(stoichiometry)) {
    net += (coefficient ?? 0) * (variableSpec(id as VariableId).content?.[element] ?? 0);
  }
  return net;
}

/** What each variable holds, as positions in ELEMENTS and amounts. */
const CONTENTS: ReadonlyMap<string, readonly (readonly [element: number, amount: number])[]> = new Map(
  VARIABLE_IDS.map((id) => [
    id,
    Object.entries(variableSpec(id).content ?? {}).map(
      ([element, amount]) => [ELEMENTS.indexOf(element as ElementId), amount] as const,
    ),
  ]),
);

/** Net amounts of all elements a reaction moves, in the order of ELEMENTS, as `netElement` gives them one by one. */
export function netElements(stoichiometry: Stoichiometry): Float64Array {
  const net = new Float64Array(ELEMENTS.length);
  for (const [id, coefficient = 0] of Object.entries(stoichiometry)) {
    for (const [element, amount] of CONTENTS.get(id) ?? [])
      net[element] = net[element]! + coefficient * amount;
  }
  return net;
}

/**
 * Completes a stoichiometry so that carbon, phosphorus, nitrogen and oxygen equivalents balance, adding the
 * named variable for each: `balanced({ attachedAlgae: 1 }, { nitrogen: 'nitrate', phosphorus: 'phosphate',
 * carbon: 'dissolvedInorganicCarbon', oxygen: 'oxygen' })` is growth on nitrate with its O2 release.
 * Oxygen is closed last, since the other closing pools carry oxygen equivalents.
 * @throws Error when a closing variable does not hold the element.
 */
export function balanced(
  start: Stoichiometry,
  closing: Readonly<Partial<Record<ElementId, VariableId>>>,
): Stoichiometry {
  const result: Partial<Record<VariableId, number>> = { ...start };
  const order: readonly ElementId[] = [...ELEMENTS.filter((element) => element !== 'oxygen'), 'oxygen'];
  for (const element of order) {
    const id = closing[element];
    if (id === undefined) continue;
    const content = variableSpec(id).content?.[element];
    if (!content) throw new Error(`${id} holds no ${element} and cannot close its balance`);
    result[id] = (result[id] ?? 0) - netElement(result, element) / content;
  }
  return result;
}
