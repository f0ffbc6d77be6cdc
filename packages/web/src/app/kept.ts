/** Small things remembered on this device; where the browser keeps nothing they simply last until the page closes. */
const PREFIX = 'shoreglass.';
const fallback = new Map<string, string>();

export function recall(key: string): string | undefined {
  try {
    return localStorage.getItem(PREFIX + key) ?? undefined;
  } catch {
    return fallback.get(key);
  }
}

export function remember(key: string, value: string): void {
  try {
    localStorage.setItem(PREFIX + key, value);
  } catch {
    fallback.set(key, value);
  }
}

export function forget(key: string): void {
  fallback.delete(key);
  try {
    localStorage.removeItem(PREFIX + key);
  } catch {
    // Nothing was kept there.
  }
}
