/**
 * Keeps the last result of a pure function for each owner: asked again under the same key it gives the same object
 * back, so that a drawing that changes in one place is neither computed nor compared elsewhere.
 */
export function remembered<O extends object, T>(): (owner: O, key: string, make: () => T) => T {
  const kept = new WeakMap<O, { readonly key: string; readonly value: T }>();
  return (owner, key, make) => {
    const last = kept.get(owner);
    if (last?.key === key) return last.value;
    const value = make();
    kept.set(owner, { key, value });
    return value;
  };
}
