/**
 * Contrast ratio of two sRGB colours, 1 to 21.
 * (L1 + 0.05) / (L2 + 0.05), L1 the lighter relative luminance.
 * @source WCAG 2.2, definitions of relative luminance and contrast ratio
 */
export function contrastRatio(first: string, second: string): number {
  const [a, b] = [relativeLuminance(first), relativeLuminance(second)];
  return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
}

/** Relative luminance of `#rrggbb`, 0 (black) to 1 (white): 0.2126 R + 0.7152 G + 0.0722 B of linear light. */
function relativeLuminance(colour: string): number {
  const [red, green, blue] = channels(colour).map(linearLight) as [number, number, number];
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** Red, green and blue of `#rrggbb`, 0 to 1. */
export function channels(colour: string): [red: number, green: number, blue: number] {
  const part = (start: number) => Number.parseInt(colour.slice(start, start + 2), 16) / 255;
  return [part(1), part(3), part(5)];
}

function linearLight(channel: number): number {
  return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;
}
