/** A file name made of a name people wrote: lower case, a-z and digits, hyphens between; empty when nothing is left. */
export function slugOf(name: string): string {
  return name
    .normalize('NFKD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .slice(0, 64)
    .replaceAll(/^-+|-+$/g, '');
}
