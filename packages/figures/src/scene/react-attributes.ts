import type { Attributes, AttributeValue } from './scene.ts';

/** A node's attributes under the names React wants: `stroke-width` becomes `strokeWidth`, `data-` and `aria-` stay. */
export function reactAttributes(attributes: Attributes): Record<string, AttributeValue> {
  return Object.fromEntries(
    Object.entries(attributes).map(([name, value]) => [reactName(name), value] as const),
  );
}

function reactName(name: string): string {
  if (name.startsWith('data-') || name.startsWith('aria-')) return name;
  return name.replaceAll(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());
}
