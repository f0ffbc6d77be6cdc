import { ELEMENTS, type ElementId } from '../variables/elements.ts';
import { type VariableId, variableSpec } from '../variables/variables.ts';

export type Stoichiometry = Readonly<Partial<Record<VariableId, number>>>;

/** Net amount of an element a reaction brings in (+) or takes out (-) per unit of extent. */
export function netElement(stoichiometry: Stoichiometry, element: ElementId): number {
  let net = 0;
  for (const [id, coefficient] of Object.entries(stoichiometry)) {
    net += (coefficient ?? 0) * (variableSpec(id as VariableId).content?.[element] ?? 0);
  }
  return net;
}

/** Net amounts of all elements a reaction moves, as `netElement` gives them one by one. */
export function netElements(stoichiometry: Stoichiometry): ReadonlyMap<ElementId, number> {
  const net = new Map<ElementId, number>();
  for (const [id, coefficient] of Object.entries(stoichiometry)) {
    const content = variableSpec(id as VariableId).content ?? {};
    for (const element of Object.keys(content) as ElementId[])
      net.set(element, (net.get(element) ?? 0) + (coefficient ?? 0) * (content[element] ?? 0));
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
