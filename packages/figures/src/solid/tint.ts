/** A colour between two others, both as #rrggbb: `share` of the second. */
export function mixed(first: string, second: string, share: number): string {
  const part = (colour: string, at: number) => Number.parseInt(colour.slice(at, at + 2), 16);
  const channels = [1, 3, 5].map((at) =>
    Math.round(part(first, at) * (1 - share) + part(second, at) * share)
      .toString(16)
      .padStart(2, '0'),
  );
  return `#${channels.join('')}`;
}
